using System.Text;

namespace Fretloom.Theory;

/// <summary>Brings the many spellings of a chord suffix to one, so that a table needs to hold only that.</summary>
/// <remarks>
/// Brackets, and commas and spaces within them, and the slash of 6/9 fall away; Unicode accidentals become <c>#</c> and <c>b</c>; M, ma7, △ become <c>maj</c>
/// (a triangle alone <c>maj7</c>); min, mi and a leading minus become <c>m</c>; o and ° become <c>dim</c>; ø, ø7 become <c>m7b5</c>;
/// a leading plus becomes <c>aug</c>, plus and minus later on <c>#</c> and <c>b</c>. The rules are common practice, no source.
/// </remarks>
internal static class ChordSpelling
{
    // Longer spellings stand before those that they begin with.
    private static readonly (string Written, string Normal)[] Words =
    [
        ("add", "add"),
        ("aug", "aug"),
        ("alt", "alt"),
        ("sus", "sus"),
        ("dim", "dim"),
        ("dom", ""),
        ("quartal", "quartal"),
        ("maj", "maj"),
        ("Maj", "maj"),
        ("MAJ", "maj"),
        ("ma7", "maj7"),
        ("ma9", "maj9"),
        ("M", "maj"),
        ("min", "m"),
        ("Min", "m"),
        ("MIN", "m"),
        ("mi", "m"),
        ("m", "m"),
        ("o", "dim"),
        ("°", "dim"),
        ("º", "dim"),
        ("♭", "b"),
        ("♯", "#"),
        ("𝄫", "bb"),
        ("𝄪", "##"),
        ("6/9", "69"),
        ("/maj", "maj"),
        ("/Maj", "maj"),
        ("/ma7", "maj7"),
        ("/M", "maj"),
        ("(", ""),
        (")", ""),
        (",", ""),
        (" ", ""),
    ];

    /// <summary>Whether brackets come in pairs, side by side and not empty, with commas and spaces only inside.</summary>
    public static bool IsWellBracketed(string text)
    {
        var opened = -1;
        for (var at = 0; at < text.Length; at++)
        {
            var isFine = text[at] switch
            {
                '(' => opened < 0,
                ')' => opened >= 0 && at > opened + 1,
                ',' or ' ' => opened >= 0,
                _ => true,
            };
            if (!isFine)
            {
                return false;
            }

            opened = text[at] switch
            {
                '(' => at,
                ')' => -1,
                _ => opened,
            };
        }

        return opened < 0;
    }

    public static string Normal(string text)
    {
        var normal = new StringBuilder(text.Length + 4);
        for (var at = 0; at < text.Length; )
        {
            at += AppendNext(normal, text.AsSpan(at));
        }

        return normal.ToString();
    }

    private static int AppendNext(StringBuilder normal, ReadOnlySpan<char> rest)
    {
        foreach (var (written, replacement) in Words)
        {
            if (rest.StartsWith(written, StringComparison.Ordinal))
            {
                normal.Append(replacement);
                return written.Length;
            }
        }

        var isNumberNext = rest.Length > 1 && char.IsAsciiDigit(rest[1]);
        switch (rest[0])
        {
            case 'ø' or 'Ø':
                return AppendHalfDiminished(normal, rest);
            case '△' or 'Δ' or '∆':
                normal.Append(isNumberNext ? "maj" : "maj7");
                break;
            case '-':
                normal.Append(normal.Length == 0 ? "m" : "b");
                break;
            case '+' when normal.Length == 0:
                normal.Append("aug");
                break;
            case '+':
                normal.Append(isNumberNext ? "#" : "#5");
                break;
            default:
                normal.Append(rest[0]);
                break;
        }

        return 1;
    }

    // A half-diminished sign says two things, "m" in front and "b5" behind the number: ø9 is m9b5.
    private static int AppendHalfDiminished(StringBuilder normal, ReadOnlySpan<char> rest)
    {
        var digits = rest[1..].IndexOfAnyExceptInRange('0', '9');
        var end = digits < 0 ? rest.Length : 1 + digits;
        normal.Append('m').Append(end == 1 ? "7" : rest[1..end]).Append("b5");
        return end;
    }
}
