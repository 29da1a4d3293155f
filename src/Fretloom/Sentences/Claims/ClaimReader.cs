using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>Reads a whole claim: where and in which keys, what is said, and the full stop.</summary>
internal static class ClaimReader
{
    /// <summary>Reads a sentence; the first thing that is wrong, or null.</summary>
    public static Failure? Read(string text, ClaimDefaults defaults, out ClaimSentence? sentence)
    {
        sentence = null;
        var at = new Cursor(Joined(Tokens.Of(text)));
        var scope = new Scope(defaults);
        Claim? claim = null;
        var failure = ScopePhrases.Read(at, scope) ?? Compound.Read(at, scope, out claim) ?? Stop(at);
        if (failure is not null)
        {
            return Signs.Unreadable(text) is { } sign && sign.Start < failure.Start + failure.Length ? sign : failure;
        }

        sentence = new ClaimSentence(scope.Keys!, scope.Places!, scope.Window, claim!);
        return null;
    }

    // Half turn is half-turn.
    private static List<Token> Joined(List<Token> tokens)
    {
        for (var at = tokens.Count - 2; at >= 0; at--)
        {
            var (half, turn) = (tokens[at], tokens[at + 1]);
            if (half.Is("half") && turn.IsAny("turn", "turns"))
            {
                tokens[at] = new Token(
                    TokenKind.Word,
                    half.Start,
                    turn.End - half.Start,
                    $"half-{turn.Text.ToLowerInvariant()}"
                );
                tokens.RemoveAt(at + 1);
            }
        }

        return tokens;
    }

    private static Failure? Stop(Cursor at)
    {
        const string what = "a full stop, 'and' or 'or'";
        var (found, last) = (at.Current, at.Previous);
        return found.Kind != TokenKind.End ? Failure.Expected(what, found, "and", "or")
            : found.Length == 0
                ? Failure.At(found, $"expected {what}, found {Failure.Shown(found)}", Edit.Of(last, $"{last.Text}."))
            : null;
    }
}
