using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.Ask;

/// <summary>What is typed where one kind of phrase is picked, read as a phrase of that kind and no other.</summary>
public static class TypedPhrase
{
    // A sentence shows something; a phrase by itself may not say what.
    private const string Subject = "the landmarks";
    private const int MostMends = 3;

    /// <summary>Reads what was typed.</summary>
    /// <param name="kind">The kind that is picked.</param>
    /// <param name="typed">What was typed: a phrase, or a phrase without the words it begins with, as <c>Bb</c> for a key.</param>
    /// <param name="mends">Whether changes that a message would suggest are made.</param>
    /// <returns>The phrase; null when what was typed is none of that kind.</returns>
    public static string? Of(PhraseKind kind, string typed, bool mends)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Openings(kind)
                .Prepend("")
                .Select(opening => Read(kind, opening + typed, mends))
                .FirstOrDefault(phrase => phrase is not null)
            ?? (kind == Phrases.Key ? GermanKey(typed) : null);
    }

    // H, Es and Fis are names of keys in German; B stays what it is in English.
    private static string? GermanKey(string typed) =>
        typed.Length > 0
        && !NoteName.TryParse(typed, out _)
        && NoteNameSystem.German.TryParse(
            char.ToUpperInvariant(typed[0]) + typed[1..].ToLowerInvariant(),
            out var tonic
        )
            ? Read(Phrases.Key, $"in {tonic} major", mends: false)
            : null;

    /// <summary>Tells why what was typed is no such phrase.</summary>
    /// <param name="kind">The kind that is picked.</param>
    /// <param name="typed">What was typed, for which <see cref="Of"/> has no phrase.</param>
    /// <returns>What was expected, and what was found.</returns>
    public static string Wrong(PhraseKind kind, string typed)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var opening = kind == Phrases.Subject ? "" : Openings(kind).LastOrDefault("");
        var phrase = typed.StartsWith(opening, StringComparison.OrdinalIgnoreCase) ? typed : opening + typed;
        return ShowParser.Parse(Sentence(kind, phrase)).Errors is [var error, ..]
            ? error.Message
            : $"'{typed}' does not say {kind.Name}";
    }

    // The words that phrases of this kind begin with, the longer ones first: in, on a, on strings, frets. Names of notes and chords are none.
    private static IEnumerable<string> Openings(PhraseKind kind) =>
        kind
            .Examples.Select(example => example.Split(' '))
            .Where(words => words[0].All(char.IsAsciiLetterLower))
            .SelectMany(words =>
                words is [_, "a" or "strings", ..]
                    ? new[] { $"{words[0]} {words[1]} ", $"{words[0]} " }
                    : [$"{words[0]} "]
            )
            .Distinct()
            .OrderByDescending(opening => opening.Length);

    private static string? Read(PhraseKind kind, string phrase, bool mends)
    {
        var sentence = Sentence(kind, phrase);
        for (var mended = 0; ; mended++)
        {
            var read = ShowParser.Parse(sentence);
            if (read.IsRead)
            {
                return Alone(kind, sentence);
            }

            if (!mends || mended == MostMends || read.Errors[0].Repair is not { } repair)
            {
                return null;
            }

            sentence = repair.ApplyTo(sentence);
        }
    }

    private static string Sentence(PhraseKind kind, string phrase) =>
        kind == Phrases.Subject ? phrase : $"{Subject}, {phrase}";

    private static string? Alone(PhraseKind kind, string sentence)
    {
        var phrases = ShowParser.PhrasesOf(sentence).Skip(kind == Phrases.Subject ? 0 : 1).ToList();
        return phrases is [var only] && only.Kind == kind ? only.In(sentence) : null;
    }
}
