using Fretloom.Theory;

namespace Fretloom.Claims.Discovery;

/// <summary>Some kinds of key, said with the widest quantifier and as few further parts as can be.</summary>
/// <param name="Keys">The quantifier.</param>
/// <param name="Said">What the sentence says besides.</param>
/// <param name="Claims">What a converse in every key says of the key; null when it cannot be said.</param>
/// <param name="Parts">Of how many simple parts the condition is made.</param>
internal sealed record KindCondition(KeyScope Keys, ValueList<Claim> Said, ValueList<Claim>? Claims, int Parts)
{
    /// <summary>A claim under conditions, all of them together; itself under none.</summary>
    public static Claim If(ValueList<Claim> conditions, Claim then) =>
        conditions.Count == 0 ? then : new Claim.If(Joined(conditions), then);

    /// <summary>All of some claims.</summary>
    public static Claim Joined(IReadOnlyList<Claim> claims) =>
        claims.Count == 1 ? claims[0] : new Claim.And(claims.SelectMany(Flat).ToValueList());

    private static IEnumerable<Claim> Flat(Claim claim) => claim is Claim.And and ? and.Parts : [claim];

    /// <summary>The condition; null when it takes too many words.</summary>
    /// <param name="kinds">The kinds that are meant, at least one.</param>
    /// <param name="search">The kinds that there are.</param>
    public static KindCondition? Of(IReadOnlyList<ScaleKind> kinds, Search search)
    {
        var others = search.Kinds.Where(kind => !kinds.Contains(kind)).ToList();
        if (others.Count == 0)
        {
            return new(search.IsUsual ? new KeyScope.EveryKey() : search.Scope.Keys, [], [], 0);
        }

        if (kinds.Count == 1)
        {
            ValueList<Claim>? isIt = search.IsUsual ? [new Claim.KeyIs(kinds[0])] : null;
            return new(new KeyScope.EveryOf(kinds[0]), [], isIt, 1);
        }

        if (!search.IsUsual)
        {
            return null;
        }

        var nots = others.Select(kind => (Claim)new Claim.KeyIs(kind, IsNot: true)).ToValueList();
        return kinds.Contains(ScaleKind.Major)
            ? new(new KeyScope.EveryKey(), nots, nots, nots.Count)
            : new(
                new KeyScope.EveryMinorKey(),
                nots.Where(not => not is Claim.KeyIs { Kind: var kind } && kind != ScaleKind.Major).ToValueList(),
                nots,
                nots.Count
            );
    }
}
