using Fretloom.Exhibits;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>The pictures of an exhibit, with the places of its shapes, so that one can be pointed at.</summary>
public static class LiveCards
{
    /// <summary>The same pictures as <see cref="PicturePlan.For(Exhibit, double, Shape?)"/>, in the same order.</summary>
    /// <param name="exhibit">What to show.</param>
    /// <param name="width">The width there is, in points.</param>
    /// <param name="focus">The shape to bring out, one of the exhibit's; null for none.</param>
    public static ValueList<LiveCardRow> Of(Exhibit exhibit, double width, Shape? focus)
    {
        ArgumentNullException.ThrowIfNull(exhibit);
        var count = exhibit.Shapes?.Count ?? 0;
        var rows = new List<LiveCardRow>();
        var isBoxes = ChordBoxRow.IsFor(exhibit.Shapes ?? []);
        var (left, each, most) = isBoxes ? Boxes(exhibit, width, count) : Cards(exhibit, width);
        var first = 0;
        foreach (var picture in PicturePlan.For(exhibit, width, focus))
        {
            var here = picture.Kind is "cards" or "boxes" ? Math.Min(most, count - first) : 0;
            rows.Add(
                new LiveCardRow(
                    picture,
                    Enumerable.Range(0, here).Select(at => (first + at, left + at * each, each)).ToValueList()
                )
            );
            first += here;
        }

        return rows.ToValueList();
    }

    /// <summary>What is to be said beside them for the sake of the hand: how many are in reach or, where no hand was named, which are not; then in general.</summary>
    /// <param name="exhibit">What is shown.</param>
    /// <returns>Sentences; none when every shape is in reach and no hand was named.</returns>
    public static ValueList<string> Cautions(Exhibit exhibit)
    {
        ArgumentNullException.ThrowIfNull(exhibit);
        var notes = HandNotes.Of(exhibit);
        var report = ReachReport.Of(exhibit);
        return new[] { report?.Summary }
            .Concat(report?.Lines ?? notes.Cautions)
            .Append(notes.General)
            .OfType<string>()
            .Where(words => words.Length > 0)
            .ToValueList();
    }

    private static (double Left, double Each, int Most) Cards(Exhibit exhibit, double width)
    {
        var layout = CardLayout.Of(exhibit, width);
        return (CardLayout.NumbersWidth, layout.CardWidth, layout.Columns);
    }

    private static (double Left, double Each, int Most) Boxes(Exhibit exhibit, double width, int count) =>
        (0, ChordBox.WidthOf(exhibit), ChordBoxRow.Columns(exhibit, width, count));
}

/// <summary>A picture and the shapes in it.</summary>
/// <param name="Picture">The picture.</param>
/// <param name="Places">For each shape its place among the exhibit's, counted from 0, and its left edge and width in points; empty for a neck.</param>
public sealed record LiveCardRow(Picture Picture, ValueList<(int Shape, double Left, double Width)> Places);
