using Fretloom.Sentences;

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
            .FirstOrDefault(phrase => phrase is not null);
    }

    /// <summary>Why what was typed is no such phrase.</summary>
    /// <inheritdoc cref="Of"/>
    public static string Wrong(PhraseKind kind, string typed)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var words = typed.Split(' ')[0];
        var opening = Openings(kind).Last();
        return
            ShowParser
                .Parse(
                    Sentence(
                        kind,
                        opening.StartsWith(words + " ", StringComparison.OrdinalIgnoreCase) ? typed : opening + typed
                    )
                )
                .Errors
                is [var error, ..]
            ? error.Message
            : $"'{typed}' does not say {kind.Name}";
    }

    // The words that phrases of this kind begin with, the longer ones first: in, on a, on strings, frets.
    private static IEnumerable<string> Openings(PhraseKind kind) =>
        kind
            .Examples.Select(example => example.Split(' '))
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
