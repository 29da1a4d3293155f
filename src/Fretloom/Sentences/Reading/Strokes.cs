namespace Fretloom.Sentences.Reading;

/// <summary>Strokes of a strumming hand in words, <c>down down-up</c>, or in letters, <c>D DU</c>.</summary>
internal static class Strokes
{
    /// <summary>The groups of strokes that a word says, true for down; null when it is no such word.</summary>
    /// <remarks>
    /// <c>down-up</c>, <c>DU</c> and <c>D-U</c> are one group; <c>D-DU-UDU</c> are three.
    /// </remarks>
    public static ValueList<ValueList<bool>>? Of(Token token)
    {
        if (token.Kind != TokenKind.Word)
        {
            return null;
        }

        var parts = token.Text.Split('-');
        var areLetters = Array.TrueForAll(parts, part => part.Length > 0 && part.All(IsLetter));
        return areLetters && parts.Any(part => part.Length > 1)
                ? parts.Select(part => part.Select(IsDown).ToValueList()).ToValueList()
            : areLetters ? [parts.Select(part => IsDown(part[0])).ToValueList()]
            : Array.TrueForAll(parts, IsWord) ? [parts.Select(part => IsDown(part[0])).ToValueList()]
            : null;
    }

    /// <summary>Whether a pattern begins here without the word <c>strum</c>: a lone <c>up</c> or <c>down</c> is a direction, a lone <c>D</c> a chord.</summary>
    public static bool BeginAt(Cursor at, int ahead)
    {
        var (strokes, isPattern) = (0, false);
        var areWords = IsInWords(at.Peek(ahead));
        for (; Of(at.Peek(ahead)) is { } groups && IsInWords(at.Peek(ahead)) == areWords; ahead++)
        {
            strokes += groups.Sum(group => group.Count);
            isPattern |= !at.Peek(ahead).Is("D");
        }

        return isPattern && strokes > 1;
    }

    // D down and up is a chord and a direction.
    private static bool IsInWords(Token token) => Array.TrueForAll(token.Text.Split('-'), IsWord);

    private static bool IsWord(string word) =>
        word.Equals("down", StringComparison.OrdinalIgnoreCase)
        || word.Equals("up", StringComparison.OrdinalIgnoreCase);

    private static bool IsLetter(char letter) => letter is 'D' or 'U' or 'd' or 'u';

    private static bool IsDown(char letter) => letter is 'D' or 'd';
}
