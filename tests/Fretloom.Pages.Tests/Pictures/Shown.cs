using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Tests.Pictures;

/// <summary>Exhibits for tests, put together by hand.</summary>
internal static class Shown
{
    /// <summary>The exhibit of a sentence; null when the sentence asks for what cannot be.</summary>
    public static Exhibit? By(string sentence) =>
        ShowQuestion.Answer(sentence, ShowDefaults.Standard) is { Value: { } exhibit } ? exhibit : null;

    public static Instrument Named(string name) =>
        Catalogue.TryFind(name, out var instrument) ? instrument : throw new ArgumentException(name, nameof(name));

    public static NeckMap Map(
        string instrument,
        string key,
        string? strings = null,
        string frets = "0-12",
        int capo = 0
    )
    {
        var neck = Named(instrument).WithCapo(capo);
        var set = strings is null ? neck.AllStrings : StringSet.Parse(strings);
        return new NeckMap(neck, Key.Parse(key), set, FretRange.Parse(frets));
    }

    public static Exhibit Empty(NeckMap map) =>
        new()
        {
            Sentence = $"show the notes of the key, on {map.Instrument.Name}, in {map.Key}",
            Map = map,
            Labels = LabelStyle.Degrees,
            Player = new Fretloom.Hand.Player(map.Instrument),
        };

    public static Exhibit NotesOfKey(NeckMap map) =>
        Empty(map) with
        {
            Notes = map.NotesOfKey.ToValueList(),
            Landmarks = Landmarks.Of(map),
        };

    public static Exhibit Sevenths(NeckMap map) =>
        Empty(map) with
        {
            Shapes = map.Key.Sevenths().SelectMany(chord => OneNotePerString(map, chord)).ToValueList(),
            Symmetries = SymmetryFinder.Of(map),
        };

    public static ValueList<Shape> OneNotePerString(NeckMap map, DiatonicChord chord) =>
        ShapeFinder.Find(
            map,
            new ShapeSource.OfChord(chord.Chord, chord.Numeral),
            new Voicing.OneNotePerString(Arrangement.Close, [0])
        );

    public static ValueList<Shape> Strummed(NeckMap map, string chord, int? position = 1) =>
        ShapeFinder.Find(map, new ShapeSource.OfChord(Chord.Parse(chord), null), new Voicing.Strummed(position, [0]));
}
