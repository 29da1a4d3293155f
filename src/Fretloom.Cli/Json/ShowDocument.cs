using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Cli.Json;

/// <summary>What <c>fretloom show --json</c> prints. Pitches are ASCII; octave 4 holds MIDI 60.</summary>
/// <param name="Sentence">The sentence in full, as the program understood it.</param>
/// <param name="Instrument">The instrument.</param>
/// <param name="Key">The key: tonic and kind.</param>
/// <param name="Strings">The strings looked at, the farthest from the floor first.</param>
/// <param name="FretRange">First and last fret.</param>
/// <param name="Hand">The hand that fingers and widths are for, in millimetres.</param>
/// <param name="Notes">The notes asked for.</param>
/// <param name="Landmarks">The landmarks, when asked for.</param>
/// <param name="Shapes">The shapes, when chords or stretches of scale were asked for.</param>
/// <param name="Symmetries">The symmetries, when asked for.</param>
/// <param name="Reach">What the hand reaches in words, when a hand was named and shapes are shown.</param>
public sealed record ShowDocument(
    string Sentence,
    InstrumentDocument Instrument,
    string Key,
    IReadOnlyList<int> Strings,
    IReadOnlyList<int> FretRange,
    double Hand,
    IReadOnlyList<NoteDocument>? Notes = null,
    LandmarksDocument? Landmarks = null,
    IReadOnlyList<ShapeDocument>? Shapes = null,
    SymmetriesDocument? Symmetries = null,
    ReachDocument? Reach = null
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
            exhibit.Player.Hand.LengthMm,
            exhibit.Notes?.Select(note => NoteDocument.Of(note, exhibit.FingerAt(note.Spot))).ToList(),
            exhibit.Landmarks is { } landmarks ? LandmarksDocument.Of(landmarks) : null,
            exhibit.Shapes is null
                ? null
                : [.. exhibit.InHand.Select(shape => ShapeDocument.Of(shape, exhibit.Player.Hand))],
            exhibit.Symmetries is { } symmetries ? SymmetriesDocument.Of(symmetries) : null,
            ReachReport.Of(exhibit) is { } report ? ReachDocument.Of(report) : null
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
/// <param name="Finger">0 for an open string, 1 to 4 from index to little finger; left out unless fingers were asked for.</param>
public sealed record NoteDocument(int String, int Fret, string Pitch, int Midi, string Degree, int? Finger = null)
{
    internal static NoteDocument Of(NeckNote note, Finger? finger) =>
        new(
            note.Spot.String,
            note.Spot.Fret,
            note.Pitch.ToString(),
            note.Pitch.MidiNumber,
            note.Degree.ToString(),
            (int?)finger
        );
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

/// <summary>Which shapes the hand reaches, in words.</summary>
/// <param name="Summary">How many of them.</param>
/// <param name="Lines">One for each shape that is not in reach, with what to do instead.</param>
public sealed record ReachDocument(string Summary, IReadOnlyList<string> Lines)
{
    internal static ReachDocument Of(ReachReport report) => new(report.Summary, [.. report.Lines]);
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
