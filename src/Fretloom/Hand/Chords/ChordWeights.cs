namespace Fretloom.Hand.Chords;

/// <summary>What one unit of a term costs.</summary>
/// <param name="Term">The term.</param>
/// <param name="Weight">The cost of one unit, 0 or more.</param>
/// <param name="Unit">What the amount is counted in.</param>
/// <param name="Origin">Where the weight comes from.</param>
internal readonly record struct ChordWeight(ChordTerm Term, double Weight, string Unit, string Origin)
{
    /// <summary>The term's name in camel case.</summary>
    public string Name { get; } = char.ToLowerInvariant(Term.ToString()[0]) + Term.ToString()[1..];
}

/// <summary>The weights of all terms.</summary>
internal static class ChordWeights
{
    private static readonly ChordWeight[] Table =
    [
        new(ChordTerm.Apart, 4.33, "fret", "fitted"),
        new(ChordTerm.Close, 0.69, "fret", "fitted"),
        new(ChordTerm.Beside, 1.5, "fret", "fitted"),
        new(ChordTerm.Crossed, 5.83, "once", "fitted"),
        new(ChordTerm.TowardFloor1, 0.71, "string", "fitted"),
        new(ChordTerm.TowardFloor2, 0.17, "string", "fitted"),
        new(ChordTerm.FromFloor1, 0.25, "string", "fitted"),
        new(ChordTerm.FromFloor2, 0.47, "string", "fitted"),
        new(ChordTerm.Reach12, 0.19, "10 mm beyond rest", "fitted"),
        new(ChordTerm.Reach23, 0.04, "10 mm beyond rest", "fitted"),
        new(ChordTerm.Reach13, 0.69, "10 mm beyond rest", "fitted"),
        new(ChordTerm.Reach24, 0.85, "10 mm beyond rest", "fitted"),
        new(ChordTerm.Reach14, 0.25, "10 mm beyond rest", "fitted"),
        new(ChordTerm.Squeeze12, 0.55, "10 mm short of rest", "fitted"),
        new(ChordTerm.Squeeze23, 0.04, "10 mm short of rest", "fitted"),
        new(ChordTerm.Squeeze13, 0.41, "10 mm short of rest", "fitted"),
        new(ChordTerm.Squeeze14, 0.07, "10 mm short of rest", "fitted"),
        new(ChordTerm.Barre1, 1.61, "once", "fitted"),
        new(ChordTerm.Barre2, 3.5, "once", "fitted"),
        new(ChordTerm.Barre3, 6.21, "once", "fitted"),
        new(ChordTerm.Barre4, 6.46, "once", "fitted"),
        new(ChordTerm.BarreLength1, 0.49, "once", "fitted"),
        new(ChordTerm.BarreLength2, 3.75, "once", "fitted"),
        new(ChordTerm.BarreLength3, 1.3, "once", "fitted"),
        new(ChordTerm.BarreLength4, 4.4, "once", "fitted"),
        new(ChordTerm.BarreMuted, 2.73, "once", "fitted"),
        new(ChordTerm.BarreLift1, 1.92, "once", "fitted"),
        new(ChordTerm.BarreLiftX, 0.89, "once", "fitted"),
        new(ChordTerm.BarreGap, 0.08, "once", "fitted"),
        new(ChordTerm.BarreOpen, 1.93, "once", "fitted"),
        new(ChordTerm.BarreFew1, 0.63, "once", "fitted"),
        new(ChordTerm.NoIndex, 1.86, "once", "fitted"),
        new(ChordTerm.Lead, 0.69, "finger", "fitted"),
        new(ChordTerm.Little, 0.37, "once", "fitted"),
        new(ChordTerm.Skip, 2.11, "finger", "fitted"),
        new(ChordTerm.FirstPosition, 0.5, "fret", "fitted"),
        new(ChordTerm.Thumb, 1.0, "once", "by hand"),
        new(ChordTerm.ThumbAway, 1.5, "once", "by hand"),
    ];

    private static readonly ChordWeight[] ByTerm = [.. Enum.GetValues<ChordTerm>().Select(Find)];

    /// <summary>The weight of a term.</summary>
    public static ChordWeight Of(ChordTerm term) => ByTerm[(int)term];

    private static ChordWeight Find(ChordTerm term) => Array.Find(Table, weight => weight.Term == term);
}
