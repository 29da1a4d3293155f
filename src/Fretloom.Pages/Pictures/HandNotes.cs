using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>What is to be said beside the pictures of an exhibit for the sake of the hand.</summary>
/// <param name="Summary">How many shapes are in reach, where a hand was named; else empty.</param>
/// <param name="OutOfReach">Where a hand was named: which shapes are not in reach, what they ask, what to do instead; no rows when all are.</param>
/// <param name="Cautions">Where no hand was named: a sentence for the very wide shapes, one for the wide ones, one for those without fingering; and one for single notes with fingers that lie wide.</param>
/// <param name="General">The general words of caution, to be said once on a page; null when nothing is wide.</param>
internal sealed record HandNotes(string Summary, TextTable OutOfReach, ValueList<string> Cautions, string? General)
{
    /// <summary>What stands above the general words.</summary>
    public const string Heading = "Look after your hand";

    private const int MostRows = 6;
    private const int MostWays = 2;

    private static readonly TextTable NoRows = new(["Not in reach", "For this hand", "Instead"], []);

    /// <summary>The notes on an exhibit; all empty when every shape is in reach and no hand was named.</summary>
    public static HandNotes Of(Exhibit exhibit)
    {
        var wide = exhibit.InHand.Where(one => one.Width != Width.InReach).ToList();
        var notes = exhibit.NoteStretch is { } stretch and not { Width: Width.InReach }
            ? $"{Hand.Cautions.Opening(stretch.Width, exhibit.Player.Hand)}: {stretch.Words}."
            : null;
        var report = ReachReport.Of(exhibit);
        return new HandNotes(
            report?.Summary ?? "",
            report is null ? NoRows : NoRows with { Rows = [.. Rows(exhibit, wide)] },
            [.. report is null ? Sentences(exhibit, wide) : [], .. notes is null ? Array.Empty<string>() : [notes]],
            wide.Count > 0 || notes is not null
                ? $"{Hand.Cautions.General(exhibit.Player.Hand)} {Hand.Cautions.Settings}"
                : null
        );
    }

    private static IEnumerable<ValueList<string>> Rows(Exhibit exhibit, List<ShapeInHand> wide) =>
        Together(wide)
            .Select<List<ShapeInHand>, ValueList<string>>(shapes =>
                [
                    NameOf(exhibit, shapes[0])
                        + (shapes.Count == 1 ? $", {Spelled(exhibit, shapes[0])}" : $" {PlaceOf(exhibit, shapes)}"),
                    ReachWords.Judged(shapes),
                    shapes[0].Shape.Source is ShapeSource.OfScale ? "" : ReachWords.Instead(shapes[0], MostWays),
                ]
            );

    private static IEnumerable<string> Sentences(Exhibit exhibit, List<ShapeInHand> wide)
    {
        foreach (var width in (Width[])[Width.VeryWide, Width.Wide])
        {
            var these = wide.Where(one => one.Width == width && one.WhyNot is null).ToList();
            var shapes = Together(these)
                .GroupBy(one => $"{NameOf(exhibit, one[0])} {PlaceOf(exhibit, one)}")
                .Select(group => $"{group.Key} ({ReachWords.Widest([.. group.SelectMany(one => one)])})")
                .ToList();
            if (shapes.Count > 0)
            {
                yield return $"{Hand.Cautions.Opening(width, exhibit.Player.Hand)}: {string.Join(", ", shapes)}.";
            }
        }

        foreach (var one in wide.Where(one => one.WhyNot is not null))
        {
            yield return $"{NameOf(exhibit, one)} {PlaceOf(exhibit, [one])}: {one.WhyNot}";
        }
    }

    /// <summary>Each shape by itself, or where these are too many all of a chord and of a width together.</summary>
    private static IEnumerable<List<ShapeInHand>> Together(List<ShapeInHand> shapes) =>
        shapes.Count <= MostRows
            ? shapes.Select(shape => new List<ShapeInHand> { shape })
            : shapes
                .GroupBy(shape => (shape.Shape.Source, shape.Width, shape.WhyNot is null))
                .Select(group => group.ToList());

    private static string NameOf(Exhibit exhibit, ShapeInHand one) =>
        one.Shape.Source is ShapeSource.OfChord { Roman: { } roman }
            ? roman.ToPrinted() + (exhibit.AsksForInversions ? $" ({CardWords.SymbolOf(one.Shape)})" : "")
        : one.Shape.Source is ShapeSource.OfChord ? ChordBox.NameOf(exhibit, one.Shape)
        : CardWords.SymbolOf(one.Shape);

    /// <summary><c>at fret 3</c>, <c>at frets 3 and 8</c>; of a scale <c>from fret 3</c>, <c>in open position</c>.</summary>
    private static string PlaceOf(Exhibit exhibit, List<ShapeInHand> shapes)
    {
        var isOfScale = shapes[0].Shape.Source is ShapeSource.OfScale;
        var frets = shapes.Select(one => LowestFret(exhibit, one.Shape, isOfScale)).Distinct().Order().ToList();
        return isOfScale && frets is [0]
            ? "in open position"
            : $"{(isOfScale ? "from" : "at")} {(frets.Count == 1 ? "fret" : "frets")} {Wording.List(frets)}";
    }

    private static int LowestFret(Exhibit exhibit, Shape shape, bool withOpen = false) =>
        shape
            .Spots.Where(spot => withOpen || !exhibit.Map.Instrument.IsOpen(spot))
            .Select(spot => spot.Fret)
            .DefaultIfEmpty(0)
            .Min();

    /// <summary>A chord fret by fret, far string first, and its strings; a stretch of scale by its lowest fret.</summary>
    private static string Spelled(Exhibit exhibit, ShapeInHand one) =>
        one.Shape is { Source: ShapeSource.OfScale }
            ? PlaceOf(exhibit, [one])
            : one.Shape.FretByFret(exhibit.Map.Instrument);
}
