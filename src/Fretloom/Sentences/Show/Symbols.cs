using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>What to say of a word that was meant as a chord symbol or a Roman numeral and is none.</summary>
internal static class Symbols
{
    /// <summary>The failure for such a word here; null when the word looks like neither.</summary>
    public static Failure? Misread(Cursor at)
    {
        var token = at.Current;
        if (token.Kind != TokenKind.Word || Vocabulary.Knows(token.Text))
        {
            return null;
        }

        if (Frets(token.Text) is { } spots)
        {
            return Failure.At(
                token,
                $"expected spots by string and fret, such as 'the spots 5:3 4:2', found {Failure.Shown(token)}",
                Edit.Of(token, $"the spots {spots}"),
                Edit.Of(token, spots)
            );
        }

        if (LooksLikeChord(token.Text))
        {
            return Failure.At(
                token,
                $"expected a chord symbol such as 'Cmaj7', 'F#m7' or 'C/E', found {Failure.Shown(token)}",
                ChordEdits(token)
            );
        }

        return LooksLikeNumeral(token.Text)
            ? Failure.At(
                token,
                $"expected a Roman numeral from I to VII such as 'V7' or 'bVII', found {Failure.Shown(token)}"
            )
            : null;
    }

    /// <summary>The chord symbol that a word becomes with a large letter, if any: <c>am7</c>.</summary>
    public static Edit[] Capitals(Token token)
    {
        var capital = token.Text.Length is > 0 and < 20 ? char.ToUpperInvariant(token.Text[0]) + token.Text[1..] : "";
        return capital != token.Text && Chord.TryParse(capital, out _) && !Vocabulary.Knows(token.Text)
            ? [Edit.Of(token, capital)]
            : [];
    }

    // X32010, a fret for each string, the far one first, as chord books print it; null for anything else.
    private static string? Frets(string text)
    {
        var isGrip =
            text.Length is >= 4 and <= 8
            && text.All(sign => sign is 'x' or 'X' || char.IsAsciiDigit(sign))
            && text.Any(char.IsAsciiDigit)
            && text.Any(sign => !char.IsAsciiDigit(sign));
        return isGrip
            ? string.Join(
                ' ',
                text.Select((fret, at) => (Fret: fret, String: text.Length - at))
                    .Where(one => char.IsAsciiDigit(one.Fret))
                    .Select(one => $"{one.String}:{one.Fret}")
            )
            : null;
    }

    private static bool LooksLikeChord(string text)
    {
        if (text[0] is < 'A' or > 'H')
        {
            return false;
        }

        var length = NoteName.Read(text, out _);
        var rest = text[Math.Max(1, length)..];
        return rest.Length == 0
            || !char.IsAsciiLetterLower(rest[0])
            || rest.StartsWith('m')
            || rest.StartsWith("dim", StringComparison.Ordinal)
            || rest.StartsWith("aug", StringComparison.Ordinal)
            || rest.StartsWith("sus", StringComparison.Ordinal)
            || rest.StartsWith("add", StringComparison.Ordinal);
    }

    private static bool LooksLikeNumeral(string text)
    {
        var start = text[0] is 'b' or '#' or '♭' or '♯' ? 1 : 0;
        var end = start;
        while (end < text.Length && text[end] is 'I' or 'V' or 'X' or 'i' or 'v' or 'x')
        {
            end++;
        }

        return end > start
            && (
                end == text.Length || (!char.IsLetter(text[end]) && !char.IsPunctuation(text[end]) || text[end] == '/')
            );
    }

    private static Edit[] ChordEdits(Token token)
    {
        if (token.Text[0] == 'H')
        {
            return [Edit.Of(token, "B" + token.Text[1..])];
        }

        var root = token.Text[..Math.Max(1, NoteName.Read(token.Text, out _))];
        return Spelling.EditsOfSymbol(token, ChordQuality.All.Select(quality => root + quality.Symbol));
    }
}
