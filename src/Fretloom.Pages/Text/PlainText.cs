using System.Text;
using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Shapes;

namespace Fretloom.Pages.Text;

/// <summary>Writes exhibits as text for a terminal: no colour, no control characters, every line within a width.</summary>
public static class PlainText
{
    /// <summary>The least width there must be, in characters.</summary>
    public const int SmallestWidth = 30;

    /// <summary>The same pictures as <see cref="PicturePlan"/> chooses, in characters.</summary>
    /// <param name="exhibit">What to show.</param>
    /// <param name="width">Characters on a line.</param>
    /// <returns>Lines that end with \n; empty when there is nothing to show.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The width is less than <see cref="SmallestWidth"/>.</exception>
    public static string Write(Exhibit exhibit, int width = 80) => Joined(Parts, exhibit, width);

    /// <summary>What is to be said beside pictures for the sake of the hand: what is in reach, what to do instead, cautions.</summary>
    /// <param name="exhibit">What is shown.</param>
    /// <param name="width">Characters on a line.</param>
    /// <returns>Lines that end with \n; empty when there is nothing to say.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The width is less than <see cref="SmallestWidth"/>.</exception>
    public static string WriteHandNotes(Exhibit exhibit, int width = 80) => Joined(Notes, exhibit, width);

    private static string Joined(Func<Exhibit, int, IEnumerable<IEnumerable<string>>> parts, Exhibit exhibit, int width)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, SmallestWidth);
        var text = new StringBuilder();
        foreach (var line in parts(exhibit, width).SelectMany((part, at) => at == 0 ? part : part.Prepend("")))
        {
            text.Append(line).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<IEnumerable<string>> Parts(Exhibit exhibit, int width)
    {
        var shapes = exhibit.Shapes ?? [];
        if (PicturePlan.HasNeck(exhibit))
        {
            var content = NeckContent.Of(exhibit);
            yield return Wrapping.Lines(NeckWords.Of(content).Description, width);
            if (!PicturePlan.HasLandmarksOnly(exhibit))
            {
                yield return new NeckText(content).Lines(width);
            }
        }

        if (PicturePlan.HasShapes(exhibit) && HasRuns(shapes))
        {
            foreach (var shape in shapes)
            {
                yield return NeckText.OfShape(exhibit, shape, width);
            }

            if (exhibit.ShowsFingers)
            {
                yield return [NeckText.FingerSigns(exhibit.HasFingersInside())];
            }
        }
        else if (PicturePlan.HasShapes(exhibit))
        {
            var table = ChordBoxRow.IsFor(shapes) ? Boxes(exhibit, shapes) : Cards(exhibit, shapes);
            yield return Columns.Lines(table, width).Concat(CapoNote(exhibit, width));
        }

        foreach (var part in Notes(exhibit, width))
        {
            yield return part;
        }
    }

    /// <summary>What is to be said for the sake of the hand.</summary>
    private static IEnumerable<IEnumerable<string>> Notes(Exhibit exhibit, int width)
    {
        var notes = HandNotes.Of(exhibit);
        if (notes.Summary.Length > 0)
        {
            yield return Wrapping.Lines(notes.Summary, width);
        }

        if (notes.OutOfReach.Rows.Count > 0)
        {
            yield return notes.OutOfReach.Rows.SelectMany(row => Wrapping.Lines(OutOfReach(row), width));
        }

        foreach (var caution in notes.Cautions.Append(notes.General).OfType<string>())
        {
            yield return Wrapping.Lines(caution, width);
        }
    }

    private static string OutOfReach(ValueList<string> row) =>
        $"{row[0]}: {row[1]}.{(row[2].Length > 0 ? $" Instead: {row[2]}." : "")}";

    private static IEnumerable<string> CapoNote(Exhibit exhibit, int width) =>
        exhibit.Map.Instrument.Capo is var capo and > 0
            ? Wrapping.Lines($"capo {Wording.Number(capo)}: frets are counted from it", width)
            : [];

    /// <summary>Whether several notes lie on one string, so that a table of a fret for each string cannot tell them.</summary>
    private static bool HasRuns(IEnumerable<Shape> shapes) => shapes.Any(shape => shape.Source is ShapeSource.OfScale);

    private static TextTable Cards(Exhibit exhibit, ValueList<Shape> shapes)
    {
        var table = CardWords.Table(exhibit, shapes);
        return table with
        {
            Header = table.Header.Select(title => title.Replace("string ", "", StringComparison.Ordinal)).ToValueList(),
        };
    }

    /// <summary>
    /// Frets from the far string on, x for a string that is not played; then the fingers in the same order if they are shown, and
    /// what is wide for the hand if anything is.
    /// </summary>
    private static TextTable Boxes(Exhibit exhibit, ValueList<Shape> shapes)
    {
        var strings = exhibit.Map.Instrument.AllStrings.Numbers;
        string[] fingers = exhibit.ShowsFingers ? ["fingers"] : [];
        string[] widths = exhibit.InHand.Any(one => WideSign.Words(one).Length > 0) ? ["stretch"] : [];
        return new TextTable(
            ["string", .. strings.Select(Wording.Number), .. fingers, .. widths],
            shapes
                .Select(shape =>
                {
                    var labels = new ShapeLabels(exhibit, shape);
                    return strings
                        .Select(number => Fret(exhibit.Map.Instrument, shape, number))
                        .Prepend(ChordBox.NameOf(exhibit, shape))
                        .Concat(fingers.Select(_ => labels.FingersOn(strings)))
                        .Concat(widths.Select(_ => WideSign.Words(labels.InHand)))
                        .ToValueList();
                })
                .ToValueList()
        );
    }

    private static string Fret(Instrument instrument, Shape shape, int number) =>
        string.Concat(
            shape
                .Spots.Where(spot => spot.String == number)
                .Select(spot => Wording.Number(instrument.IsOpen(spot) ? 0 : spot.Fret))
                .DefaultIfEmpty("x")
        );
}
