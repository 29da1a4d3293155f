using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>A bound behind its number: <c>4 frets or less</c> is <c>at most 4 frets</c>, <c>3 full frets or more</c> <c>at least 3 full frets</c>.</summary>
internal static class OrLess
{
    private const int MostWordsBetween = 3;

    // Behind these a number has its bound already, or counts nothing.
    private static readonly string[] Own =
    [
        "exactly",
        "least",
        "most",
        "than",
        "to",
        "and",
        "string",
        "strings",
        "degree",
        "fret",
        "frets",
    ];

    /// <summary>The tokens with every such bound before its number.</summary>
    public static List<Token> Meant(List<Token> tokens)
    {
        var meant = new List<Token>(tokens.Count);
        for (var at = 0; at < tokens.Count; at++)
        {
            if (
                !tokens[at].Is("or")
                || at + 1 == tokens.Count
                || Word(tokens[at + 1]) is not { } word
                || NumberBefore(meant) is not { } number
            )
            {
                meant.Add(tokens[at]);
                continue;
            }

            var place = meant[number] with { Said = meant[number].Said ?? meant[number].Text };
            meant.InsertRange(number, [place with { Text = "at" }, place with { Text = word }]);
            at++;
        }

        return meant;
    }

    private static string? Word(Token token) =>
        token.IsAny("less", "fewer") ? "most"
        : token.Is("more") ? "least"
        : null;

    // The nearest number, unless it has a bound of its own.
    private static int? NumberBefore(List<Token> tokens)
    {
        var number = tokens.FindLastIndex(token => Numbers.Cardinal(token) is not null);
        return
            number < 0 || number < tokens.Count - 1 - MostWordsBetween || (number > 0 && tokens[number - 1].IsAny(Own))
            ? null
            : number;
    }
}
