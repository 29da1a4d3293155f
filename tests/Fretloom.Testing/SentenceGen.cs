using CsCheck;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Testing;

/// <summary>Random show sentences of everything that the sentences can say, and damaged ones.</summary>
public static class SentenceGen
{
    /// <summary>Note names with at most two accidentals.</summary>
    public static Gen<NoteName> NoteName { get; } =
        Gen.Select(Gen.Int[0, 6], Gen.Int[-2, 2], (step, alteration) => new NoteName((Step)step, alteration));

    /// <summary>Scales of every kind.</summary>
    public static Gen<Scale> Scale { get; } =
        Gen.Select(NoteName, Gen.OneOf([.. ScaleKind.All]), (tonic, kind) => new Scale(tonic, kind));

    /// <summary>Keys of every kind.</summary>
    public static Gen<Key> Key { get; } =
        Gen.Select(
            NoteName,
            Gen.OneOf([.. ScaleKind.All.Where(kind => kind.IsSevenNote)]),
            (tonic, kind) => new Key(tonic, kind)
        );

    /// <summary>Instruments of the catalogue, one in four with another tuning.</summary>
    public static Gen<Instrument> Instrument { get; } =
        Gen.Select(Gen.OneOf([.. Catalogue.All]), Gen.Int[0, 3], Gen.Int[36, 76].Array[20], Tuned);

    /// <summary>Chords of every quality, half of them over another bass.</summary>
    public static Gen<Chord> Chord { get; } =
        Gen.Select(
            NoteName,
            Gen.OneOf([.. ChordQuality.All]),
            NoteName,
            Gen.Bool,
            (root, quality, bass, isSlash) => new Chord(root, quality, isSlash ? bass : null)
        );

    /// <summary>Numerals of triads and seventh chords, some of them secondary.</summary>
    public static Gen<RomanNumeral> Numeral { get; } =
        Gen.OneOf([
                "I",
                "ii",
                "iii6",
                "IV",
                "V7",
                "vi",
                "viiø7",
                "viio7",
                "bVII",
                "#iv",
                "V65/ii",
                "V7/V",
                "Imaj7",
                "III+",
                "i",
            ])
            .Select(text => RomanNumeral.Parse(text));

    /// <summary>Numerals in root position, of chords of two to six notes.</summary>
    public static Gen<RomanNumeral> RootNumeral { get; } =
        TheoryGen.Numeral.Where(numeral => numeral.Inversion == 0 && numeral.Quality.MemberCount is >= 2 and <= 6);

    /// <summary>Whole sentences that a reader can make: parts that contradict each other do not occur.</summary>
    public static Gen<ShowSentence> Show { get; } =
        Gen.Select(Places, Subjects, Voicing, Players, Gen.Int[2, 6].Nullable(), Join);

    /// <summary>The canonical text of a sentence with one to four characters or words lost, doubled, swapped or replaced.</summary>
    public static Gen<string> Damaged { get; } =
        Gen.Select(
            Show,
            Gen.Select(Gen.Int[0, 5], Gen.Int[0, 999], Gen.Char[' ', '~']).List[1, 4],
            (sentence, damages) =>
                damages.Aggregate(
                    sentence.ToString(),
                    (text, damage) => Damage(text, damage.Item1, damage.Item2, damage.Item3)
                )
        );

    private static Gen<ShowSentence> Places =>
        Gen.Select(
            Instrument.Null(),
            Gen.Int[0, 5].Nullable(),
            Key.Null(),
            Gen.Int[1, 3].HashSet[1, 3].Null(),
            Gen.Select(Gen.Int[0, 12], Gen.Int[0, 12]).Nullable(),
            Gen.Bool,
            (instrument, capo, key, strings, frets, isOnAll) =>
                new ShowSentence
                {
                    Instrument = instrument,
                    Capo = capo,
                    Key = key,
                    Strings = isOnAll || strings is null ? null : new StringSet(strings),
                    IsOnAllStrings = isOnAll,
                    Frets = frets is var (one, other)
                        ? Range(one, other, (instrument?.Frets ?? 24) - (capo ?? 0))
                        : null,
                }
        );

    private static FretRange Range(int one, int other, int last) =>
        new(Math.Min(last, Math.Min(one, other)), Math.Min(last, Math.Max(one, other)));

    private static Gen<Subject[]> Subjects =>
        Gen.OneOf<Subject>(
            Gen.OneOf<Subject>(
                new Subject.NotesOfTheKey(),
                new Subject.TheLandmarks(),
                new Subject.TheThirds(),
                new Subject.TheSymmetries(),
                new Subject.TheOpenStrings(),
                new Subject.ScaleShapes(null, null),
                new Subject.TheChromaticScale(null)
            ),
            // On the top strings of every instrument that is drawn.
            Gen.Select(NoteName, Gen.Int[3, 5].Nullable())
                .Array[1, 5]
                .Select(notes =>
                    (Subject)
                        new Subject.GivenNotes(
                            notes.Select(note => new GivenNote(note.Item1, note.Item2)).ToValueList()
                        )
                ),
            Gen.Select(
                Gen.Enum<KeyChords>(),
                Gen.Select(Gen.Int[1, 7], Gen.Int[1, 7]).Nullable(),
                (chords, range) =>
                    (Subject)
                        new Subject.ChordsOfTheKey(chords)
                        {
                            Range = range is var (from, to) ? new DegreeRange(from, to) : null,
                        }
            ),
            Gen.Select(Gen.Int[1, 3], Gen.Int[5, 7])
                .Array[1, 6]
                .Select(spots =>
                    (Subject)
                        new Subject.GivenSpots(spots.Select(spot => new Spot(spot.Item1, spot.Item2)).ToValueList())
                ),
            Scale.Select(scale => (Subject)new Subject.ScaleShapes(scale, null)),
            NoteName.Select(name => (Subject)new Subject.EveryNote(name)),
            Numeral.Array[1, 4].Select(numerals => (Subject)new Subject.ChordsByNumeral([.. numerals])),
            Chord.Array[1, 4].Select(chords => (Subject)new Subject.ChordsBySymbol([.. chords]))
        ).Array[1, 4];

