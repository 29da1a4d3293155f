using Fretloom.Hand.Chords;
using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>Fingers for the notes of a shape played one after another: a finger each, the same in every direction.</summary>
public static class ArpeggioFingering
{
    /// <summary>Every fingering that the model allows, ranked; the best come back.</summary>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="spots">The notes in any order, one a string; at most four of them not open.</param>
    /// <param name="count">How many fingerings at most, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is less than 1.</exception>
    public static FingeringAnswer Find(Player player, ValueList<Spot> spots, int count = 1)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return ChordChoice.Best(player, spots, count, isOneFingerANote: true);
    }
}
