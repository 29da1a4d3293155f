using Fretloom.Hand;

namespace Fretloom.Exhibits;

/// <summary>How shapes are judged for a hand, in the same words on every page, screen and in JSON.</summary>
public static class ReachWords
{
    /// <summary><c>very wide, 128 mm between fingers 1 and 4</c>, <c>wide, up to 96 mm between fingers 2 and 4</c>, <c>no fingering</c>.</summary>
    /// <param name="shapes">One shape or more, all of one width, all with or all without a fingering.</param>
    public static string Judged(IReadOnlyCollection<ShapeInHand> shapes)
    {
        var one = shapes.First();
        return one.WhyNot is not null ? "no fingering"
            : one.Fingering?.Widest is null ? one.Width.Words()
            : $"{one.Width.Words()}, {Widest(shapes)}";
    }

    /// <summary>The stretch of the pair of fingers that works hardest, with <c>up to</c> where there are several shapes.</summary>
    /// <param name="shapes">Shapes with a fingering in which two fingers are down at one time.</param>
    public static string Widest(IReadOnlyCollection<ShapeInHand> shapes) =>
        (shapes.Count == 1 ? "" : "up to ")
        + shapes.Select(one => one.Fingering!.Widest!.Value).MaxBy(stretch => stretch.Effort).Words;

    /// <summary>The ways to a chord that are in reach, the nearest first.</summary>
    /// <param name="shape">A shape that is not in reach.</param>
    /// <param name="most">How many ways at most.</param>
    public static string Instead(ShapeInHand shape, int most) =>
        shape.Instead.Count == 0
            ? "no other way is in reach"
            : string.Join("; ", shape.Instead.Take(most).Select(way => way.Words));
}
