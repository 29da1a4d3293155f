using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>Cards in words and as a table.</summary>
internal static class CardWords
{
    /// <summary>The stretch (<c>63 mm</c>, empty where nothing is stretched) and the span (<c>5-fret span</c>, <c>3 frets + open</c>).</summary>
    public static (string Stretch, string Span) SpanOf(Shape shape)
    {
        var hasOpen = shape.Spots.Any(spot => spot.Fret == 0);
        return shape.Span switch
        {
            0 => ("", "open strings"),
            1 => ("", "one fret" + (hasOpen ? " + open" : "")),
            _ => (
                $"{Wording.Number((int)Math.Round(shape.StretchMm))} mm",
                hasOpen ? $"{Wording.Number(shape.Span)} frets + open" : $"{Wording.Number(shape.Span)}-fret span"
            ),
        };
    }

    /// <summary>The chord symbol with the lowest note as bass, <c>Gmaj7/B</c>, or the name of the scale.</summary>
    public static string SymbolOf(Shape shape)
    {
        if (shape.Source is not ShapeSource.OfChord { Chord: var chord })
        {
            return Accidentals.Pretty(shape.Source.Name);
        }

        var bass = shape.Notes.MinBy(note => note.Pitch.MidiNumber).Pitch.Name;
        return Accidentals.Pretty($"{chord.Root}{chord.Quality}{(bass == chord.Root ? "" : $"/{bass}")}");
    }

    /// <summary>The numeral with the chord, or the name alone: <c>V7, F7</c>.</summary>
    public static string NameOf(Shape shape) =>
        shape.Source is ShapeSource.OfChord { Roman: { } roman }
            ? $"{roman.ToPrinted()}, {SymbolOf(shape)}"
            : SymbolOf(shape);

    /// <summary>The title and the description of some cards.</summary>
    public static (string Title, string Description) Of(Exhibit exhibit, IReadOnlyList<Shape> shapes)
    {
        var map = exhibit.Map;
        var key = Accidentals.Pretty(map.Key.ToString());
        var names = shapes.Select(CardHeading.LargeText).Distinct();
        var title =
            $"Shapes in {key} on {Wording.Name(map.Instrument)} {Wording.Strings(map.Strings)}: {Wording.List(names)}";
        return (
            title,
            string.Join(
                " ",
                shapes.Select(shape => Sentence(exhibit, shape)).Prepend($"Shapes in {key} on {Wording.Place(map)}.")
            )
        );
    }

    /// <summary>A row for each shape: name, frets from the far string on, the fingers if they are shown, span, stretch.</summary>
    public static TextTable Table(Exhibit exhibit, IEnumerable<Shape> shapes)
    {
        var strings = exhibit.Map.Strings.Numbers;
        string[] fingers = exhibit.ShowsFingers ? ["fingers"] : [];
        return new TextTable(
            ["shape", .. strings.Select(number => $"string {Wording.Number(number)}"), .. fingers, "span", "stretch"],
            shapes
                .Select(shape =>
                {
                    var labels = new ShapeLabels(exhibit, shape);
                    return new[] { NameOf(shape) }
                        .Concat(strings.Select(number => FretsOn(exhibit.Map.Instrument, shape, number)))
                        .Concat(fingers.Select(_ => labels.FingersOn(strings)))
                        .Append(SpanOf(shape).Span)
                        .Append(StretchOf(labels, shape))
                        .ToValueList();
                })
                .ToValueList()
        );
    }

    /// <summary>The stretch, and what it is for the hand: <c>128 mm, very wide 1–4</c>; empty where nothing is stretched.</summary>
    public static string StretchOf(ShapeLabels labels, Shape shape) =>
        string.Join(
            ", ",
            new[] { SpanOf(shape).Stretch, WideSign.Words(labels.InHand) }.Where(part => part.Length > 0)
        );

    private static string FretsOn(Instrument instrument, Shape shape, int number) =>
        string.Join(
            ", ",
            shape
                .Spots.Where(spot => spot.String == number)
                .Select(spot => Wording.Number(instrument.IsOpen(spot) ? 0 : spot.Fret))
        );

    private static string Sentence(Exhibit exhibit, Shape shape)
    {
        var labels = new ShapeLabels(exhibit, shape);
        var strings = shape
            .Notes.GroupBy(note => note.Spot.String)
            .Select(run => $"string {Wording.Number(run.Key)} {Places(labels, run.ToList())}");
        var stretch = StretchOf(labels, shape);
        return $"{NameOf(shape)}: {string.Join(", ", strings)}; {SpanOf(shape).Span}{(stretch.Length > 0 ? ", " + stretch : "")}.";
    }

    private static string Places(ShapeLabels labels, List<ShapeNote> notes) =>
        notes is [{ Spot.Fret: 0 }] ? "open"
        : labels.Shown(notes[0]).Length > 0
            ? Wording.List(
                notes.Select(note => $"fret {Wording.Number(note.Spot.Fret)}{Fingers.After(labels.Shown(note))}")
            )
        : notes.Count == 1 ? $"fret {Wording.Number(notes[0].Spot.Fret)}"
        : $"frets {Wording.List(notes.Select(note => note.Spot.Fret))}";
}
