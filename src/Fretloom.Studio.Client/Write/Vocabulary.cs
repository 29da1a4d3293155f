using Fretloom.Claims;
using Fretloom.Lessons;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.Write;

/// <summary>What the editor offers to complete: the phrases of sentences, the words above a lesson, the options of blocks.</summary>
/// <param name="Front">The words above a lesson, each with what may follow its colon; none where that is free.</param>
/// <param name="Show">Phrases of show sentences.</param>
/// <param name="Play">Phrases of play sentences.</param>
/// <param name="Claim">Parts of claims.</param>
/// <param name="Options">The options of each kind of block.</param>
public sealed record Vocabulary(
    IReadOnlyList<FrontWord> Front,
    IReadOnlyList<WordGroup> Show,
    IReadOnlyList<WordGroup> Play,
    IReadOnlyList<WordGroup> Claim,
    IReadOnlyDictionary<string, IReadOnlyList<string>> Options
)
{
    private static readonly string[] Tonics = ["C", "G", "D", "A", "E", "B", "F#", "Gb", "Db", "Ab", "Eb", "Bb", "F"];
    private static readonly string[] Modes = ["major", "minor", "harmonic minor", "melodic minor", "dorian"];

    /// <summary>All of it.</summary>
    public static Vocabulary All { get; } = Make();

    private static Vocabulary Make()
    {
        var instruments = Catalogue.All.Select(instrument => instrument.Name).ToList();
        var keys = Modes.SelectMany(mode => Tonics.Select(tonic => $"{tonic} {mode}")).ToList();
        // What there is to show or play begins a sentence; its group comes first.
        var shown = Phrases
            .All.Select(kind => new WordGroup(kind.Name, [.. kind.Examples.Concat(More(kind, keys)).Distinct()]))
            .ToList();
        var played = PlayPhrases.All.Select(kind => new WordGroup(kind.Name, [.. kind.Examples]));
        return new Vocabulary(
            [.. LessonWords.FrontMatter.Select(word => new FrontWord(word, ValuesOf(word, instruments, keys)))],
            shown,
            [new WordGroup("what to play", ["the scale", .. shown[0].Words]), .. played, .. shown[1..]],
            ClaimWords.Groups,
            LessonWords.Options.ToDictionary(kind => kind.Key, kind => (IReadOnlyList<string>)[.. kind.Value])
        );
    }

    private static IEnumerable<string> More(PhraseKind kind, IEnumerable<string> keys) =>
        kind == Phrases.Instrument ? Catalogue.All.Select(instrument => "on " + instrument.NameWithArticle)
        : kind == Phrases.Key ? keys.Select(key => $"in {key}")
        : [];

    private static List<string> ValuesOf(string word, List<string> instruments, List<string> keys) =>
        word switch
        {
            "instrument" => instruments,
            "key" => keys,
            "hand" => ["small", "large", "child's", "176 mm"],
            "player" => ["right-handed", "left-handed"],
            "language" => ["en", "en-GB", "de"],
            "strings" => ["4-1", "6-4", "all"],
            "frets" => ["0-12", "0-5"],
            "capo" => ["2"],
            _ => [],
        };
}

/// <summary>Phrases that name the same thing.</summary>
/// <param name="Name">What they name, such as <c>the key</c>.</param>
/// <param name="Words">The phrases.</param>
public sealed record WordGroup(string Name, IReadOnlyList<string> Words);

/// <summary>A word above a lesson.</summary>
/// <param name="Name">The word before the colon.</param>
/// <param name="Values">What may follow it; none where that is free.</param>
public sealed record FrontWord(string Name, IReadOnlyList<string> Values);
