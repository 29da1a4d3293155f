namespace Fretloom.Sentences.Reading;

/// <summary>What a token is.</summary>
internal enum TokenKind
{
    /// <summary>A word, number, note, chord symbol: anything between spaces and commas.</summary>
    Word,

    /// <summary>A comma.</summary>
    Comma,

    /// <summary>A dash that stands alone or after a number, as in 4-1.</summary>
    Dash,

    /// <summary>The end of the sentence, or the full stop before it.</summary>
    End,
}

/// <summary>A piece of a sentence with its place.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Start">Where it begins, counted from 0.</param>
/// <param name="Length">How many characters of the sentence it takes.</param>
/// <param name="Text">What it says, every dash as a hyphen and every apostrophe straight.</param>
internal readonly record struct Token(TokenKind Kind, int Start, int Length, string Text)
{
    /// <summary>The words that it is meant by, where those are others; else null.</summary>
    public string? Said { get; init; }

    /// <summary>One past its last character.</summary>
    public int End => Start + Length;

    /// <summary>Whether it is this word, in any case.</summary>
    public bool Is(string word) => Kind == TokenKind.Word && Text.Equals(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether it is one of these words, in any case.</summary>
    public bool IsAny(params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (Is(word))
            {
                return true;
            }
        }

        return false;
    }
}
