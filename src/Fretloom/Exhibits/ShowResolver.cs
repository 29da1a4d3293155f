using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits;

/// <summary>Works a show sentence out.</summary>
public static class ShowResolver
{
    private static readonly Key CMajor = new(new NoteName(Step.C), ScaleKind.Major);

    /// <summary>Fills in what the sentence leaves unsaid and computes everything it asks to see.</summary>
    /// <param name="sentence">A parsed sentence.</param>
    /// <param name="defaults">What to use where it says nothing.</param>
    /// <returns>The exhibit, or what stands in the way: a string, fret or capo the instrument lacks, a chord that needs more strings.</returns>
    public static Resolution Resolve(ShowSentence sentence, ShowDefaults defaults)
    {
        var instrument = sentence.Instrument ?? defaults.Instrument;
        if (Obstacle(sentence, instrument) is { } obstacle)
        {
            return obstacle;
        }

        var complete = Completed(sentence, defaults, instrument);
        var map = new NeckMap(
            instrument.WithCapo(sentence.Capo ?? 0),
            complete.Key!,
            complete.Strings!.Value,
            complete.Frets!.Value
        );

        var shapes = ShapeQuery.Run(complete, map);
        if (shapes.Error is { } error)
        {
            return Resolution.Refused(error.Phrase, error.Message);
        }

        return Resolution.Shown(
            new Exhibit
            {
                Sentence = complete.ToString(),
                Map = map,
                Labels = complete.Labels ?? LabelStyle.Degrees,
                IsLeftHanded = complete.IsLeftHanded,
                Hand = complete.Hand ?? HandSize.Adult,
                Notes = NotesOf(complete, map),
                Landmarks = complete.Subjects.Any(WantsLandmarks) ? Landmarks.Of(map) : null,
                Shapes = shapes.Found,
                Symmetries = complete.Subjects.Any(subject => subject is Subject.TheSymmetries)
                    ? SymmetryFinder.Of(map)
                    : null,
            }
        );
    }

    private static Resolution? Obstacle(ShowSentence sentence, Instrument instrument)
    {
        var capo = sentence.Capo ?? 0;
        var lastFret = instrument.Frets - capo;
        return sentence switch
        {
            _ when capo >= instrument.Frets => Resolution.Refused(
                ShowPhrase.Instrument,
                $"The {instrument.Name} has {instrument.Frets} frets; a capo at {capo} leaves none to play."
            ),
            { Strings: { } strings } when strings.Numbers[0] > instrument.Strings.Count => Resolution.Refused(
                ShowPhrase.Strings,
                $"The {instrument.Name} has {instrument.Strings.Count} strings; there is no string {strings.Numbers[0]}."
            ),
            { Frets: { } frets } when frets.Last > lastFret => Resolution.Refused(
                ShowPhrase.Frets,
                capo == 0
                    ? $"The {instrument.Name} has {lastFret} frets; there is no fret {frets.Last}."
                    : $"With a capo at {capo} the {instrument.Name} has {lastFret} frets left; there is no fret {frets.Last}."
            ),
            { Labels: LabelStyle.Fingers } or { IsWithFingers: true } => Resolution.Refused(
                ShowPhrase.Labels,
                "Fingers are not worked out by this version; say 'as degrees', 'as members', 'as names' or 'as intervals'."
            ),
            _ => null,
        };
    }

    private static ShowSentence Completed(ShowSentence sentence, ShowDefaults defaults, Instrument instrument)
    {
        var lastFret = instrument.Frets - (sentence.Capo ?? 0);
        var frets = sentence.Frets ?? defaults.Frets ?? new FretRange(0, 12);
        var clipped = new FretRange(Math.Min(frets.First, lastFret), Math.Min(frets.Last, lastFret));
        var strings = sentence.IsOnAllStrings ? null : sentence.Strings ?? DefaultStrings(sentence, defaults);
        return sentence with
        {
            Instrument = instrument,
            Key = sentence.Key ?? defaults.Key ?? KeyOfScale(sentence) ?? CMajor,
            Strings = strings ?? instrument.AllStrings,
            IsOnAllStrings = false,
            Frets = clipped,
            Labels = sentence.Labels ?? LabelStyle.Degrees,
            Hand = sentence.Hand ?? (defaults.Hand == HandSize.Adult ? null : defaults.Hand),
            IsLeftHanded = sentence.IsLeftHanded || defaults.IsLeftHanded,
        };
    }

    private static StringSet? DefaultStrings(ShowSentence sentence, ShowDefaults defaults) =>
        sentence.Instrument is null || sentence.Instrument == defaults.Instrument ? defaults.Strings : null;

    /// <summary>The key a lone scale is heard in: itself if it has seven notes, else the minor or major key on its tonic.</summary>
    private static Key? KeyOfScale(ShowSentence sentence)
    {
        var scale = sentence
            .Subjects.Select(subject =>
                subject switch
                {
                    Subject.NotesOfScale notes => notes.Scale,
                    Subject.ScaleShapes shapes => shapes.Scale,
                    _ => null,
                }
            )
            .FirstOrDefault(scale => scale is not null);
        return scale switch
        {
            null => null,
            { Kind.IsSevenNote: true } => new Key(scale.Tonic, scale.Kind),
            _ => new Key(scale.Tonic, scale.Kind.IsMinor ? ScaleKind.NaturalMinor : ScaleKind.Major),
        };
    }

    private static bool WantsLandmarks(Subject subject) =>
        subject is Subject.NotesOfTheKey or Subject.TheLandmarks or Subject.TheThirds;

    private static ValueList<NeckNote>? NotesOf(ShowSentence sentence, NeckMap map)
    {
        var asked = sentence
            .Subjects.Select(subject =>
                subject switch
                {
                    Subject.NotesOfTheKey => map.NotesOfKey,
                    Subject.NotesOfScale notes => map.NotesNamed(notes.Scale.Notes),
                    Subject.EveryNote every => map.NotesNamed([every.Name]),
                    _ => null,
                }
            )
            .OfType<IEnumerable<NeckNote>>()
            .ToList();
        return asked.Count == 0
            ? null
            : asked
                .SelectMany(notes => notes)
                .DistinctBy(note => note.Spot)
                .OrderByDescending(note => note.Spot.String)
                .ThenBy(note => note.Spot.Fret)
                .ToValueList();
    }
}
