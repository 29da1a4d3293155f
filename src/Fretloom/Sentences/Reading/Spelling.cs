namespace Fretloom.Sentences.Reading;

/// <summary>Suggests words for a misspelled one.</summary>
internal static class Spelling
{
    private const int MostSuggestions = 3;
    private const int LongestWord = 30;

    /// <summary>
    /// Changes of a token to near words, nearest first. A word of the vocabulary is not misspelled, only out of place: it gets none.
    /// </summary>
    public static Edit[] Edits(Token found, IEnumerable<string> words)
    {
        if (found.Kind != TokenKind.Word || found.Text.Length > LongestWord || Vocabulary.Knows(found.Text))
        {
            return [];
        }

        return
        [
            .. Near(found.Text.ToLowerInvariant(), words.Distinct(StringComparer.OrdinalIgnoreCase), Lower)
                .Select(word => Edit.Of(found, word)),
        ];
    }

    /// <summary>Changes of a chord symbol or the like, in which large and small letters differ.</summary>
    public static Edit[] EditsOfSymbol(Token found, IEnumerable<string> symbols) =>
        found.Text.Length > LongestWord
            ? []
            : [.. Near(found.Text, symbols, symbol => symbol).Select(symbol => Edit.Of(found, symbol))];

    private static IEnumerable<string> Near(string found, IEnumerable<string> words, Func<string, string> plain) =>
        words
            .Where(word => Math.Abs(word.Length - found.Length) <= 2)
            .Select(word => (word, Distance: EditDistance.Between(found, plain(word))))
            .Where(near => near.Distance > 0 && near.Distance <= EditDistance.Tolerated(found.Length))
            .OrderBy(near => near.Distance)
            .Take(MostSuggestions)
            .Select(near => near.word);

    private static string Lower(string word) => word.ToLowerInvariant();
}
