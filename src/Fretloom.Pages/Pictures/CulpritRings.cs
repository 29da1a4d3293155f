using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>Dashed rings around what shows that a claim is false: spots, and frets from edge to edge.</summary>
internal static class CulpritRings
{
    private const double Corner = 6;
    private const double Outset = 2;

    /// <summary>What the legend says of a ring.</summary>
    public const string Words = "where it fails";

    /// <summary>The rings of a row.</summary>
    public static IEnumerable<Node> On(NeckFrame frame, Culprits culprits, bool fromOwnNut) =>
        culprits
            .Frets.SelectMany(place => Fret(frame, place, fromOwnNut))
            .Concat(
                culprits
                    .Spots.Where(frame.Contains)
                    .Select(frame.PointOf)
                    .Select(point => Around(point.X, point.Y, frame.Measures))
            );

    /// <summary>A ring around a spot.</summary>
    public static Node Around(double x, double y, Measures measures) =>
        new Node.Circle(x, y, measures.CulpritRadius, Tone.None, LineOf(measures));

    private static IEnumerable<Node.Rect> Fret(NeckFrame frame, double place, bool fromOwnNut)
    {
        if (place == Math.Floor(place))
        {
            return frame
                .Across((int)place, fromOwnNut)
                .Select(part => Box(frame, part.Left, Lower(part.Top), part.Right, Upper(part.Bottom)));
        }

        var (x, reach) = (frame.PlaceX(place), frame.Measures.CulpritRadius / 2);
        return frame.HasPlace(place)
            ? [Box(frame, x - reach, frame.EdgeTop - Outset, x + reach, frame.EdgeBottom + Outset)]
            : [];

        // At the edges of the neck a ring reaches beyond it, between strings it keeps inside its part.
        double Lower(double top) => top == frame.EdgeTop ? top - Outset : top + 1;
        double Upper(double bottom) => bottom == frame.EdgeBottom ? bottom + Outset : bottom - 1;
    }

    private static Node.Rect Box(NeckFrame frame, double left, double top, double right, double bottom) =>
        new(left + 1, top, right - left - 2, bottom - top, Tone.None, LineOf(frame.Measures), Corner);

    private static Stroke LineOf(Measures measures) => new(Tone.Fail, measures.CulpritLine, Dash.Stitch);
}
