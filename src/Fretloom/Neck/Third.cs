using Fretloom.Theory;

namespace Fretloom.Neck;

/// <summary>A third of the key between two neighbouring strings: two notes two degrees apart.</summary>
/// <param name="Lower">The lower-sounding note, on the string whose open pitch is lower.</param>
/// <param name="Upper">The upper-sounding note.</param>
public readonly record struct Third(NeckNote Lower, NeckNote Upper)
{
    /// <summary>The spelled interval: M3, m3, in exotic scales d3 or A3.</summary>
    public Interval Interval => Lower.Pitch.IntervalTo(Upper.Pitch);

    /// <summary><c>major</c>, <c>minor</c>, <c>diminished</c> or <c>augmented</c>.</summary>
    public string Quality =>
        Interval.Semitones switch
        {
            4 => "major",
            3 => "minor",
            < 3 => "diminished",
            _ => "augmented",
        };
}
