namespace Fretloom.Lessons.Markdown;

/// <summary>Turns straight quotation marks and apostrophes into those of a language, piece by piece of a running text.</summary>
/// <remarks>
/// Marks by language: from memory, to be compared with the delimiters of Unicode CLDR. The apostrophe is U+2019 in all of
/// them (The Unicode Standard, chapter 6.2). In a language that is not listed, double quotation marks stay straight.
/// </remarks>
/// <param name="language">A language tag such as <c>en-GB</c>.</param>
internal sealed class Quotes(string language)
{
    private const char Apostrophe = '’';

    // What follows the end of a piece, OBJECT REPLACEMENT CHARACTER: neither space nor letter.
    private const char NextPiece = '\uFFFC';

    private readonly (string OpenDouble, string CloseDouble, string OpenSingle, string CloseSingle) _marks =
        language.Split('-')[0] switch
        {
            "en" or "pt" or "da" or "tr" or "ga" or "cy" => ("“", "”", "‘", "’"),
            "de" or "cs" or "sk" or "sl" or "is" => ("„", "“", "‚", "‘"),
            "sv" or "fi" => ("”", "”", "’", "’"),
            "es" or "it" => ("«", "»", "“", "”"),
            "fr" => ("«\u00A0", "\u00A0»", "‹\u00A0", "\u00A0›"),
            "nb" or "nn" => ("«", "»", "‘", "’"),
            "nl" => ("“", "”", "‘", "’"),
            "pl" => ("„", "”", "‚", "’"),
            _ => ("\"", "\"", "’", "’"),
        };

    private char _before = ' ';
    private int _openSingles;

    /// <summary>A whole text by itself.</summary>
    public static string Curl(string text, string language) => new Quotes(language).Next(text);

    /// <summary>The next piece of the text.</summary>
    public string Next(string piece)
    {
        var curled = new System.Text.StringBuilder(piece.Length);
        for (var at = 0; at < piece.Length; at++)
        {
            var after = at + 1 < piece.Length ? piece[at + 1] : NextPiece;
            curled.Append(
                piece[at] switch
                {
                    '"' => IsOpening(after) ? _marks.OpenDouble : _marks.CloseDouble,
                    '\'' => Single(after, piece, at),
                    var other => other.ToString(),
                }
            );
            _before = piece[at];
        }

        return curled.ToString();
    }

    /// <summary>Something stands in the text that is not its own words, such as a chord or code.</summary>
    public void Pass() => _before = 'x';

    private string Single(char after, string piece, int at)
    {
        // Before a year or a word cut short at its front, and wherever no quotation ends later, it is an apostrophe.
        if (IsOpening(after) && !char.IsAsciiDigit(after) && HasEnd(piece, at))
        {
            _openSingles++;
            return _marks.OpenSingle;
        }

        if (_openSingles > 0 && !char.IsLetterOrDigit(after))
        {
            _openSingles--;
            return _marks.CloseSingle;
        }

        return Apostrophe.ToString();
    }

    private bool IsOpening(char after) =>
        (char.IsWhiteSpace(_before) || "([{–—-/\"'“„«‘‚".Contains(_before, StringComparison.Ordinal))
        && !char.IsWhiteSpace(after);

    private static bool HasEnd(string piece, int at) =>
        Enumerable
            .Range(at + 1, piece.Length - at - 1)
            .Any(end =>
                piece[end] == '\''
                && !char.IsWhiteSpace(piece[end - 1])
                && (end + 1 == piece.Length || !char.IsLetterOrDigit(piece[end + 1]))
            );
}
