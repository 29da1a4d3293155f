using Fretloom.Hand.Chords;
using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>Fingers for notes that are held together: the exact optimum of the cost in <c>docs/hand.md</c>.</summary>
public static class ChordFingering
{
    /// <summary>Every fingering that the model allows, ranked; the best come back.</summary>
    /// <remarks>
    /// Of two with the same cost the one with the lower finger comes first, looking from the string farthest from the floor.
    /// </remarks>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="spots">At most one note a string, in any order; strings without a note are not played.</param>
    /// <param name="count">How many fingerings at most, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is less than 1.</exception>
    public static FingeringAnswer Find(Player player, ValueList<Spot> spots, int count = 1)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return ChordChoice.Best(player, spots, count, isOneFingerANote: false);
    }
}
