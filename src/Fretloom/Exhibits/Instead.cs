using Fretloom.Hand;
using Fretloom.Shapes;

namespace Fretloom.Exhibits;

/// <summary>Another way to the same chord that the hand reaches.</summary>
/// <param name="Way">What is changed.</param>
/// <param name="Words">The way with its place: <c>on strings 5-2, frets 7-9</c>, <c>with a capo at 3, frets 1-3</c>.</param>
/// <param name="Shape">The shape; with a capo, its frets are counted from it.</param>
/// <param name="Fingering">Its fingering, in reach.</param>
/// <param name="Capo">The fret of the capo; null where it stays as it is.</param>
public sealed record Instead(InsteadWay Way, string Words, Shape Shape, Fingering Fingering, int? Capo = null);

/// <summary>What is changed to bring a chord into reach.</summary>
public enum InsteadWay
{
    /// <summary>The same strings, elsewhere on the neck.</summary>
    HigherUp,

    /// <summary>Other strings.</summary>
    OtherStrings,

    /// <summary>Another note lowest.</summary>
    Inversion,

    /// <summary>Fewer strings.</summary>
    FewerStrings,

    /// <summary>A capo.</summary>
    Capo,
}

/// <summary>Ways in words.</summary>
public static class InsteadWords
{
    /// <summary><c>higher up</c>, <c>other strings</c>, <c>inversion</c>, <c>fewer strings</c>, <c>capo</c>.</summary>
    public static string Words(this InsteadWay way) =>
        way switch
        {
            InsteadWay.HigherUp => "higher up",
            InsteadWay.OtherStrings => "other strings",
            InsteadWay.Inversion => "inversion",
            InsteadWay.FewerStrings => "fewer strings",
            _ => "capo",
        };
}
