using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Text;

/// <summary>
/// A neck in characters: a line for each string, cells between the frets. The tonic stands in round brackets, members of
/// the chord in angle brackets, notes of the shape in square ones, what shows that a claim is false in braces.
/// </summary>
internal sealed class NeckText
{
    private const string Turn = "◆";

    private readonly NeckContent _content;
    private readonly Dictionary<Spot, NeckNote> _notes;
    private readonly int _cell;
    private readonly int _nameWidth;

    public NeckText(NeckContent content)
    {
        _content = content;
        _notes = content.Notes.ToDictionary(note => note.Spot);
        var hasRaised = content.Notes.Any(note => content.FingerBeside(note).Length > 0);
        _cell = content.Notes.Select(note => LabelOf(note).Length).DefaultIfEmpty(1).Max() + (hasRaised ? 3 : 2);
        _nameWidth = content.Map.Strings.Numbers.Max(number => Name(number).Length) + 1;
    }

    /// <summary>The lines: parts of the neck that fit the width one below the other, then what the signs mean.</summary>
    public IEnumerable<string> Lines(int width) =>
        Strings(width).Append("").Concat(Wrapping.Lines(string.Join(", ", Signs()), width));

    /// <summary>One shape by itself: its name and what it covers, then the part of the neck where it lies.</summary>
    public static IEnumerable<string> OfShape(Exhibit exhibit, Shape shape, int width)
    {
        var alone = exhibit with { Shapes = [shape], Notes = null, Landmarks = null, Symmetries = null };
        var stretch = CardWords.StretchOf(new ShapeLabels(exhibit, shape), shape);
        var cover = string.Join(
            ", ",
            ((string[])[CardWords.SpanOf(shape).Span, stretch]).Where(part => part.Length > 0)
        );
        var name =
            shape.Source is ShapeSource.OfScale
                ? $"{CardWords.NameOf(shape)}, {CardHeading.LargeText(shape)}"
                : CardWords.NameOf(shape);
        return Wrapping
            .Lines($"{name}: {cover}", width)
            .Concat(new NeckText(NeckContent.Of(alone, shape)).Strings(width));
    }

    /// <summary>What the fingers are, inside the marks or beside them.</summary>
    public static string FingerSigns(bool areInside) => areInside ? "1-4 fingers" : "¹-⁴ fingers";

    /// <summary>Parts of the neck that fit the width, an empty line between them.</summary>
    private IEnumerable<string> Strings(int width)
    {
        var frets = _content.Map.Frets;
        var perPart = Math.Max(1, (width - _nameWidth - 1) / (_cell + 1) - (frets.First == 0 ? 1 : 0));
        for (var first = frets.First; first <= frets.Last; first += perPart + (first == 0 ? 1 : 0))
        {
            var last = Math.Min(frets.Last, first + perPart - (first == 0 ? 0 : 1));
            foreach (var line in Part(new FretRange(first, last)).Prepend("").Skip(first == frets.First ? 1 : 0))
            {
                yield return line;
            }
        }
    }

    private IEnumerable<string> Part(FretRange frets)
    {
        foreach (var number in _content.Map.Strings.Numbers.Reverse())
        {
            yield return Row(Name(number), frets, fret => String(number, fret));
        }

        yield return Row("", frets, fret => (Centred(Wording.Number(fret), ' '), " "));
        if (_content.Landmarks is not null)
        {
            yield return Row("", frets, fret => (Centred(Tick(fret), ' '), " "));
        }

        if (_content.Culprits is { Frets: { Count: > 0 } culprits })
        {
            yield return Places(frets, culprits, "^");
        }

        var centres = _content.HalfTurnCentres.ToList();
        if (centres.Count > 0)
        {
            yield return Places(frets, centres, Turn);
        }
    }

    /// <summary>A row that marks places along the neck, halves on the wires.</summary>
    private string Places(FretRange frets, IEnumerable<double> places, string sign)
    {
        var marked = places.ToHashSet();
        return Row("", frets, fret => (Centred(At(fret), ' '), At(fret + 0.5).PadLeft(1)));

        string At(double place) => marked.Contains(place) ? sign : "";
    }

