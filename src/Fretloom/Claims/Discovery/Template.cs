using Fretloom.Neck;

namespace Fretloom.Claims.Discovery;

/// <summary>A kind of statement, with what can stand in its gaps.</summary>
/// <param name="Name">What it speaks of, for a reader.</param>
/// <param name="Weight">How much it is worth in a lesson, beside how surprising it is; 0 to 4. A judgement of ours.</param>
/// <param name="Claims">Every statement of the kind about some strings, in a fixed order.</param>
/// <param name="Family">What statements share that are told in one line; null when each is told alone.</param>
internal sealed record Template(
    string Name,
    double Weight,
    Func<ChosenStrings, IEnumerable<Claim>> Claims,
    Func<Claim, Claim>? Family = null
)
{
    /// <summary>Whether it speaks of the half-turn, which whole string sets have or have not.</summary>
    public bool IsOfHalfTurn { get; init; }
}

/// <summary>A candidate, as it is said of the target and of any tuning.</summary>
/// <param name="Template">Its kind.</param>
/// <param name="Here">With the target's string numbers.</param>
/// <param name="Anywhere">With strings counted from 1.</param>
internal sealed record Statement(Template Template, Claim Here, Claim Anywhere)
{
    /// <summary>The same said of other strings.</summary>
    /// <param name="here">The target's strings.</param>
    /// <param name="there">As many others.</param>
    public Claim On(StringSet here, StringSet there)
    {
        if (here == there)
        {
            return Here;
        }

        var said = Template
            .Claims(new ChosenStrings(here, here))
            .Zip(Template.Claims(new ChosenStrings(there, here)))
            .ToList();
        return Here is Claim.And and ? new Claim.And(and.Parts.Select(Of).ToValueList()) : Of(Here);

        Claim Of(Claim one) => said.First(each => each.First == one).Second;
    }

    /// <summary>All candidates, template by template.</summary>
    public static IEnumerable<Statement> All(ChosenStrings here, ChosenStrings anywhere) =>
        Templates.All.SelectMany(template =>
            template.Claims(here).Zip(template.Claims(anywhere), (one, other) => new Statement(template, one, other))
        );

    /// <summary>Those of one family said in one claim; the others as they are.</summary>
    public static IEnumerable<Statement> Folded(IEnumerable<Statement> statements) =>
        statements
            .GroupBy(one => (one.Template, Family: one.Template.Family?.Invoke(one.Here) ?? one.Here))
            .Select(family => family.ToList())
            .Select(family => family.Count == 1 ? family[0] : Joined(family));

    /// <summary>Several statements of one kind as one.</summary>
    public static Statement Joined(IReadOnlyList<Statement> several) =>
        new(
            several[0].Template,
            new Claim.And(several.SelectMany(one => Claims(one.Here)).ToValueList()),
            new Claim.And(several.SelectMany(one => Claims(one.Anywhere)).ToValueList())
        );

    private static ValueList<Claim> Claims(Claim claim) => claim is Claim.And and ? and.Parts : [claim];
}

/// <summary>Everything that is tried.</summary>
internal static class Templates
{
    public static IReadOnlyList<Template> All { get; } =
    [.. FretTemplates.All, .. PatternTemplates.All, .. ShapeTemplates.All, .. ShapePairTemplates.All];
}
