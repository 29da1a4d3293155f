using System.Buffers;

namespace Fretloom.Sentences.Reading;

/// <summary>Cuts a sentence into tokens, in one pass.</summary>
/// <remarks>
/// Commas inside the brackets of a chord symbol belong to it: <c>C7(b9,#11)</c>. A dash after a number stands for itself
/// (<c>4-1</c>) unless a letter follows (<c>7-string</c>); anywhere else it belongs to the word (<c>low-G</c>, <c>A-7</c>).
/// A full stop counts as such only as the last character.
/// </remarks>
internal static class Tokens
{
    // Hyphen, non-breaking hyphen, figure dash, en dash, em dash, bar, minus sign.
    private static readonly SearchValues<char> Dashes = SearchValues.Create("-‐‑‒–—―−");

    /// <summary>The tokens in order; the last one, and only that, is the end.</summary>
    public static List<Token> Of(string text)
    {
        var tokens = new List<Token>();
        var length = text.AsSpan().TrimEnd().Length;
        var hasStop = length > 0 && text[length - 1] == '.';
        var end = hasStop ? length - 1 : length;
        for (var at = 0; at < end; )
        {
            if (char.IsWhiteSpace(text[at]))
            {
                at++;
            }
            else
            {
                at = AddRun(tokens, text, at, RunEnd(text, at, end));
            }
        }

        tokens.Add(new Token(TokenKind.End, hasStop ? end : length, hasStop ? 1 : 0, hasStop ? "." : ""));
        return tokens;
    }

    private static int RunEnd(string text, int at, int end)
    {
        while (at < end && !char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        return at;
    }

    // A run is what stands between two spaces.
    private static int AddRun(List<Token> tokens, string text, int at, int end)
    {
        var lastBracket = text.LastIndexOf(')', end - 1, end - at);
        while (at < end)
        {
            var width = 1;
            var kind =
                text[at] == ',' ? TokenKind.Comma
                : Dashes.Contains(text[at]) ? TokenKind.Dash
                : TokenKind.Word;
            if (kind == TokenKind.Word)
            {
                width = WordLength(text.AsSpan(at, end - at), lastBracket - at);
            }

            tokens.Add(new Token(kind, at, width, Plain(text.AsSpan(at, width))));
            at += width;
        }

        return end;
    }

    private static int WordLength(ReadOnlySpan<char> run, int lastBracket)
    {
        var isNumber = true;
        var depth = 0;
        for (var at = 0; at < run.Length; at++)
        {
            var next = at + 1 < run.Length ? run[at + 1] : ' ';
            var endsNumber = isNumber && at > 0 && Dashes.Contains(run[at]) && !char.IsLetter(next);
            var isOutside = depth <= 0 || at > lastBracket;
            if (endsNumber || (run[at] == ',' && isOutside))
            {
                return at;
            }

            isNumber &= char.IsAsciiDigit(run[at]);
            depth += run[at] switch
            {
                '(' => 1,
                ')' => -1,
                _ => 0,
            };
        }

        return run.Length;
    }

    private static string Plain(ReadOnlySpan<char> word)
    {
        if (!word.ContainsAny(Dashes) && !word.Contains('’'))
        {
            return word.ToString();
        }

        var plain = word.ToArray();
        for (var at = 0; at < plain.Length; at++)
        {
            plain[at] =
                Dashes.Contains(plain[at]) ? '-'
                : plain[at] == '’' ? '\''
                : plain[at];
        }

        return new string(plain);
    }
}
