using Fretloom.Hand;
using Fretloom.Shapes;

namespace Fretloom.Exhibits;

/// <summary>Finds how a hand takes shapes.</summary>
internal static class ShapeFingering
{
    /// <summary>A shape with its best fingering: a chord held together, a stretch of scale up and down with the same fingers.</summary>
    public static ShapeInHand Of(Player player, Shape shape)
    {
        if (shape.Source is ShapeSource.OfScale)
        {
            return new ShapeInHand(shape, null, null, []);
        }

        var answer = ChordFingering.Find(player, shape.Spots.ToValueList());
        return new ShapeInHand(shape, answer.Best, answer.Refusal?.Message, []);
    }

    /// <summary>Those in reach first, then wide, then very wide, at last those that no hand can take; else as they were.</summary>
    public static IEnumerable<ShapeInHand> Sorted(IEnumerable<ShapeInHand> shapes) =>
        shapes.OrderBy(shape => shape.WhyNot is null ? (int)shape.Width : int.MaxValue);
}
