using Fretloom.Lessons;
using Fretloom.Lessons.Syntax;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Documents;

/// <summary>One page about a lesson in its twelve keys: where each is found, and what stays and what moves from the key before.</summary>
/// <remarks>Counted on the strings and frets that the lesson names above its text, the same for all keys.</remarks>
internal sealed class KeysOverview
{
    private readonly Lesson _home;
    private readonly KeyOrder _order;
    private readonly ValueList<Key> _keys;
    private readonly Func<Key, string> _nameOf;
    private readonly ValueList<NeckMap> _maps;
    private readonly ValueList<KeyChange> _changes;

    /// <summary>Works the changes out.</summary>
    /// <param name="home">The lesson in its own key.</param>
    /// <param name="keys">Its twelve keys in order.</param>
    /// <param name="order">The name of the order.</param>
    /// <param name="nameOf">The name of the files of a key, without ending.</param>
    public KeysOverview(Lesson home, ValueList<Key> keys, KeyOrder order, Func<Key, string> nameOf)
    {
        (_home, _keys, _order, _nameOf) = (home, keys, order, nameOf);
        var said = home.Front.Defaults;
        var instrument = said.Instrument.WithCapo(home.Front.Capo);
        var strings = said.Strings ?? instrument.AllStrings;
        var frets = said.Frets ?? new FretRange(0, 12);
        frets = new FretRange(Math.Min(frets.First, instrument.LastFret), Math.Min(frets.Last, instrument.LastFret));
        _maps = keys.Select(key => new NeckMap(instrument, key, strings, frets)).ToValueList();
        _changes = _maps.Zip(keys.Skip(1), KeyChange.Between).ToValueList();
    }

    /// <summary>The page.</summary>
    /// <param name="kinds">The endings of the files to link to; the name of the key leads to the first.</param>
    public PicturedLesson Page(IReadOnlyList<string> kinds)
    {
        var front = _home.Front with { Title = $"{_home.Front.Title}: twelve keys", Subtitle = null };
        var lines = RunningLines.Of(_home) with { Right = "All keys" };
        return new PicturedLesson(
            front,
            lines,
            [Paragraph(OrderInWords()), .. Keys(kinds), Heading("By degree"), .. Degrees()]
        );
    }

    private string OrderInWords() =>
        _order switch
        {
            KeyOrder.Fourths => "By fourths: each key is a fourth above the one before.",
            KeyOrder.HalfSteps => "By half-steps: each key is a half-step above the one before.",
            KeyOrder.FewestMoves => "By fewest moves: no other order moves the marks by fewer frets in all.",
            _ => throw new InvalidOperationException($"{_order} is not an order."),
        };

    private IEnumerable<Block> Keys(IReadOnlyList<string> kinds)
    {
        yield return Paragraph(
            $"Marks are counted on the {Wording.Place(_maps[0])}. Those that stay belong to the key before, too; notes that are new are bold, those that go are named at the end."
        );
        yield return Table(
            [.. Enumerable.Repeat(ColumnAlignment.Start, 8), ColumnAlignment.End, ColumnAlignment.Start],
            ["Key", .. DegreeNumbers, "Stay", "Go"],
            _keys.Select((key, at) => KeyRow(key, at == 0 ? null : _changes[at - 1], kinds))
        );
    }

    private ValueList<ValueList<Inline>> KeyRow(Key key, KeyChange? change, IReadOnlyList<string> kinds)
    {
        var arriving = change?.Arrives.Select(note => note.Pitch.Name).ToHashSet() ?? [];
        return
        [
            [new Inline.Checkbox(false), new Inline.Text("\u00a0"), .. Links(key, kinds)],
            .. key.Notes.Select(note =>
                arriving.Contains(note) ? [new Inline.Strong(Text(NameOf(note, key)))] : Text(NameOf(note, key))
            ),
            Text(
                change is null
                    ? ""
                    : Unbroken(
                        $"{Wording.Number(change.Stays.Count)} of {Wording.Number(change.Stays.Count + change.Arrives.Count)}"
                    )
            ),
            Text(change is null ? "" : Leaving(change)),
        ];
    }

