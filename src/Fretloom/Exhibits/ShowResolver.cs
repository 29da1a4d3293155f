using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Sentences.Show;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits;

/// <summary>Works a show sentence out.</summary>
public static class ShowResolver
{
    private const string NoFingers =
        "Fingers belong to shapes or to notes in one position; add 'in fifth position', or ask for chords.";

    private static readonly Key CMajor = new(new NoteName(Step.C), ScaleKind.Major);

    /// <summary>Fills in what the sentence leaves unsaid and computes everything it asks to see.</summary>
    /// <param name="sentence">A sentence that was read with the instrument of the defaults as the one unsaid.</param>
    /// <param name="defaults">What to use where it says nothing.</param>
    /// <returns>The exhibit, or what stands in the way, such as a chord that needs more strings.</returns>
    /// <exception cref="ArgumentException">A string, a fret or the capo is not on the instrument.</exception>
    public static Resolution Resolve(ShowSentence sentence, ShowDefaults defaults)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        ArgumentNullException.ThrowIfNull(defaults);
        var complete = Completed(sentence, defaults);
        var map = MapOf(complete);
        if (PositionOfNotes(complete) is { } position && ScaleShapeFinder.WhyNot(map, position) is { } reason)
        {
            return Resolution.Refused(ShowPhrase.Position, reason);
        }

        var player = PlayerOf(complete, map.Instrument);
        var shapes = ShapeQuery.Run(complete, map, player);
        if (shapes.Error is { } error)
        {
            return Resolution.Refused(error.Phrase, error.Message);
        }

