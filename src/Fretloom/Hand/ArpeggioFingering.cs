using Fretloom.Hand.Chords;
using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>Fingers for the notes of a shape played one after another, the same in every direction.</summary>
/// <remarks>
/// Up to four stopped notes, on strings of their own and no farther apart than a hand can be, take a finger each, as a chord
/// without a finger laid across strings. Other shapes are lines (<see cref="LineFingering.FindBothWays"/>).
/// </remarks>
public static class ArpeggioFingering
{
    private const int Fingers = 4;

    /// <summary>Every fingering that the model allows, ranked; the best come back.</summary>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="spots">The notes in the order of one of the directions.</param>
    /// <param name="count">How many fingerings at most, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is less than 1.</exception>
    public static FingeringAnswer Find(Player player, ValueList<Spot> spots, int count = 1)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return IsHeld(player, spots)
            ? ChordChoice.Best(player, spots, count, isOneFingerANote: true)
            : LineFingering.FindBothWays(player, spots, count);
    }

    private static bool IsHeld(Player player, ValueList<Spot> spots) =>
        spots.DistinctBy(spot => spot.String).Count() == spots.Count
        && spots.Count(spot => !player.Instrument.IsOpen(spot)) <= Fingers
        && !ChordRefusals.IsTooFar(player, spots);
}
