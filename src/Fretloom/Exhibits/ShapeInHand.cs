using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Exhibits;

/// <summary>A shape as a hand takes it.</summary>
/// <param name="Shape">The shape.</param>
/// <param name="Fingering">The best fingering; null when the hand cannot take it.</param>
/// <param name="WhyNot">Why there is no fingering; null when there is one.</param>
/// <param name="Instead">What to do instead of a shape that is wide, very wide or beyond the hand, the nearest first; empty for one in reach.</param>
public sealed record ShapeInHand(Shape Shape, Fingering? Fingering, string? WhyNot, ValueList<Instead> Instead)
{
    /// <summary>In reach, wide or very wide; a shape that cannot be fingered at all is very wide.</summary>
    public Width Width => Fingering?.Width ?? (WhyNot is null ? Width.InReach : Width.VeryWide);

    /// <summary>What stops a spot; null when the spot is not in the shape, or no hand can take it.</summary>
    public Finger? FingerAt(Spot spot) => Fingering?.FingerAt(spot);
}

/// <summary>Another way to the same chord that the hand reaches.</summary>
/// <param name="Way">What is changed.</param>
/// <param name="Words">The way with its place: <c>on strings 5-2, frets 7-9</c>, <c>with a capo at 3, frets 1-3</c>.</param>
/// <param name="Shape">The shape; with a capo, its frets are counted from it.</param>
/// <param name="Fingering">Its fingering, in reach.</param>
public sealed record Instead(InsteadWay Way, string Words, Shape Shape, Fingering Fingering);

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