    /// <summary>A row of cells, each with the wire after it; mirrored as a whole for a left-handed player.</summary>
    private string Row(string name, FretRange frets, Func<int, (string Cell, string Wire)> draw)
    {
        var parts = new List<string>();
        foreach (var fret in frets.Frets)
        {
            var (cell, wire) = draw(fret);
            if (fret == frets.First && fret > 0)
            {
                parts.Add(draw(fret - 1).Wire);
            }

            parts.Add(cell);
            parts.Add(wire);
        }

        if (!_content.IsLeftHanded)
        {
            return (name.PadRight(_nameWidth) + string.Concat(parts)).TrimEnd();
        }

        parts.Reverse();
        return (string.Concat(parts) + " " + name).TrimEnd();
    }

    private (string Cell, string Wire) String(int number, int fret)
    {
        var start = _content.Map.Instrument.String(number).StartsAtFret;
        var line = fret <= start ? ' ' : '─';
        var spot = new Spot(number, fret);
        var isPlayed = _notes.TryGetValue(spot, out var note);
        var cell =
            IsCulprit(spot) ? $"{{{(isPlayed ? _content.LabelOf(note) : " ")}}}"
            : isPlayed ? Marked(note)
            : "";
        var wire =
            fret < start ? " "
            : fret == start ? "║"
            : "┼";
        return (Centred(cell, line), wire);
    }

    /// <summary>A short string that is counted from its own nut has a fret elsewhere than the others: the spot is marked itself.</summary>
    private bool IsCulprit(Spot spot) =>
        _content.Culprits is { } culprits
        && (
            culprits.Spots.Contains(spot)
            || _content.CountsFromOwnNut
                && _content.Map.Instrument.String(spot.String).StartsAtFret is > 0 and var start
                && culprits.Frets.Contains(spot.Fret - start)
        );

    private string Marked(NeckNote note)
    {
        var mark = _content.MarkOf(note);
        var label = LabelOf(note);
        var marked =
            mark.Kind == MarkKind.Chosen ? $"[{label}]"
            : mark.IsTonic ? $"({label})"
            : mark.Kind == MarkKind.OfChord ? $"<{label}>"
            : label;
        return marked + Raised(_content.FingerBeside(note));
    }

    /// <summary>What stands on a mark; where fingers do, a small o for an open string and a dot for a note without a finger.</summary>
    private string LabelOf(NeckNote note) =>
        _content.LabelOf(note) is { Length: > 0 } label ? label
        : _content.IsOpen(note) ? "o"
        : "·";

    private static string Raised(string finger) =>
        finger switch
        {
            "" => "",
            "1" => "¹",
            "2" => "²",
            "3" => "³",
            "4" => "⁴",
            _ => "ᵀ",
        };

    private string Tick(int fret) =>
        _content.Landmarks!.FullFrets.Contains(fret) ? "■"
        : _content.Landmarks.EmptyFrets.Contains(fret) ? "□"
        : "";

    private IEnumerable<string> Signs()
    {
        var marks = _content.Notes.Select(_content.MarkOf).ToList();
        if (marks.Exists(mark => mark.IsTonic && mark.Kind != MarkKind.Chosen))
        {
            yield return "( ) tonic";
        }

        if (marks.Exists(mark => mark.Kind == MarkKind.OfChord && !mark.IsTonic))
        {
            yield return $"< > in {_content.ChordName}";
        }

        if (_content.Chosen.Count > 0)
        {
            yield return "[ ] the shape";
        }

        if (_content.Notes.Any(note => _content.FingerAt(note.Spot).Length > 0))
        {
            yield return FingerSigns(_content.HasFingersInside);
        }

        if (_content.HasFingersInside && _content.Notes.Any(_content.IsOpen))
        {
            yield return "o open string";
        }

        if (_content.Culprits is { } culprits && culprits.Spots.Count + culprits.Frets.Count > 0)
        {
            string[] signs =
            [
                .. _content.Map.Spots.Where(IsCulprit).Take(1).Select(_ => "{ }"),
                .. culprits.Frets.Take(1).Select(_ => "^"),
            ];
            yield return $"{string.Join(" and ", signs)} {CulpritRings.Words}";
        }

        if (_content.HalfTurnCentres.Any())
        {
            yield return $"{Turn} half-turn: upside down about here, the key lies on itself";
        }

        if (_content.Landmarks is { FullFrets.Count: > 0 })
        {
            yield return "■ full fret";
        }

        if (_content.Landmarks is { EmptyFrets.Count: > 0 })
        {
            yield return "□ empty fret";
        }
    }

    private string Name(int number) => $"{Wording.Number(number)} {_content.NameOfString(number)}";

    private string Centred(string text, char filler)
    {
        var before = (_cell - text.Length) / 2;
        return new string(filler, before) + text + new string(filler, _cell - text.Length - before);
    }
}
