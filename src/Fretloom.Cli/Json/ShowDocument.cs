using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Cli.Json;

/// <summary>What <c>fretloom show --json</c> prints. Pitches are ASCII; octave 4 holds MIDI 60.</summary>
/// <param name="Sentence">The sentence in full, as the program understood it.</param>
/// <param name="Instrument">The instrument.</param>
/// <param name="Key">The key: tonic and kind.</param>
/// <param name="Strings">The strings looked at, the farthest from the floor first.</param>
/// <param name="FretRange">First and last fret.</param>
/// <param name="Notes">The notes asked for.</param>
/// <param name="Landmarks">The landmarks, when asked for.</param>
/// <param name="Shapes">The shapes, when chords or stretches of scale were asked for.</param>
/// <param name="Symmetries">The symmetries, when asked for.</param>
public sealed record ShowDocument(
    string Sentence,
    InstrumentDocument Instrument,
    string Key,
    IReadOnlyList<int> Strings,
    IReadOnlyList<int> FretRange,
    IReadOnlyList<NoteDocument>? Notes = null,
    LandmarksDocument? Landmarks = null,
    IReadOnlyList<ShapeDocument>? Shapes = null,
    SymmetriesDocument? Symmetries = null
)
{
    /// <summary>The document of an exhibit.</summary>
    public static ShowDocument Of(Exhibit exhibit) =>
        new(
            exhibit.Sentence,
            InstrumentDocument.Of(exhibit.Map.Instrument),
            exhibit.Map.Key.ToString(),
            [.. exhibit.Map.Strings.Numbers],
            [exhibit.Map.Frets.First, exhibit.Map.Frets.Last],
            exhibit.Notes?.Select(NoteDocument.Of).ToList(),
            exhibit.Landmarks is { } landmarks ? LandmarksDocument.Of(landmarks) : null,
            exhibit.Shapes?.Select(ShapeDocument.Of).ToList(),
            exhibit.Symmetries is { } symmetries ? SymmetriesDocument.Of(symmetries) : null
        );
}

/// <summary>An instrument.</summary>
/// <param name="Name">As in a sentence, without article.</param>
/// <param name="OpenStrings">Open pitches, string 1 first; with a capo, what the capo gives.</param>
/// <param name="ScaleLengthMm">Nut to bridge in millimetres.</param>
/// <param name="Frets">Frets on the neck.</param>
/// <param name="Capo">The capo's fret; left out when there is none.</param>
public sealed record InstrumentDocument(
    string Name,
    IReadOnlyList<string> OpenStrings,
    double ScaleLengthMm,
    int Frets,
    int? Capo = null
)
{
    internal static InstrumentDocument Of(Instrument instrument) =>
        new(
            instrument.Name,
            [.. instrument.OpenPitches.Select(pitch => pitch.ToString())],
            instrument.ScaleLengthMm,
            instrument.Frets,
            instrument.Capo == 0 ? null : instrument.Capo
        );
}

/// <summary>A note on the neck.</summary>
/// <param name="String">The string, 1 nearest the floor.</param>
/// <param name="Fret">The fret, 0 open.</param>
/// <param name="Pitch">The spelled pitch.</param>
/// <param name="Midi">The MIDI number.</param>
/// <param name="Degree">The place in the key's own scale.</param>
public sealed record NoteDocument(int String, int Fret, string Pitch, int Midi, string Degree)
{
    internal static NoteDocument Of(NeckNote note) =>
        new(note.Spot.String, note.Spot.Fret, note.Pitch.ToString(), note.Pitch.MidiNumber, note.Degree.ToString());
}

/// <summary>Landmarks.</summary>
/// <param name="FullFrets">Frets at which every string of the set sounds a note of the key, ascending.</param>
/// <param name="EmptyFrets">Frets at which none does, ascending.</param>
/// <param name="Thirds">Thirds between neighbouring strings.</param>
/// <param name="Hinge">The one pair of neighbours tuned unlike the others, far string first, or null.</param>
public sealed record LandmarksDocument(
    IReadOnlyList<int> FullFrets,
    IReadOnlyList<int> EmptyFrets,
    IReadOnlyList<ThirdDocument> Thirds,
    [property: System.Text.Json.Serialization.JsonIgnore(
        Condition = System.Text.Json.Serialization.JsonIgnoreCondition.Never
    )]
        IReadOnlyList<int>? Hinge
)
{
    internal static LandmarksDocument Of(Landmarks landmarks) =>
        new(
            [.. landmarks.FullFrets],
            [.. landmarks.EmptyFrets],
            [.. landmarks.Thirds.Select(ThirdDocument.Of)],
            landmarks.Hinge is { } hinge ? [hinge.Far, hinge.Near] : null
        );
}

