using System.Globalization;

namespace Fretloom.Hand;

/// <summary>The distance along the neck between two fingers that are down at the same time, on a hand.</summary>
/// <remarks>
/// Wide begins three quarters of the way from the comfortable to the greatest distance of <see cref="HandReach"/>, very wide
/// beyond the greatest: settings of this tool without a source, not medical limits. From half-way on, a fret between fingers 2
/// and 3 near the nut would be wide for a hand of 165 mm, and with it chords that beginners of that size hold. The
/// <c>default</c> is no stretch: no fingers, 0 mm, in reach.
/// </remarks>
public readonly record struct Stretch
{
    private const double WideFrom = 0.75;

    /// <summary>Judges a distance.</summary>
    /// <param name="hand">The hand.</param>
    /// <param name="lower">The finger nearer the index.</param>
    /// <param name="higher">The finger nearer the little finger.</param>
    /// <param name="distanceMm">Millimetres between the landing points, at least 0.</param>
    /// <exception cref="ArgumentException">The fingers are not in order, or the distance is negative or not finite.</exception>
    public Stretch(HandSize hand, Finger lower, Finger higher, double distanceMm)
    {
        if (distanceMm is not (>= 0 and < double.PositiveInfinity))
        {
            throw new ArgumentOutOfRangeException(nameof(distanceMm), distanceMm, "A distance is 0 mm or more.");
        }

        var comfortable = hand.ComfortableMm(lower, higher);
        var most = hand.MostMm(lower, higher);
        Lower = lower;
        Higher = higher;
        DistanceMm = distanceMm;
        Effort = (distanceMm - comfortable) / (most - comfortable);
    }

    /// <summary>The finger nearer the index.</summary>
    public Finger Lower { get; }

    /// <summary>The finger nearer the little finger.</summary>
    public Finger Higher { get; }

    /// <summary>Millimetres between the landing points.</summary>
    public double DistanceMm { get; }

    /// <summary>0 or less is comfortable, 1 the greatest distance, more lies beyond.</summary>
    public double Effort { get; }

    /// <summary>In reach, wide or very wide.</summary>
    public Width Width =>
        Effort > 1 ? Width.VeryWide
        : Effort > WideFrom ? Width.Wide
        : Width.InReach;

    /// <summary><c>128 mm between fingers 1 and 4</c>, to the whole millimetre.</summary>
    public string Words =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{DistanceMm:0} mm between fingers {Lower.ToLabel()} and {Higher.ToLabel()}"
        );
}
