using System.Globalization;
using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.Ask;

/// <summary>What a picker offers: phrases of the grammar that make sense beside the others. Anything else can be typed.</summary>
public static class Choices
{
    // From no signature to seven flats, by the number of sharps and flats; then the modes of the tonic at hand.
    private static readonly string[] Majors =
    [
        "C",
        "G",
        "D",
        "A",
        "E",
        "B",
        "F#",
        "C#",
        "F",
        "Bb",
        "Eb",
        "Ab",
        "Db",
        "Gb",
        "Cb",
    ];
    private static readonly string[] Minors =
    [
        "A",
        "E",
        "B",
        "F#",
        "C#",
        "G#",
        "D#",
        "A#",
        "D",
        "G",
        "C",
        "F",
        "Bb",
        "Eb",
        "Ab",
    ];

    private static readonly string[] OtherScales =
    [
        "harmonic minor",
        "melodic minor",
        "dorian",
        "phrygian",
        "lydian",
        "mixolydian",
        "locrian",
    ];

    /// <summary>The phrases offered for a kind, in the order they are offered.</summary>
    /// <param name="kind">Which kind.</param>
    /// <param name="exhibit">What is seen now.</param>
    public static IEnumerable<string> For(PhraseKind kind, Exhibit exhibit)
    {
        var (instrument, key) = (exhibit.Map.Instrument, exhibit.Map.Key);
        return kind == Phrases.Subject ? Subjects(key)
            : kind == Phrases.Instrument ? Catalogue.All.Select(one => "on " + one.NameWithArticle)
            : kind == Phrases.Capo ? Capos(instrument)
            : kind == Phrases.Key ? Keys(key)
            : kind == Phrases.Strings ? Strings(instrument)
            : kind == Phrases.Frets ? Frets(instrument)
            : kind == Phrases.NotesPerString ? NotesPerString(exhibit)
            : kind == Phrases.Position ? Enumerable.Range(1, 9).Select(at => $"in {Ordinals[at - 1]} position")
            : Canonical.GetValueOrDefault(kind, []);
    }

    /// <summary>The phrases of the kinds that a sentence does not hold, under short headings.</summary>
    /// <param name="exhibit">What is seen now.</param>
    /// <param name="said">The kinds that the sentence holds.</param>
    /// <param name="nameOf">The heading for a group of phrases.</param>
    public static ValueList<ChoiceGroup> More(
        Exhibit exhibit,
        IReadOnlySet<PhraseKind> said,
        Func<PhraseGroup, string> nameOf
    ) =>
        Phrases
            .All.Where(kind => !said.Contains(kind))
            .GroupBy(kind => GroupOf(kind.Part))
            .OrderBy(group => group.Key)
            .Select(group => new ChoiceGroup(
                nameOf(group.Key),
                group.SelectMany(kind => For(kind, exhibit)).ToValueList()
            ))
            .Where(group => group.Words.Count > 0)
            .ToValueList();

    // Of several ways to say a thing the one that a sentence is printed with.
    private static readonly Dictionary<PhraseKind, string[]> Canonical = Phrases.All.ToDictionary(
        kind => kind,
        kind => kind.Examples.Where(IsCanonical).ToArray()
    );

    private static bool IsCanonical(string phrase)
    {
        var sentence = $"show the seventh chords, {phrase}";
        return ShowParser.Parse(sentence).Value?.ToString() == sentence;
    }

    private static PhraseGroup GroupOf(ShowPhrase part) =>
        part switch
        {
            ShowPhrase.Subject or ShowPhrase.Key => PhraseGroup.Notes,
            ShowPhrase.Voicing or ShowPhrase.Inversion or ShowPhrase.Shapes => PhraseGroup.Chords,
            ShowPhrase.Labels => PhraseGroup.Marks,
            ShowPhrase.Hand or ShowPhrase.Player => PhraseGroup.Hand,
            _ => PhraseGroup.Place,
        };

    private static IEnumerable<string> Capos(Instrument instrument)
    {
        var capos = Enumerable.Range(1, 9).Select(fret => Said($"with a capo at {fret}"));
        return instrument.Capo > 0 ? capos.Append("without a capo") : capos;
    }

    private static IEnumerable<string> NotesPerString(Exhibit exhibit) =>
        exhibit.Sentence.Contains("scale", StringComparison.Ordinal)
            ? new[] { 2, 3, 4 }.Select(count => Said($"{count} notes a string"))
            : [];

    private static readonly string[] Ordinals =
    [
        "first",
        "second",
        "third",
        "fourth",
        "fifth",
        "sixth",
        "seventh",
        "eighth",
        "ninth",
    ];

    private static IEnumerable<string> Subjects(Key key) =>
        [
            "the notes of the key",
            "the notes of the key and the landmarks",
            "the landmarks",
            "the thirds",
            "the triads",
            "the sixth chords",
            "the seventh chords",
            "the ninth chords",
            "the chords I IV V",
            "the chords I vi ii V7",
            "the chord V7",
            "the scale, 3 notes a string",
            $"{key.Tonic} major pentatonic",
            $"{key.Tonic} minor pentatonic",
            $"the {key.Tonic} blues scale",
            $"every {key.Tonic}",
            "the symmetries",
            "the open strings",
        ];

    private static IEnumerable<string> Keys(Key key) =>
        Majors
            .Select(tonic => $"in {tonic} major")
            .Concat(Minors.Select(tonic => $"in {tonic} minor"))
            .Concat(OtherScales.Select(scale => $"in {key.Tonic} {scale}"));

    // All of them, then every run of neighbours, the longest first.
    private static IEnumerable<string> Strings(Instrument instrument)
    {
        yield return "on all strings";
        for (var length = instrument.Strings.Count - 1; length >= 2; length--)
        {
            for (var far = instrument.Strings.Count; far >= length; far--)
            {
                yield return Said($"on strings {far}-{far - length + 1}");
            }
        }
    }

    // From the nut, then a hand's breadth at a time.
    private static IEnumerable<string> Frets(Instrument instrument)
    {
        var ends = new[] { 3, 4, 5, 7, 12, 15, instrument.LastFret }
            .Where(last => last <= instrument.LastFret)
            .Distinct();
        var hands = Enumerable
            .Range(1, Math.Max(0, instrument.LastFret - 4))
            .Select(first => Said($"frets {first}-{first + 4}"));
        return ends.Select(last => Said($"frets 0-{last}")).Concat(hands);
    }

    private static string Said(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
