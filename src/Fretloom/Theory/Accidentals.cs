namespace Fretloom.Theory;

/// <summary>How alterations are written and read.</summary>
/// <remarks>Signs: Unicode ♭ U+266D, ♮ U+266E, ♯ U+266F, 𝄪 U+1D12A, 𝄫 U+1D12B (Unicode Standard, Musical Symbols).</remarks>
public static class Accidentals
{
    /// <summary>ASCII signs: <c>#</c> and <c>b</c>, repeated; nothing for 0.</summary>
    public static string Ascii(int alteration) => new(alteration < 0 ? 'b' : '#', Math.Abs(alteration));

    /// <summary>Unicode signs: ♯, ♭, 𝄪, 𝄫; larger alterations are built of these, the single sign first.</summary>
    public static string Unicode(int alteration)
    {
        var count = Math.Abs(alteration);
        var (one, two) = alteration < 0 ? ("♭", "𝄫") : ("♯", "𝄪");
        return (count % 2 == 1 ? one : "") + string.Concat(Enumerable.Repeat(two, count / 2));
    }

    /// <summary>Replaces the ASCII accidentals that follow a letter or stand before a digit by Unicode signs, for display.</summary>
    /// <example><c>Bbm7b5</c> becomes <c>B♭m7♭5</c>; <c>b3</c> becomes <c>♭3</c>.</example>
    public static string Pretty(string ascii)
    {
        var text = new System.Text.StringBuilder(ascii.Length);
        for (var at = 0; at < ascii.Length; )
        {
            var run = RunLength(ascii, at);
            var afterLetter = at > 0 && ascii[at - 1] is >= 'A' and <= 'G' && !InsideWord(ascii, at + run);
            var beforeNumber =
                at + run < ascii.Length
                && (char.IsAsciiDigit(ascii[at + run]) || ascii[at + run] is 'I' or 'V' or 'i' or 'v');
            if (run > 0 && (afterLetter || beforeNumber))
            {
                text.Append(Unicode(ascii[at] == 'b' ? -run : run));
                at += run;
            }
            else
            {
                text.Append(ascii[at++]);
            }
        }

        return text.ToString();
    }

    /// <summary>Reads the accidentals that a text begins with, at most <see cref="NoteName.MaxAlteration"/> semitones.</summary>
    /// <returns>How many characters were read; 0 when there are none.</returns>
    internal static int Read(ReadOnlySpan<char> text, out int alteration)
    {
        alteration = 0;
        var at = 0;
        while (at < text.Length)
        {
            var (value, width) = SignAt(text[at..]);
            var mixed = alteration * value < 0;
            if (width == 0 || mixed || Math.Abs(alteration + value) > NoteName.MaxAlteration)
            {
                break;
            }

            alteration += value;
            at += width;
        }

        return at;
    }

    private static (int Value, int Width) SignAt(ReadOnlySpan<char> text) =>
        text switch
        {
            ['#' or '♯', ..] => (1, 1),
            ['b' or '♭', ..] => (-1, 1),
            ['x', ..] => (2, 1),
            ['♮', ..] => (0, 1),
            ['\uD834', '\uDD2A', ..] => (2, 2),
            ['\uD834', '\uDD2B', ..] => (-2, 2),
            _ => (0, 0),
        };

    private static int RunLength(string text, int at)
    {
        var end = at;
        while (end < text.Length && text[end] == text[at] && text[end] is '#' or 'b')
        {
            end++;
        }

        return end - at;
    }

    private static bool InsideWord(string text, int at) =>
        at < text.Length
        && text[at] is >= 'a' and <= 'z'
        && !text[at..].StartsWith('m')
        && !text[at..].StartsWith("dim", StringComparison.Ordinal)
        && !text[at..].StartsWith("sus", StringComparison.Ordinal)
        && !text[at..].StartsWith("aug", StringComparison.Ordinal)
        && !text[at..].StartsWith("add", StringComparison.Ordinal);
}
