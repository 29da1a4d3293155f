using System.Buffers;
using System.Text;

namespace Fretloom.Theory;

/// <summary>How alterations are written and read.</summary>
/// <remarks>Signs: Unicode ♭ U+266D, ♮ U+266E, ♯ U+266F, 𝄪 U+1D12A, 𝄫 U+1D12B (Unicode Standard, Musical Symbols).</remarks>
public static class Accidentals
{
    private static readonly SearchValues<char> BetweenWords = SearchValues.Create(" \t\r\n,;:.!?\"'“”‘’–—|");

    /// <summary>ASCII signs: <c>#</c> and <c>b</c>, repeated; nothing for 0.</summary>
    public static string Ascii(int alteration) => new(alteration < 0 ? 'b' : '#', Math.Abs(alteration));

    /// <summary>Unicode signs: ♯, ♭, 𝄪, 𝄫; larger alterations are built of these, the single sign first.</summary>
    public static string Unicode(int alteration)
    {
        var count = Math.Abs(alteration);
        var (one, two) = alteration < 0 ? ("♭", "𝄫") : ("♯", "𝄪");
        return (count % 2 == 1 ? one : "") + string.Concat(Enumerable.Repeat(two, count / 2));
    }

    /// <summary>Replaces the ASCII accidentals in chord symbols, Roman numerals, pitches and degrees by Unicode signs, for display.</summary>
    /// <param name="ascii">A label or a whole sentence. Only what reads as music changes; words never do (but <c>Ebb</c> is always the note).</param>
    /// <example>
    /// <c>Bbm7b5</c> becomes <c>B♭m7♭5</c>; <c>b3</c> becomes <c>♭3</c>; in <c>Bb bass, bVII</c> the word <c>bass</c> stays.
    /// </example>
    public static string Pretty(string ascii)
    {
        ArgumentNullException.ThrowIfNull(ascii);
        if (!HasSigns(ascii))
        {
            return ascii;
        }

        var text = new StringBuilder(ascii.Length);
        for (var at = 0; at < ascii.Length; )
        {
            var length = WordLength(ascii.AsSpan(at));
            text.Append(length == 0 ? ascii.AsSpan(at, 1) : PrettyWord(ascii.Substring(at, length)));
            at += Math.Max(length, 1);
        }

        return text.ToString();
    }

    private static int WordLength(ReadOnlySpan<char> text)
    {
        var end = text.IndexOfAny(BetweenWords);
        return end < 0 ? text.Length : end;
    }

    private static string PrettyWord(string word)
    {
        if (!HasSigns(word))
        {
            return word;
        }

        if (IsMusic(word))
        {
            return WithSigns(word);
        }

        // Not one symbol: perhaps brackets around one, or several joined by hyphens or slashes.
        var joint = word.IndexOfAny(['-', '/', '(', ')', '[', ']']);
        return joint < 0 ? word : PrettyWord(word[..joint]) + word[joint] + PrettyWord(word[(joint + 1)..]);
    }

    private static bool HasSigns(ReadOnlySpan<char> text) => text.ContainsAny('b', '#');

    private static bool IsMusic(string word) =>
        Chord.TryParse(word, out _)
        || RomanNumeral.TryParse(word, out _)
        || (char.IsAsciiLetterUpper(word[0]) && Pitch.TryParse(word, out _))
        || IsNumber(word.AsSpan().TrimStart("b#"));

    private static bool IsNumber(ReadOnlySpan<char> text) =>
        text.Length is 1 or 2 && !text.ContainsAnyExceptInRange('0', '9');

    private static string WithSigns(string symbol)
    {
        var text = new StringBuilder(symbol.Length);
        for (var at = 0; at < symbol.Length; )
        {
            var run = RunLength(symbol, at);
            text.Append(run == 0 ? symbol[at].ToString() : Unicode(symbol[at] == 'b' ? -run : run));
            at += Math.Max(run, 1);
        }

        return text.ToString();
    }

    /// <summary>Reads the accidentals that a text begins with.</summary>
    /// <param name="text">The text.</param>
    /// <param name="alteration">Their sum in semitones.</param>
    /// <param name="most">Where reading stops, in semitones either way.</param>
    /// <returns>How many characters were read; 0 when there are none.</returns>
    internal static int Read(ReadOnlySpan<char> text, out int alteration, int most = NoteName.MaxAlteration)
    {
        alteration = 0;
        var at = 0;
        while (at < text.Length)
        {
            var (value, width) = SignAt(text[at..]);
            var mixed = alteration * value < 0;
            if (width == 0 || mixed || Math.Abs(alteration + value) > most)
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
}
