using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>
/// Where and in which keys a claim is made may stand at its end: <c>there are 3 full frets in every major key on guitar strings 4-1</c>.
/// It is read as if it stood in front.
/// </summary>
/// <remarks>
/// A place behind the last thing spoken of could also be that thing's own, as in <c>the V7 shape has the same form as the V7 shape on low-G
/// ukulele</c>. It is the whole sentence's where no place stands in front and it names the instrument that would be meant without it, or where
/// the sentence speaks of one thing only.
/// </remarks>
internal static class TrailingScope
{
    private static readonly string[] Openings = ["in", "on", "from", "with"];

    // Behind these verbs "on" belongs to what is claimed.
    private static readonly string[] Verbs =
    [
        "lies",
        "lie",
        "begins",
        "begin",
        "ends",
        "end",
        "root",
        "roots",
        "stands",
    ];

    /// <summary>The tokens with what stands at their end moved to the front; the same list when nothing does.</summary>
    public static List<Token> Moved(List<Token> tokens, ClaimDefaults defaults)
    {
        var lead = new Scope(defaults);
        if (After(tokens, 0, lead) is not { } claim)
        {
            return tokens;
        }

        var begins = tokens.IndexOf(claim);
        for (var at = begins + 1; at < tokens.Count - 1; at++)
        {
            if (!tokens[at].IsAny(Openings) || IsJoined(tokens, at))
            {
                continue;
            }

            var scope = new Scope(defaults);
            if (After(tokens, at, scope) is { Kind: TokenKind.End } && IsOfTheWhole(tokens, (begins, at), lead, scope))
            {
                var end = at - (tokens[at - 1].Kind == TokenKind.Comma ? 1 : 0);
                return [.. tokens[at..^1], .. tokens[..end], tokens[^1]];
            }
        }

        return tokens;
    }

    /// <summary>
    /// What is wrong with the phrases at the end of a sentence that cannot be read; null where the fault lies elsewhere. They begin where the claim
    /// itself ends, read as if it could be made anywhere.
    /// </summary>
    public static Failure? Fault(List<Token> tokens, ClaimDefaults defaults)
    {
        var (at, scope) = (new Cursor(tokens), new Scope(defaults));
        if (ScopePhrases.ReadAll(at, scope) is not null)
        {
            return null;
        }

        var begins = at.Current;
        if (scope.Anywhere(begins) is not { } anywhere)
        {
            return null;
        }

        if (Compound.Read(at, anywhere, out _) is { } wrong)
        {
            var opening = tokens.FindLastIndex(token => token.Start < wrong.Start && token.IsAny(Openings));
            return scope.Keys is null && opening > tokens.IndexOf(begins)
                ? InClaimOrPhrases(tokens, opening, scope, wrong)
                : null;
        }

        at.Accept(TokenKind.Comma);
        return ScopePhrases.Begins(at) ? InPhrases(at, scope) : null;
    }

    // Behind a shape "in" may begin how it is voiced as well as the keys: the reading that goes farther is meant.
    private static Failure InClaimOrPhrases(List<Token> tokens, int opening, Scope scope, Failure inClaim)
    {
        var at = new Cursor(tokens);
        at.Skip(opening);
        return
            at.Peek(1).Start == inClaim.Start
            && InPhrases(at, scope) is { } failure
            && (failure.Start > inClaim.Start || inClaim.Edits.Length == 0)
            ? failure
            : inClaim;
    }

    private static Failure? InPhrases(Cursor at, Scope scope)
    {
        var first = at.Current;
        var hasKeys = scope.Has(ScopePart.Keys);
        return ScopePhrases.ReadAll(at, scope) is { } failure
            // Behind keys that were said, "in" that names no others belongs to the claim: in drop 2.
            ? hasKeys && first.Is("in") && failure.Start > first.Start
                ? null
                : failure
            : at.IsAtEnd
                ? null
                : Failure.Expected("a full stop", at.Current);
    }

    // What stands behind the phrases that begin at a place; null where one of them is wrong.
    private static Token? After(List<Token> tokens, int from, Scope scope)
    {
        var at = new Cursor(tokens);
        at.Skip(from);
        return ScopePhrases.ReadAll(at, scope) is null ? at.Current : null;
    }

    private static bool IsJoined(List<Token> tokens, int at) =>
        tokens[at].Is("on") && (tokens[at - 1].IsAny(Verbs) || tokens[Math.Max(0, at - 2)].Is("degree"));

    private static bool IsOfTheWhole(List<Token> tokens, (int Begins, int End) claim, Scope lead, Scope tail)
    {
        if (Enum.GetValues<ScopePart>().Any(part => lead.Has(part) && tail.Has(part)))
        {
            return false;
        }

        var namesPlace = tail.Has(ScopePart.Instrument) || tail.Has(ScopePart.Strings);
        var leadsWithPlace = lead.Has(ScopePart.Instrument) || lead.Has(ScopePart.Strings);
        return !namesPlace
            || (
                !leadsWithPlace
                && (
                    tail.Instrument is null
                    || tail.Instrument == tail.Defaults.Instrument
                    || tokens[claim.End - 1].Kind == TokenKind.Comma
                    || !Compares(tokens[claim.Begins..claim.End])
                )
            );
    }

    // Whether one thing is set beside another.
    private static bool Compares(List<Token> claim) =>
        claim.Exists(token => token.IsAny("as", "half-turn", "half-turns", "mirror", "mirrors", "gap"))
        || claim.Count(token => token.IsAny("full", "empty", "centre", "centres", "center", "centers", "pattern")) > 1;
}
