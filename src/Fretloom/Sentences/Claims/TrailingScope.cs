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
            if (!tokens[at].IsAny("in", "on", "from", "with") || IsJoined(tokens, at))
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
