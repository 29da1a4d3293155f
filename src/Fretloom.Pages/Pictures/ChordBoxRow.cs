using Fretloom.Exhibits;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>Chord boxes side by side, one drawing a row.</summary>
internal static class ChordBoxRow
{
    private const string LeftHanded = "left-handed";
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

    /// <summary>All the rows of an exhibit's shapes.</summary>
    public static IEnumerable<Picture> DrawAll(Exhibit exhibit, double width)
    {
        var shapes = exhibit.Shapes ?? [];
        var box = ChordBox.WidthOf(exhibit);
        var most = Math.Max(1, (int)(width / box));
        var rows = (shapes.Count + most - 1) / most;
        foreach (var row in shapes.Chunk((shapes.Count + rows - 1) / Math.Max(1, rows)))
        {
            yield return new Picture(Draw(exhibit, row, box), Table(exhibit, row));
        }
    }

    private static Drawing Draw(Exhibit exhibit, Shape[] row, double box)
    {
        var frets = row.Max(shape => new ChordGrip(exhibit.Map.Instrument, shape).Frets);
        var height = ChordBox.HeightOf(exhibit, frets);
        var nodes = row.Select(
                (shape, at) => new ChordBox(exhibit, shape, frets).Draw(box).Placed(Placement.Moved(at * box, 0))
            )
            .ToList();
        if (exhibit.IsLeftHanded)
        {
            nodes.Add(new Node.Label(row.Length * box, height + 9, LeftHanded, Note, Tone.Quiet, Anchor.End));
        }

        var names = Wording.List(row.Select(shape => ChordBox.NameOf(exhibit, shape)).Distinct());
        return new Drawing(
            row.Length * box,
            height + (exhibit.IsLeftHanded ? NoteHeight : 0),
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
        var barre = new ChordGrip(exhibit.Map.Instrument, shape) is { Barre: { } across, Lowest: var fret }
            ? $", barre at fret {Wording.Number(fret)} from string {Wording.Number(across.Far)} to {Wording.Number(across.Near)}"
            : "";
        return $"{ChordBox.NameOf(exhibit, shape)}: {string.Join(", ", strings)}{barre}.";
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
            : exhibit.Map.Instrument.IsOpen(notes[0].Spot) ? $"open ({Label(notes[0])})"
            : $"fret {Wording.Number(notes[0].Spot.Fret)} ({Label(notes[0])})";

        string Label(ShapeNote note) => exhibit.LabelOf(note.Pitch, note.Degree, note.Member);
    }
}
