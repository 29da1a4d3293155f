using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>the open strings are notes of the key</c>: claims know open strings by their fret alone.</summary>
internal static class OpenStringWords
{
    private const string Instead = "fret 0 is a full fret";

    /// <summary>The failure for the first <c>open strings</c>; null when there are none.</summary>
    public static Failure? In(List<Token> tokens)
    {
        for (var open = 0; open + 1 < tokens.Count; open++)
        {
            if (tokens[open].Is("open") && tokens[open + 1].IsAny("string", "strings"))
            {
                return At(tokens, open);
            }
        }

        return null;
    }

    private static Failure At(List<Token> tokens, int open)
    {
        var first = open;
        while (first > 0 && tokens[first - 1].IsAny("the", "all", "every", "each", "of"))
        {
            first--;
        }

        var last = tokens.FindLastIndex(token => token.Kind != TokenKind.End);
        var speaksOfTheKey = tokens.Exists(token => token.IsAny("key", "scale", "belong", "belongs"));
        return Failure.At(
            tokens[open],
            tokens[open + 1],
            "expected 'fret 0' for open strings ('fret 0 is a full fret' where each sounds a note of the key, 'fret 0 is an empty fret' where none does; how strings are tuned is no claim)",
            speaksOfTheKey
                ?
                [
                    Edit.Of(tokens[first], tokens[last], Instead),
                    Edit.Of(tokens[first], tokens[last], $"in every major key, {Instead}"),
                ]
                : []
        );
    }
}
