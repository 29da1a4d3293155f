namespace Fretloom.Hand.Chords;

/// <summary>What one unit of a term costs.</summary>
/// <param name="Term">The term.</param>
/// <param name="Unit">What its amount counts.</param>
/// <param name="Long">The cost of a unit on a long neck, without unit.</param>
/// <param name="Short">The cost of a unit on a short neck.</param>
/// <param name="Origin">Where the two costs come from.</param>
internal readonly record struct ChordWeight(ChordTerm Term, string Unit, double Long, double Short, string Origin);

/// <summary>The weights of all terms.</summary>
/// <remarks>
/// There are two columns, because published fingerings for guitar and for ukulele follow different habits. A long neck is
/// a guitar's 648 mm under an adult hand, a short one a ukulele's 345 mm. Between the two, weights are mixed in proportion to
/// the logarithm of scale length over hand length; beyond them they stay. That the habits go with that ratio is an assumption.
/// Fitted: by <c>bench/Fretloom.HandFit</c> on chords-db 0.5.1 (MIT), roots C, D, E, F#, Ab and Bb only.
/// </remarks>
internal static class ChordWeights
{
    private const double LongMm = 648;
    private const double ShortMm = 345;

    /// <summary>The origin of weights that were fitted; the fit leaves the others out.</summary>
    public const string Fitted = "fitted";

    private const string ByHand = "by hand";

    /// <summary>Every term, in the order of <see cref="ChordTerm"/>.</summary>
    public static ChordWeight[] Table { get; } =
    [
        new(ChordTerm.Apart, "fret too many", 4.09, 4.41, Fitted),
        new(ChordTerm.Close, "fret too few", 1.05, 2.03, Fitted),
        new(ChordTerm.Beside, "finger from one to the other", 1.90, 2.01, Fitted),
        new(ChordTerm.BesideIndex, "chord", 1.69, 1.36, Fitted),
        new(ChordTerm.Crossed, "pair", 5.69, 5.77, Fitted),
        new(ChordTerm.TowardFloor, "string", 0.86, 0.00, Fitted),
        new(ChordTerm.Reach, "10 mm of an adult hand, for each pair of fingers", 0.10, 0.15, Fitted),
        new(ChordTerm.Barre1, "chord", 1.86, 0.85, Fitted),
        new(ChordTerm.Barre2, "chord", 3.33, 1.43, Fitted),
        new(ChordTerm.Barre3, "chord", 5.47, 5.42, Fitted),
        new(ChordTerm.Barre4, "chord", 6.43, 7.07, Fitted),
        new(ChordTerm.LongBarre, "string beyond two", 4.93, 5.64, Fitted),
        new(ChordTerm.LongBarre3, "string beyond two", 2.03, 2.78, Fitted),
        new(ChordTerm.BarreMuted, "string", 4.21, 3.82, Fitted),
        new(ChordTerm.BarreLift, "chord", 2.36, 2.76, Fitted),
        new(ChordTerm.BarreLiftHigher, "barre", 2.38, 1.27, Fitted),
        new(ChordTerm.BarreOpen, "barre", 1.75, 3.45, Fitted),
        new(ChordTerm.BarreInner, "barre", 0.98, 3.49, Fitted),
        new(ChordTerm.SplitPair, "chord", 3.12, 5.02, Fitted),
        new(ChordTerm.RingTip, "chord", 1.43, 0.00, Fitted),
        new(ChordTerm.Lead, "finger", 3.47, 3.40, Fitted),
        new(ChordTerm.LeadFirst, "finger", 2.72, 2.08, Fitted),
        new(ChordTerm.LittleFirst, "chord", 1.20, 2.86, Fitted),
        new(ChordTerm.LittleInside, "chord", 0.97, 0.19, Fitted),
        new(ChordTerm.Skip, "finger", 1.47, 2.38, Fitted),
        new(ChordTerm.FirstPosition, "fret, for each finger", 1.58, 1.05, Fitted),
        new(ChordTerm.LoneNote, "fret", 3, 3, ByHand),
        new(ChordTerm.WideThree, "chord", 1.46, 1.37, Fitted),
        new(ChordTerm.Thumb, "chord", 1, 1, ByHand),
        new(ChordTerm.ThumbAway, "fret", 1.5, 1.5, ByHand),
    ];

    private static readonly double[] Long = [.. Table.Select(weight => weight.Long)];
    private static readonly double[] Short = [.. Table.Select(weight => weight.Short)];

    /// <summary>What a unit of each term costs for a player, by the number of the term.</summary>
    public static double[] For(Player player)
    {
        var length = player.Instrument.ScaleLengthMm / player.Hand.Scale;
        var share = Math.Log(length / ShortMm) / Math.Log(LongMm / ShortMm);
        return share switch
        {
            >= 1 => Long,
            <= 0 => Short,
            _ => [.. Table.Select(weight => weight.Short + share * (weight.Long - weight.Short))],
        };
    }

    /// <summary>A term's name, in camel case.</summary>
    public static string Name(ChordTerm term)
    {
        var name = term.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
