using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>Fingers for some notes, with what they cost and how far they reach.</summary>
/// <param name="Notes">The notes in the order asked.</param>
/// <param name="Terms">What makes up the cost, the dearest first; terms of no cost are left out.</param>
/// <param name="StretchMm">Millimetres along the neck between the outermost fingers that are down at one time; 0 when all strings are open.</param>
/// <param name="Widest">The pair of fingers that works hardest; null when no two fingers are down at one time.</param>
public sealed record Fingering(
    ValueList<FingeredNote> Notes,
    ValueList<CostTerm> Terms,
    double StretchMm,
    Stretch? Widest
)
{
    /// <inheritdoc cref="Fingering(ValueList{FingeredNote}, ValueList{CostTerm}, double, Stretch?)"/>
    /// <exception cref="ArgumentOutOfRangeException">It is negative or not finite.</exception>
    public double StretchMm { get; } =
        StretchMm is >= 0 and < double.PositiveInfinity
            ? StretchMm
            : throw new ArgumentOutOfRangeException(nameof(StretchMm), StretchMm, "A distance is 0 mm or more.");

    /// <summary>The sum of the terms; the less the better.</summary>
    public double Cost => Terms.Sum(term => term.Cost);

    /// <summary>In reach, wide or very wide for the hand it was found for.</summary>
    public Width Width => Widest?.Width ?? Width.InReach;

    /// <summary>What stops a spot; null when the spot is not among the notes. Where it stands twice, the first.</summary>
    public Finger? FingerAt(Spot spot)
    {
        foreach (var note in Notes)
        {
            if (note.Spot == spot)
            {
                return note.Finger;
            }
        }

        return null;
    }
}
