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
    public static IEnumerable<Node> On(NeckFrame frame, Culprits culprits) =>
        culprits
            .Frets.Where(frame.HasPlace)
            .Select(place => (Node)Fret(frame, place))
            .Concat(
                culprits
                    .Spots.Where(frame.Contains)
                    .Select(frame.PointOf)
                    .Select(point => Around(point.X, point.Y, frame.Measures))
            );

    /// <summary>A ring around a spot.</summary>
    public static Node Around(double x, double y, Measures measures) =>
        new Node.Circle(x, y, measures.CulpritRadius, Tone.None, LineOf(measures));

    private static Node.Rect Fret(NeckFrame frame, double place)
    {
        var reach = frame.Measures.CulpritRadius;
        var (left, right) =
            place == Math.Floor(place)
                ? frame.ColumnOf((int)place)
                : (frame.PlaceX(place) - reach / 2, frame.PlaceX(place) + reach / 2);
        return new Node.Rect(
            left + 1,
            frame.EdgeTop - Outset,
            right - left - 2,
            frame.EdgeBottom - frame.EdgeTop + 2 * Outset,
            Tone.None,
            LineOf(frame.Measures),
            Corner
        );
    }

    private static Stroke LineOf(Measures measures) => new(Tone.Fail, measures.CulpritLine, Dash.Stitch);
}
