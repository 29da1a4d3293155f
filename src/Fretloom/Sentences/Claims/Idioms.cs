using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>Other words for what a claim can say, each read as the words that the language has for it.</summary>
internal static class Idioms
{
    private static readonly (string[] Said, string[] Meant)[] All =
    [
        .. new (string Said, string Meant)[]
        {
            ("chord shape", "shape"),
            ("chord shapes", "shapes"),
            ("seventh-chord", "seventh"),
            ("half turn", "half-turn"),
            ("half turns", "half-turns"),
            ("for every", "in every"),
            ("for each", "in every"),
            ("for all", "in every"),
            ("for any", "in every"),
            ("for the key", "in the key"),
            ("not always", "not always"),
            ("always", ""),
            ("there are only", "there are exactly"),
            ("there is only", "there is exactly"),
            ("never more than", "at most"),
            ("never fewer than", "at least"),
            ("never less than", "at least"),
            ("up to", "at most"),
            ("no more than", "at most"),
            ("no further than", "at most"),
            ("no farther than", "at most"),
            ("no wider than", "at most"),
            ("no fewer than", "at least"),
            ("no less than", "at least"),
            ("further than", "more than"),
            ("farther than", "more than"),
            ("wider than", "more than"),
            ("frets wide", "frets"),
            ("fret wide", "fret"),
            ("mm wide", "mm"),
            ("covers", "spans"),
            ("cover", "span"),
            ("fits in", "spans at most"),
            ("fits within", "spans at most"),
            ("fit in", "span at most"),
            ("fit within", "span at most"),
            ("stretches over", "stretches"),
            ("stretch over", "stretch"),
            ("in its", "in"),
            ("in their", "in"),
            ("be fingered", "be played"),
            ("be held", "be played"),
            ("be reached", "be played"),
            ("is playable", "can be played"),
            ("are playable", "can be played"),
            ("played one finger", "played with one finger"),
            ("with a finger for each note", "with one finger a note"),
            ("with a finger for every note", "with one finger a note"),
            ("finger for each note", "finger a note"),
            ("finger for every note", "finger a note"),
            ("note with a", "note by a"),
            ("note for a", "note by a"),
            ("has the same fingering as", "is fingered as"),
            ("have the same fingering as", "are fingered as"),
            ("uses the same fingers as", "is fingered as"),
            ("use the same fingers as", "are fingered as"),
            ("is played with the same fingers as", "is fingered as"),
            ("are played with the same fingers as", "are fingered as"),
            ("fingered the same as", "fingered as"),
            ("fingered the same way as", "fingered as"),
            ("that on degree", "that of degree"),
            ("those on degree", "those of degree"),
            ("the one on degree", "that of degree"),
            ("is the shape on degree", "is that of degree"),
            ("is the shape of degree", "is that of degree"),
            ("shifted up", "moved up"),
            ("shifted down", "moved down"),
            ("turned upside down is", "is the half-turn of"),
            ("looks like", "has the same form as"),
            ("look like", "have the same form as"),
            ("is the same shape as", "has the same form as"),
            ("has the same shape as", "has the same form as"),
            ("have the same shape as", "have the same form as"),
            ("are the same as", "are"),
            ("the distance between", "the gap between"),
            ("adjacent full", "neighbouring full"),
            ("adjacent empty", "neighbouring empty"),
            ("adjacent half-turn", "neighbouring half-turn"),
        }
            .Select(pair =>
                (Said: pair.Said.Split(' '), Meant: pair.Meant.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            )
            .OrderByDescending(pair => pair.Said.Length),
    ];

    /// <summary>Every word of those that are understood.</summary>
    public static IEnumerable<string> Words => All.SelectMany(pair => pair.Said);

    /// <summary>The tokens as they are meant. Each of those that were put in takes the place of all words that it stands for.</summary>
    public static List<Token> Meant(List<Token> tokens)
    {
        var meant = new List<Token>(tokens.Count);
        for (var at = 0; at < tokens.Count; )
        {
            var idiom = Array.Find(All, pair => Stands(tokens, at, pair.Said));
            if (idiom.Said is null)
            {
                meant.Add(tokens[at++]);
                continue;
            }

            var said = tokens.GetRange(at, idiom.Said.Length);
            meant.AddRange(idiom.Meant.Select(word => Standing(said, word)));
            at += said.Count;
        }

        return meant;
    }

    private static bool Stands(List<Token> tokens, int at, string[] words)
    {
        for (var word = 0; word < words.Length; word++)
        {
            // The last token is the end, which is no word.
            if (!tokens[Math.Min(at + word, tokens.Count - 1)].Is(words[word]))
            {
                return false;
            }
        }

        return true;
    }

    // A word that was said keeps its place.
    private static Token Standing(List<Token> said, string word)
    {
        var same = said.FindIndex(token => token.Is(word));
        return same >= 0
            ? said[same]
            : new Token(TokenKind.Word, said[0].Start, said[^1].End - said[0].Start, word)
            {
                Said = string.Join(' ', said.Select(token => token.Text)),
            };
    }
}
