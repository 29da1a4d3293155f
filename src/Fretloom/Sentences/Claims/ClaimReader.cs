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
        var tokens = OrLess.Meant(Idioms.Meant(Tokens.Of(text)));
        var inOrder = TrailingScope.Moved(tokens, defaults);
        var at = new Cursor(inOrder);
        var scope = new Scope(defaults);
        Claim? claim = null;
        var failure = ScopePhrases.Read(at, scope) ?? Compound.Read(at, scope, out claim) ?? Stop(at, tokens);
        if (failure is not null)
        {
            if (OpenStringWords.In(tokens) is { } open)
            {
                return open;
            }

            failure = TrailingScope.Fault(inOrder, defaults) ?? failure;
            var plain = Signs.Unreadable(text) ?? NotAlways.In(tokens);
            return plain?.Start < failure.Start + failure.Length ? plain : failure;
        }

        sentence = new ClaimSentence(scope.Keys!, scope.Places!, scope.Window, claim!);
        return null;
    }

    private static Failure? Stop(Cursor at, List<Token> tokens)
    {
        const string what = "a full stop, 'and' or 'or'";
        var (found, last) = (at.Current, tokens[Math.Max(0, tokens.Count - 2)]);
        return found.Kind != TokenKind.End ? Failure.Expected(what, found, "and", "or")
            : found.Length == 0
                ? Failure.At(found, $"expected {what}, found {Failure.Shown(found)}", Edit.Of(last, $"{last.Text}."))
            : null;
    }
}
