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
    public Width Width => Fingering?.Width ?? Width.VeryWide;

    /// <summary>What stops a spot; null when the spot is not in the shape, or no hand can take it.</summary>
    public Finger? FingerAt(Spot spot) => Fingering?.FingerAt(spot);
}
