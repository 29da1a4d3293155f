using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>Runs of words that always stand together.</summary>
internal static class Phrase
{
    /// <summary>Reads all of some words.</summary>
    public static Failure? Read(Cursor at, params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (!at.Accept(word))
            {
                return Failure.Expected($"'{word}' after '{at.Previous.Text}'", at.Current, word);
            }
        }

        return null;
    }

    /// <summary>The first token here that differs from some words.</summary>
    public static Token Missing(Cursor at, params ReadOnlySpan<string> words)
    {
        var count = 0;
        while (count < words.Length && at.Peek(count).Is(words[count]))
        {
            count++;
        }

        return at.Peek(count);
    }

    /// <summary>Whether a word names a motion of a shape.</summary>
    public static bool IsMotion(Token token) => token.IsAny("half-turn", "half-turns", "mirror", "mirrors");
}