    private ValueList<Inline> Links(Key key, IReadOnlyList<string> kinds)
    {
        var links = kinds.Select(
            (kind, at) =>
                new Inline.Link(
                    $"{Uri.EscapeDataString(_nameOf(key))}.{kind}",
                    Text(at == 0 ? NameOf(key) : kind.ToUpperInvariant())
                )
        );
        return links
            .SelectMany<Inline, Inline>((link, at) => at == 0 ? [link] : [new Inline.Text("\u00a0·\u00a0"), link])
            .ToValueList();
    }

    private string Leaving(KeyChange change) =>
        string.Join(
            ' ',
            change
                .Leaves.DistinctBy(note => note.Pitch.Name)
                .OrderBy(note => note.Degree.Number)
                .Select(note => NameOf(note.Pitch.Name, change.From.Key))
        );

    private IEnumerable<Block> Degrees()
    {
        var frets = _maps[0].Frets;
        var low = frets.First == 0 ? "the nut" : $"fret {Wording.Number(frets.First)}";
        var lost = _changes.SelectMany(change => change.Moves).Any(move => move.After is null)
            ? " What has no place here after that stands in brackets."
            : "";
        yield return Paragraph(
            $"Every degree moves as many frets as the tonic does, the shorter way. 3 + 2 means: three of its marks go along their strings, two pass an end and come back, twelve frets up if they pass {low}, twelve frets down if they pass fret {Wording.Number(frets.Last)}.{lost}"
        );
        yield return Table(
            [ColumnAlignment.Start, ColumnAlignment.Start, .. Enumerable.Repeat(ColumnAlignment.End, 7)],
            ["To", "Frets", .. DegreeNumbers],
            _changes.Select(DegreeRow)
        );
    }

    // All keys are of one kind, so all degrees have one offset.
    private static ValueList<ValueList<Inline>> DegreeRow(KeyChange change)
    {
        var offset = change.FretOffsets[0];
        return
        [
            Text(NameOf(change.To.Key)),
            Text($"{Wording.Number(Math.Abs(offset))} {(offset < 0 ? "down" : "up")}"),
            .. Enumerable
                .Range(1, 7)
                .Select(degree => Text(Marks([.. change.Moves.Where(move => move.Before.Degree.Number == degree)]))),
        ];
    }

    private static string Marks(IReadOnlyList<NoteMove> moves)
    {
        var along = moves.Count(move => move.Wrap == Wrap.None);
        var around = moves.Count(move => move.Wrap != Wrap.None && move.After is not null);
        var lost = moves.Count - along - around;
        return Wording.Number(along)
            + (around == 0 ? "" : $" + {Wording.Number(around)}")
            + (lost == 0 ? "" : $" ({Wording.Number(lost)})");
    }

    private static IEnumerable<string> DegreeNumbers => Enumerable.Range(1, 7).Select(Wording.Number);

    // Cells do not break: on a narrow screen the table moves instead.
    private static string NameOf(Key key) => Unbroken(Accidentals.Pretty(key.ToString()));

    private static string Unbroken(string text) => text.Replace(' ', '\u00a0');

    // Keys are named as in sentences, notes as the lesson names them.
    private string NameOf(NoteName note, Key key) =>
        NoteNameSystem.Of(_home.Front.Defaults.NoteNames, key).Format(note, unicode: true);

    private static ValueList<Inline> Text(string text) => text.Length == 0 ? [] : [new Inline.Text(text)];

    private static Block.Heading Heading(string text) => new(0, 1, Text(text));

    private static Block.Paragraph Paragraph(string text) => new(0, Text(text));

    private static Block.Table Table(
        ValueList<ColumnAlignment> columns,
        IEnumerable<string> header,
        IEnumerable<ValueList<ValueList<Inline>>> rows
    ) => new(0, columns, header.Select(Text).ToValueList(), rows.ToValueList());
}
