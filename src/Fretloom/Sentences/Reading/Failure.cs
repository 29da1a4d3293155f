namespace Fretloom.Sentences.Reading;

/// <summary>Why reading stopped: a place, a message without suggestion, and changes worth trying, best first.</summary>
/// <param name="Start">Where the offending words begin, counted from 0.</param>
/// <param name="Length">How many characters they take.</param>
/// <param name="Message">What was expected or is wrong, and what was found.</param>
/// <param name="Edits">Changes that may mend the sentence. They have not been tried.</param>
internal sealed record Failure(int Start, int Length, string Message, params Edit[] Edits)
{
    private const int LongestWordShown = 40;

    /// <summary>Whether the message itself names the first change, so that it is not said again.</summary>
    public bool NamesChange { get; init; }

    /// <summary>A failure at a token.</summary>
    public static Failure At(Token token, string message, params Edit[] edits) =>
        new(token.Start, token.Length, message, edits);

    /// <summary>A failure at some words.</summary>
    public static Failure At(Token first, Token last, string message, params Edit[] edits) =>
        new(first.Start, last.End - first.Start, message, edits);

    /// <summary>Something else was expected at a token.</summary>
    /// <param name="what">What may stand there, at most six things in reading order.</param>
    /// <param name="found">What does.</param>
    /// <param name="words">Words that may stand there: those near to a misspelled one are suggested.</param>
    public static Failure Expected(string what, Token found, params IEnumerable<string> words) =>
        At(found, $"expected {what}, found {Shown(found)}", Spelling.Edits(found, words));

    /// <summary>A phrase that may stand once stands again.</summary>
    /// <param name="name">What it names, with the article: <c>the key</c>, <c>the strings</c>.</param>
    /// <param name="place">Where it stands again.</param>
    public static Failure Again(string name, Token place) =>
        At(place, $"{name} {(name.EndsWith('s') ? "were" : "was")} already chosen earlier in this sentence");

    /// <summary>A token as it is named in a message.</summary>
    public static string Shown(Token token) =>
        token is { Kind: TokenKind.End, Length: 0 }
            ? "the end of the sentence"
            : $"'{Shortened(token.Said ?? token.Text)}'";

    private static string Shortened(string text)
    {
        var shown = text.Length > LongestWordShown ? text[..LongestWordShown] + "…" : text;
        return string.Concat(shown.Select(sign => char.IsControl(sign) || char.IsSurrogate(sign) ? '\uFFFD' : sign));
    }
}

/// <summary>Some characters of a sentence and what to write instead.</summary>
/// <param name="Start">Where they begin, counted from 0.</param>
/// <param name="Length">How many there are.</param>
/// <param name="Text">What to write.</param>
internal readonly record struct Edit(int Start, int Length, string Text)
{
    /// <summary>Another word in place of a token.</summary>
    public static Edit Of(Token token, string text) => new(token.Start, token.Length, text);

    /// <summary>Other words in place of some tokens.</summary>
    public static Edit Of(Token first, Token last, string text) => new(first.Start, last.End - first.Start, text);
}
