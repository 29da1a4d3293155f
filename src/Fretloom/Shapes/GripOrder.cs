using Fretloom.Neck;

namespace Fretloom.Shapes;

/// <summary>Puts first what a teacher would show first.</summary>
internal static class GripOrder
{
    /// <summary>
    /// From the nut on, position by position. Within a position: shapes that sound every member; then the most strings, the
    /// smallest span, the fewest trapped open strings, the fewest fingers, the fewest ups and downs, the strings nearest the floor.
    /// </summary>
    public static IEnumerable<Shape> Sort(Instrument instrument, IEnumerable<Shape> shapes) =>
        shapes
            .Select(shape => (Shape: shape, Grip: new Grip(instrument, shape.Spots.ToArray())))
            .OrderBy(found => found.Grip.Position)
            .ThenBy(found => found.Shape.MembersLeftOut.Any())
            .ThenByDescending(found => found.Shape.Notes.Count)
            .ThenBy(found => found.Grip.Span)
            .ThenBy(found => found.Grip.TrappedOpenStrings)
            .ThenBy(found => found.Grip.Fingers)
            .ThenBy(found => found.Grip.UpsAndDowns)
            .ThenBy(found => found.Shape.Notes[0].Spot.String)
            .ThenBy(found => found.Shape, FretOrder.Instance)
            .Select(found => found.Shape);
}
