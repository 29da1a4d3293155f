using Fretloom.Exhibits;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>The legend of all the cards of an exhibit: only what occurs on them.</summary>
internal static class CardLegend
{
    private static readonly Measures Small = new(17);

    public static IEnumerable<LegendItem> For(Exhibit exhibit)
    {
        var shapes = exhibit.Shapes ?? [];
        var isOfChords = shapes.Any(shape => shape.Source is ShapeSource.OfChord);
        if (shapes.SelectMany(shape => shape.Notes).Any(note => note.Degree == new Degree(1)))
        {
            yield return MarkItem(true, false, "tonic");
        }

        if (isOfChords)
        {
            yield return MarkItem(false, true, "root");
        }

        foreach (var item in FingerLegend.ForShapes(exhibit))
        {
            yield return item;
        }

        var thirds = shapes.Select(CardHeading.ThirdsOf).ToList();
        if (thirds.Exists(steps => steps.Count > 0))
        {
            yield return Thirds(
                thirds.Exists(steps => steps.Contains(true)),
                thirds.Exists(steps => steps.Contains(false))
            );
        }

        if (shapes.Any(shape => CardWords.SpanOf(shape).Stretch.Length > 0))
        {
            yield return new LegendItem(
                (x, y) => new Node.Label(x, y + 3.2, "mm", CardLayout.NumberStyle, Tone.Ink, Anchor.Middle),
                CardLayout.NumberStyle.WidthOf("mm"),
                "between the outer fingers"
            );
        }

        foreach (var item in WideSign.Legend(exhibit))
        {
            yield return item;
        }
    }

    private static LegendItem MarkItem(bool isTonic, bool isRoot, string words) =>
        new(
            (x, y) => new Mark("", MarkKind.OfChord, isTonic, isRoot).DrawnAt(x, y, Small),
            2 * (isTonic ? Small.RingRadius : Small.MarkRadius),
            words
        );

    private static LegendItem Thirds(bool hasMajor, bool hasMinor)
    {
        bool[] kinds = [.. new[] { true, false }.Where(isMajor => isMajor ? hasMajor : hasMinor)];
        var words =
            kinds.Length == 2 ? "major and minor third"
            : hasMajor ? "major third"
            : "minor third";
        return new LegendItem(
            (x, y) => new Node.Group("thirds", CardHeading.Strokes(kinds, x - 4, y + 5, Tone.Ink).ToValueList()),
            9,
            $"{words}, root upward"
        );
    }
}