        var exhibit = Exhibit(complete, map, player, shapes) with { NoteNames = defaults.NoteNames };
        return exhibit.ShowsFingers && exhibit.Shapes is null
            ? WithNoteFingers(exhibit, complete)
            : Resolution.Shown(exhibit);
    }

    /// <summary>The neck that a sentence looks at: instrument with capo, key, strings and frets.</summary>
    /// <param name="sentence">A sentence that was read with the instrument of the defaults as the one unsaid.</param>
    /// <param name="defaults">What to use where it says nothing.</param>
    /// <exception cref="ArgumentException">A string, a fret or the capo is not on the instrument.</exception>
    public static NeckMap NeckOf(ShowSentence sentence, ShowDefaults defaults)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        ArgumentNullException.ThrowIfNull(defaults);
        return MapOf(Completed(sentence, defaults));
    }

    /// <summary>The neck of a completed sentence.</summary>
    internal static NeckMap MapOf(ShowSentence complete) =>
        new(
            complete.Instrument!.WithCapo(complete.Capo ?? 0),
            complete.Key!,
            complete.Strings!.Value,
            complete.Frets!.Value
        );

    /// <summary>
    /// Spots alone are fingered as a shape that was put together by hand, single notes in a position as a line, the far string's first.
    /// </summary>
    private static Resolution WithNoteFingers(Exhibit exhibit, ShowSentence complete)
    {
        var position = PositionOfNotes(complete);
        var areSpots = complete.Subjects.All(subject => subject is Subject.GivenSpots);
        if (exhibit.Notes is not { } notes || (position is null && !areSpots))
        {
            return Resolution.Refused(ShowPhrase.Labels, NoFingers);
        }

        if (notes.Count == 0)
        {
            return Resolution.Shown(exhibit);
        }

        var spots = notes.Select(note => note.Spot).ToValueList();
        var answer = areSpots
            ? new ShapeByHand(exhibit.Player, exhibit.Map.Key, spots).Fingering
            : InPosition(exhibit.Player, spots, position!.Value);
        return answer.IsFound
            ? Resolution.Shown(exhibit with { NoteFingers = answer.Best.Notes, NoteStretch = answer.Best.Widest })
            : Resolution.Refused(ShowPhrase.Labels, answer.Refusal.Message);
    }

    // If the hand can stay there, else with shifts.
    private static FingeringAnswer InPosition(Player player, ValueList<Spot> spots, int position)
    {
        var line = spots.Select(spot => (LineNote)new LineNote.At(spot)).ToValueList();
        var inPlace = LineFingering.Find(player, line, [new LineRule.StayIn(position)]);
        return inPlace.IsFound ? inPlace : LineFingering.Find(player, line, []);
    }

    /// <summary>The hand of a completed sentence.</summary>
    internal static Player PlayerOf(ShowSentence complete, Instrument instrument) =>
        new(instrument, complete.Hand ?? HandSize.Adult, complete.IsTurnedOver, complete.UsesThumb == true);

    private static Exhibit Exhibit(ShowSentence complete, NeckMap map, Player player, ShapeQuery.Answer shapes)
    {
        var phrases = complete.Phrases;
        return new()
        {
            Sentence = ShowPrinter.Print(phrases),
            Phrases = phrases,
            Name = ExhibitName.Of(complete),
            Map = map,
            Labels = complete.Labels!.Value,
            IsLeftHanded = complete.IsLeftHanded == true && !complete.IsTurnedOver,
            Player = player,
            Notes = NotesOf(complete, map),
            Landmarks = complete.Subjects.Any(WantsLandmarks) ? Landmarks.Of(map) : null,
            ShowsThirds = complete.Subjects.Any(subject => subject is Subject.TheThirds),
            Shapes = shapes.Found?.Select(found => found.Shape).ToValueList(),
            InHand = shapes.Found ?? [],
            ShowsFingers = complete is { Labels: LabelStyle.Fingers } or { IsWithFingers: true },
            ComparesReach = complete.Hand is not null,
            WithoutShapes = shapes.Missing,
            AsksForInversions = complete.Voicing.Inversions is not null,
            HasRootLowest =
                complete.Voicing is { Inversions: null, EasyStrings: null, Arrangement: not Arrangement.AnyOrder },
            Symmetries = complete.Subjects.Any(subject => subject is Subject.TheSymmetries)
                ? SymmetryFinder.Of(map)
                : null,
        };
    }

    /// <summary>The sentence with everything it leaves unsaid.</summary>
    internal static ShowSentence Completed(ShowSentence sentence, ShowDefaults defaults)
    {
        var instrument = sentence.Instrument ?? defaults.Instrument;
        var capo = sentence.Capo ?? instrument.Capo;
        var key = sentence.Key ?? defaults.Key ?? KeyOfScale(sentence) ?? CMajor;
        var strings = sentence.IsOnAllStrings ? null : sentence.Strings ?? DefaultStrings(sentence, defaults);
        return sentence with
        {
            Instrument = instrument,
            Capo = capo == 0 ? null : capo,
            Key = key,
            Subjects = sentence
                .Subjects.Select(subject => OnTonic(subject, key, sentence.Voicing))
                .Distinct()
                .ToValueList(),
            Strings = strings ?? instrument.AllStrings,
            IsOnAllStrings = false,
            Frets = sentence.Frets ?? UsualFrets(sentence, defaults, instrument.Frets - capo),
            Labels = sentence.Labels ?? LabelStyle.Degrees,
            Hand = sentence.Hand ?? defaults.Hand,
            IsLeftHanded = sentence.IsLeftHanded ?? defaults.IsLeftHanded ? true : null,
            IsTurnedOver = sentence.IsTurnedOver || (sentence.IsLeftHanded is null && defaults.IsTurnedOver),
            UsesThumb = sentence.UsesThumb ?? defaults.UsesThumb ? true : null,
        };
    }

    // The chromatic scale that names no tonic.
    private static Subject OnTonic(Subject subject, Key key, VoicingPhrase voicing)
    {
        if (subject is not Subject.TheChromaticScale { NotesPerString: var count })
        {
            return subject;
        }

        var scale = new Scale(key.Tonic, ScaleKind.Chromatic);
        return count is null && voicing.Position is null
            ? new Subject.NotesOfScale(scale)
            : new Subject.ScaleShapes(scale, count);
    }

    /// <summary>
    /// The lesson's frets, else 0-12, and on as far as a position that is named, with a fret on either side for the stretches of a scale; single notes in a position are looked for there alone.
    /// </summary>
    private static FretRange UsualFrets(ShowSentence sentence, ShowDefaults defaults, int lastFret)
    {
        var usual = defaults.Frets ?? new FretRange(0, 12);
        foreach (var spot in GivenSpots(sentence))
        {
            usual = new FretRange(Math.Min(usual.First, spot.Fret), Math.Max(usual.Last, spot.Fret));
        }

        if (sentence.Voicing.Position is { } position)
        {
            var near = Reach.FretsOf(position);
            var isStretched = sentence.Subjects.Any(subject => subject.IsLaidOut);
            near = isStretched ? new FretRange(Math.Max(0, near.First - 1), near.Last + 1) : near;
            usual = PositionOfNotes(sentence) is null
                ? new FretRange(Math.Min(usual.First, near.First), Math.Max(usual.Last, near.Last))
                : near;
        }

        return new FretRange(Math.Min(usual.First, lastFret), Math.Min(usual.Last, lastFret));
    }

    /// <summary>The open strings of a map, the far one first.</summary>
    internal static IEnumerable<NeckNote> OpenStrings(NeckMap map) =>
        map
            .Strings.Numbers.Select(number => map.NoteAt(new Spot(number, map.Instrument.String(number).StartsAtFret)))
            .OfType<NeckNote>();

    /// <summary>The position that single notes are asked for in; null when none is named, or it is one of shapes.</summary>
    private static int? PositionOfNotes(ShowSentence sentence) =>
        sentence.Subjects.All(subject =>
            subject
                is Subject.NotesOfTheKey
                    or Subject.NotesOfScale
                    or Subject.EveryNote
                    or Subject.GivenNotes
                    or Subject.TheThirds
                    or Subject.TheOpenStrings
        )
            ? sentence.Voicing.Position
            : null;

    // The lesson's, unless a spot that is given lies on another string.
    private static StringSet? DefaultStrings(ShowSentence sentence, ShowDefaults defaults) =>
        (sentence.Instrument is null || sentence.Instrument == defaults.Instrument)
        && GivenSpots(sentence).All(spot => defaults.Strings?.Numbers.Contains(spot.String) != false)
            ? defaults.Strings
            : null;

    private static IEnumerable<Spot> GivenSpots(ShowSentence sentence) =>
        sentence.Subjects.OfType<Subject.GivenSpots>().SelectMany(given => given.Spots);

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

    /// <summary>Where a note that is named lies on a map.</summary>
    internal static IEnumerable<NeckNote> NotesOf(GivenNote note, NeckMap map) =>
        map.NotesNamed([note.Name]).Where(found => note.Pitch is not { } pitch || found.Pitch == pitch);

    /// <summary>The single notes that a completed sentence asks for; null when it asks for none.</summary>
    internal static ValueList<NeckNote>? NotesOf(ShowSentence sentence, NeckMap map)
    {
        var position = PositionOfNotes(sentence);
        var asked = sentence
            .Subjects.Select(subject =>
                subject switch
                {
                    Subject.NotesOfTheKey => map.NotesOfKey,
                    Subject.NotesOfScale notes => map.NotesNamed(notes.Scale.Notes),
                    Subject.EveryNote every => map.NotesNamed([every.Name]),
                    Subject.GivenNotes given => given.Notes.SelectMany(note => NotesOf(note, map)),
                    Subject.GivenSpots given => given.Spots.Select(map.NoteAt).OfType<NeckNote>(),
                    Subject.TheOpenStrings => OpenStrings(map),
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
                .Where(note => position is null || Reach.FretsOf(position.Value).Contains(note.Spot.Fret))
                .OrderByDescending(note => note.Spot.String)
                .ThenBy(note => note.Spot.Fret)
                .ToValueList();
    }
}
