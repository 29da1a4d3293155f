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
        new(ChordTerm.Apart, "fret too many", 4.27, 4.43, Fitted),
        new(ChordTerm.Close, "fret too few", 0.59, 1.88, Fitted),
        new(ChordTerm.Beside, "finger from one to the other", 1.64, 1.86, Fitted),
        new(ChordTerm.BesideIndex, "chord", 1.11, 0.91, Fitted),
        new(ChordTerm.BesideLittle, "chord", 0.87, 0.00, Fitted),
        new(ChordTerm.Crossed, "pair", 5.50, 5.08, Fitted),
        new(ChordTerm.TowardFloor, "string", 0.83, 0.16, Fitted),
        new(ChordTerm.Reach, "10 mm of an adult hand, for each pair of fingers", 0.02, 0.36, Fitted),
        new(ChordTerm.Barre1, "chord", 1.27, 0.00, Fitted),
        new(ChordTerm.Barre2, "chord", 4.02, 1.15, Fitted),
        new(ChordTerm.Barre3, "chord", 6.40, 5.59, Fitted),
        new(ChordTerm.Barre4, "chord", 6.86, 7.53, Fitted),
        new(ChordTerm.LongBarre2, "string beyond two", 2.62, 5.17, Fitted),
        new(ChordTerm.LongBarre3, "string beyond two", 0.50, 2.47, Fitted),
        new(ChordTerm.LongBarre4, "string beyond two", 4.32, 3.80, Fitted),
        new(ChordTerm.BarreOfFour, "barre", 4.08, 3.06, Fitted),
        new(ChordTerm.LongBarreBeside, "barre", 2.95, 2.21, Fitted),
        new(ChordTerm.BarreShort, "chord", 0.83, 0.97, Fitted),
        new(ChordTerm.BarreMuted, "string", 4.27, 3.20, Fitted),
        new(ChordTerm.BarreLift, "chord", 1.98, 2.56, Fitted),
        new(ChordTerm.BarreLiftHigher, "barre", 2.55, 1.32, Fitted),
        new(ChordTerm.BarreOpen, "barre", 1.12, 4.11, Fitted),
        new(ChordTerm.BarreInner, "barre", 0.78, 3.96, Fitted),
        new(ChordTerm.SplitPair, "chord", 2.80, 4.56, Fitted),
        new(ChordTerm.RingTip, "string beyond one", 0.45, 0.00, Fitted),
        new(ChordTerm.RingForMiddle, "chord", 1.05, 0.29, Fitted),
        new(ChordTerm.Lead, "finger", 3.17, 2.81, Fitted),
        new(ChordTerm.LeadFirst, "finger", 3.04, 2.57, Fitted),
        new(ChordTerm.LittleFirst, "chord", 0.84, 3.32, Fitted),
        new(ChordTerm.LittleInside, "chord", 0.92, 0.28, Fitted),
        new(ChordTerm.Skip, "finger", 1.22, 2.46, Fitted),
        new(ChordTerm.FirstPosition, "fret, for each finger", 1.52, 0.27, Fitted),
        new(ChordTerm.FirstIndex, "chord", 0.95, 2.63, Fitted),
        new(ChordTerm.LoneNote, "fret", 3, 3, ByHand),
        new(ChordTerm.WideThree, "chord", 1.44, 1.60, Fitted),
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
