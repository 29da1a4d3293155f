using Fretloom.Exhibits;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>Chord boxes side by side, one drawing a row.</summary>
internal static class ChordBoxRow
{
    private const double NoteHeight = 14;

    private static readonly TextStyle Note = new(Face.Sans, TextStyle.SmallestSize);

    /// <summary>
    /// Whether shapes are shown in boxes rather than on cards: when one of them is strummed, that is, mutes a string of its
    /// set or sounds a member twice, or was asked for by its symbol. All shapes of an exhibit are shown the same way.
    /// </summary>
    public static bool IsFor(IEnumerable<Shape> shapes) =>
        shapes.Any(shape =>
            shape.Source is ShapeSource.OfChord chord
            && (
                chord.Roman is null
                || shape.MutedStrings.Any()
                || shape.Notes.Select(note => note.Member).Distinct().Count() < shape.Notes.Count
            )
        );

    /// <summary>All the rows of an exhibit's shapes; below the last what the signs of all boxes mean.</summary>
    public static IEnumerable<Picture> DrawAll(Exhibit exhibit, double width, ExplainedSigns explained)
    {
        var shapes = exhibit.Shapes ?? [];
        var box = ChordBox.WidthOf(exhibit);
        var chunks = shapes.Chunk(Columns(exhibit, width, shapes.Count)).ToList();
        for (var at = 0; at < chunks.Count; at++)
        {
            LegendItem[] items =
                at == chunks.Count - 1 ? [.. Legend(exhibit).Where(item => explained.Add(item.Words))] : [];
            yield return new Picture(Draw(exhibit, chunks[at], box, items, width), Table(exhibit, chunks[at]));
        }
    }

    /// <summary>Boxes in a row, rows evenly filled.</summary>
    /// <param name="exhibit">What they show.</param>
    /// <param name="width">Points there are.</param>
    /// <param name="count">How many boxes there are.</param>
    public static int Columns(Exhibit exhibit, double width, int count)
    {
        var most = Math.Max(1, (int)(width / ChordBox.WidthOf(exhibit)));
        var rows = Math.Max(1, (count + most - 1) / most);
        return Math.Max(1, (count + rows - 1) / rows);
    }

    private static IEnumerable<LegendItem> Legend(Exhibit exhibit) =>
        FingerLegend.ForBoxes(exhibit).Concat(WideSign.Legend(exhibit));

    private static Drawing Draw(Exhibit exhibit, Shape[] row, double box, LegendItem[] items, double room)
    {
        var frets = row.Max(shape => ChordBox.GripOf(exhibit, shape).Frets);
        var height = ChordBox.HeightOf(exhibit, frets);
        var nodes = row.Select(
                (shape, at) => new ChordBox(exhibit, shape, frets).Draw(box).Placed(Placement.Moved(at * box, 0))
            )
            .ToList();
        var handedness = exhibit.Handedness();
        if (handedness.Length > 0)
        {
            nodes.Add(new Node.Label(row.Length * box, height + 9, handedness, Note, Tone.Quiet, Anchor.End));
        }

        var top = height + (handedness.Length > 0 ? NoteHeight : 0);
        var legend = Pictures.Legend.Draw(items, 2, top, Math.Max(row.Length * box, room));
        nodes.AddRange(legend.Nodes);
        var names = Wording.List(row.Select(shape => ChordBox.NameOf(exhibit, shape)).Distinct());
        return new Drawing(
            Math.Max(row.Length * box, legend.Right + 2),
            top + legend.Height,
            $"Chord boxes for {Wording.Name(exhibit.Map.Instrument)}: {names}",
            string.Join(" ", row.Select(shape => Sentence(exhibit, shape))),
            nodes.ToValueList()
        );
    }

    private static string Sentence(Exhibit exhibit, Shape shape)
    {
        var strings = exhibit.Map.Instrument.AllStrings.Numbers.Select(number =>
            $"string {Wording.Number(number)} {Place(exhibit, shape, number)}"
        );
        var bars = ChordBox
            .GripOf(exhibit, shape)
            .Bars.Select(bar =>
                $", barre at fret {Wording.Number(bar.Fret)} from string {Wording.Number(bar.Far)} to {Wording.Number(bar.Near)}"
            );
        var wide = WideSign.Words(new ShapeLabels(exhibit, shape).InHand);
        return $"{ChordBox.NameOf(exhibit, shape)}: {string.Join(", ", strings)}{string.Concat(bars)}{(wide.Length > 0 ? ", " + wide : "")}.";
    }

    private static TextTable Table(Exhibit exhibit, Shape[] row)
    {
        var strings = exhibit.Map.Instrument.AllStrings.Numbers;
        return new TextTable(
            strings.Select(number => $"string {Wording.Number(number)}").Prepend("chord").ToValueList(),
            row.Select(shape =>
                    strings
                        .Select(number => Place(exhibit, shape, number))
                        .Prepend(ChordBox.NameOf(exhibit, shape))
                        .ToValueList()
                )
                .ToValueList()
        );
    }

    private static string Place(Exhibit exhibit, Shape shape, int number)
    {
        var notes = shape.Notes.Where(note => note.Spot.String == number).ToList();
        return notes.Count == 0 ? "not played"
            : exhibit.Map.Instrument.IsOpen(notes[0].Spot) ? "open" + Labels(notes[0])
            : $"fret {Wording.Number(notes[0].Spot.Fret)}{Labels(notes[0])}";

        string Labels(ShapeNote note)
        {
            var labels = new ShapeLabels(exhibit, shape);
            var finger = labels.Shown(note);
            return exhibit.HasFingersInside() ? Fingers.After(finger) : $" ({labels.On(note)}){Fingers.After(finger)}";
        }
    }
}