    private static Gen<VoicingPhrase> Voicing =>
        Gen.Select(
            Gen.Enum<VoicingKind>().Nullable(),
            Gen.Enum<Arrangement>().Nullable(),
            Gen.Int[0, 6].HashSet[0, 3].Null(),
            Gen.Int[1, 20].Nullable(),
            Gen.Int[2, 3].Nullable(),
            (kind, arrangement, inversions, position, easy) =>
                new VoicingPhrase(
                    kind,
                    kind == VoicingKind.Strummed || easy is not null ? null : arrangement,
                    easy is not null || inversions is null ? null : inversions.Order().ToValueList(),
                    position,
                    easy
                )
        );

    private static Gen<ShowSentence> Players =>
        Gen.Select(
            Gen.Enum<LabelStyle>().Nullable(),
            Gen.Bool,
            Gen.OneOf(Gen.OneOf(165.0, 189.0, 210.0, 150.0), Gen.Double[100, 260]).Nullable(),
            Gen.Bool.Nullable(),
            Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool.Nullable()),
            (labels, isWithFingers, hand, isLeftHanded, others) =>
                new ShowSentence
                {
                    IsOneShapeEach = others.Item1,
                    Labels = labels,
                    IsWithFingers = isWithFingers,
                    Hand = hand is { } lengthMm ? new HandSize(lengthMm) : null,
                    IsLeftHanded = isLeftHanded,
                    IsTurnedOver = others.Item2,
                    UsesThumb = others.Item3,
                }
        );

    private static ShowSentence Join(
        ShowSentence places,
        Subject[] subjects,
        VoicingPhrase voicing,
        ShowSentence player,
        int? notesPerString
    )
    {
        var lastFret = (places.Instrument?.Frets ?? 24) - (places.Capo ?? 0);
        var reached = voicing.Position > lastFret ? voicing with { Position = null } : voicing;
        return places with
        {
            Subjects = Completed(
                    subjects.Select(subject => OnNeck(subject, places, lastFret)),
                    notesPerString,
                    reached.Position
                )
                .ToValueList(),
            Voicing = reached,
            IsOneShapeEach = player.IsOneShapeEach,
            Labels = player.Labels,
            IsWithFingers = player.IsWithFingers,
            Hand = player.Hand,
            IsLeftHanded = player.IsLeftHanded,
            IsTurnedOver = player.IsTurnedOver,
            UsesThumb = player.UsesThumb,
        };
    }

    private static Subject OnNeck(Subject subject, ShowSentence places, int lastFret) =>
        subject is Subject.GivenNotes { Notes: var notes }
            ? new Subject.GivenNotes(
                notes
                    .Select(note => note with { Octave = places.Instrument is null ? note.Octave : null })
                    .ToValueList()
            )
        : subject is not Subject.GivenSpots given ? subject
        : places is { Frets: null, Strings: null }
            ? new Subject.GivenSpots(
                given.Spots.Select(spot => new Spot(spot.String, Math.Min(spot.Fret, lastFret))).ToValueList()
            )
        : new Subject.TheOpenStrings();

    // Scales are shapes with a count or in a position, and notes without; neighbouring chord lists are one list.
    private static List<Subject> Completed(IEnumerable<Subject> subjects, int? notesPerString, int? position)
    {
        var completed = new List<Subject>();
        foreach (var subject in subjects)
        {
            var next = subject switch
            {
                Subject.ScaleShapes shapes when notesPerString is not null => shapes with
                {
                    NotesPerString = notesPerString,
                },
                Subject.TheChromaticScale => new Subject.TheChromaticScale(notesPerString),
                Subject.ScaleShapes { Scale: { } scale } when position is null => new Subject.NotesOfScale(scale),
                Subject.ScaleShapes { Scale: null } when position is null => new Subject.NotesOfTheKey(),
                _ => subject,
            };
            var runsOn = next is Subject.ChordsBySymbol && completed is [.., Subject.ChordsBySymbol];
            if (!runsOn && !completed.Contains(next))
            {
                completed.Add(next);
            }
        }

        return completed;
    }

    private static Instrument Tuned(Instrument instrument, int choice, int[] midi) =>
        choice == 0 ? instrument.Tuned(midi.Take(instrument.Strings.Count).Select(Pitch.FromMidiNumber)) : instrument;

    /// <summary>A text with one of six damages at a place.</summary>
    internal static string Damage(string text, int kind, int place, char sign)
    {
        var words = text.Split(' ').ToList();
        var (at, word) = (place % Math.Max(1, text.Length), place % words.Count);
        switch (kind)
        {
            case 0:
                return text.Length == 0 ? text : text.Remove(at, 1);
            case 1:
                return text.Insert(at, sign.ToString());
            case 2:
                return text.Length < 2
                    ? text
                    : text.Remove(at, 1).Insert(place % (text.Length - 1), text[at].ToString());
            case 3:
                words.RemoveAt(word);
                break;
            case 4:
                words.Insert(word, words[place * 7 % words.Count]);
                break;
            default:
                (words[word], words[place * 7 % words.Count]) = (words[place * 7 % words.Count], words[word]);
                break;
        }

        return string.Join(' ', words);
    }
}