/// <summary>A third between neighbouring strings.</summary>
/// <param name="LowerString">The string of the lower-sounding note.</param>
/// <param name="UpperString">The string of the upper-sounding note.</param>
/// <param name="Quality"><c>major</c>, <c>minor</c>, <c>diminished</c> or <c>augmented</c>.</param>
/// <param name="Degree">The degree of the lower note.</param>
/// <param name="Frets">The frets of the lower- and the upper-sounding note.</param>
public sealed record ThirdDocument(
    int LowerString,
    int UpperString,
    string Quality,
    string Degree,
    IReadOnlyList<int> Frets
)
{
    internal static ThirdDocument Of(Third third) =>
        new(
            third.Lower.Spot.String,
            third.Upper.Spot.String,
            third.Quality,
            third.Lower.Degree.ToString(),
            [third.Lower.Spot.Fret, third.Upper.Spot.Fret]
        );
}

/// <summary>A shape.</summary>
/// <param name="Span">Frets covered, inclusively, open strings left out.</param>
/// <param name="StretchMm">Millimetres between the outermost landing points, to a tenth.</param>
/// <param name="Spots">The notes, far string first.</param>
/// <param name="Chord">The chord symbol; left out for a stretch of scale.</param>
/// <param name="Roman">The Roman numeral; left out when the chord was named by its symbol.</param>
/// <param name="Scale">The scale; left out for a chord.</param>
/// <param name="MutedStrings">Strings of the set that must not sound, descending; left out when there are none.</param>
public sealed record ShapeDocument(
    int Span,
    double StretchMm,
    IReadOnlyList<ShapeSpotDocument> Spots,
    string? Chord = null,
    string? Roman = null,
    string? Scale = null,
    IReadOnlyList<int>? MutedStrings = null
)
{
    internal static ShapeDocument Of(Shape shape)
    {
        var chord = shape.Source as ShapeSource.OfChord;
        var muted = shape.MutedStrings.ToList();
        return new(
            shape.Span,
            Math.Round(shape.StretchMm, 1),
            [.. shape.Notes.Select(ShapeSpotDocument.Of)],
            chord?.Chord.ToString(),
            chord?.Roman?.ToString(),
            (shape.Source as ShapeSource.OfScale)?.Name,
            muted.Count == 0 ? null : muted
        );
    }
}

/// <summary>A note of a shape.</summary>
/// <param name="String">The string, 1 nearest the floor.</param>
/// <param name="Fret">The fret, 0 open.</param>
/// <param name="Pitch">The spelled pitch.</param>
/// <param name="Midi">The MIDI number.</param>
/// <param name="Degree">The place in the key's own scale.</param>
/// <param name="Member">The place in the chord: 1 for the root, 3, 5, 7.</param>
public sealed record ShapeSpotDocument(int String, int Fret, string Pitch, int Midi, string Degree, string Member)
{
    internal static ShapeSpotDocument Of(ShapeNote note) =>
        new(
            note.Spot.String,
            note.Spot.Fret,
            note.Pitch.ToString(),
            note.Pitch.MidiNumber,
            note.Degree.ToString(),
            note.Member
        );
}

/// <summary>Symmetries.</summary>
/// <param name="HalfTurnCentres">Centres of the endless neck inside the range, ascending, halves allowed.</param>
/// <param name="Pairs">Chords of the key whose shapes are images of one another.</param>
public sealed record SymmetriesDocument(IReadOnlyList<double> HalfTurnCentres, IReadOnlyList<PairDocument> Pairs)
{
    internal static SymmetriesDocument Of(Symmetries symmetries) =>
        new(
            [.. symmetries.HalfTurnCentres],
            [.. symmetries.Pairs.Select(pair => new PairDocument(pair.A, pair.B, pair.Motion, pair.Strings.ToString()))]
        );
}

/// <summary>Two chords whose shapes are images of one another.</summary>
/// <param name="A">The first chord's Roman numeral.</param>
/// <param name="B">The second's.</param>
/// <param name="Motion"><c>half-turn</c>, <c>mirror</c> or <c>same form</c>.</param>
/// <param name="Strings">The strings they are compared on, such as <c>4-1</c>.</param>
public sealed record PairDocument(string A, string B, string Motion, string Strings);
