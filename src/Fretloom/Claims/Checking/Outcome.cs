namespace Fretloom.Claims.Checking;

/// <summary>What a claim comes to in one case.</summary>
internal enum Outcome
{
    /// <summary>True.</summary>
    Holds,

    /// <summary>False.</summary>
    Fails,

    /// <summary>There is nothing to speak about.</summary>
    Untested,
}

/// <summary>Puts outcomes together.</summary>
internal static class Outcomes
{
    public static Outcome Of(bool isTrue) => isTrue ? Outcome.Holds : Outcome.Fails;

    /// <summary>Fails when a part fails; untested when every part is.</summary>
    public static Outcome And(IEnumerable<Outcome> parts)
    {
        var found = parts.ToList();
        return found.Contains(Outcome.Fails) ? Outcome.Fails
            : found.Contains(Outcome.Holds) ? Outcome.Holds
            : Outcome.Untested;
    }

    /// <summary>Holds when a part holds; untested when every part is.</summary>
    public static Outcome Or(IEnumerable<Outcome> parts)
    {
        var found = parts.ToList();
        return found.Contains(Outcome.Holds) ? Outcome.Holds
            : found.Contains(Outcome.Fails) ? Outcome.Fails
            : Outcome.Untested;
    }

    /// <summary>What a quantity of some things comes to: <c>every</c> and <c>no</c> of nothing are untested.</summary>
    public static Outcome Of<T>(Quantity quantity, IReadOnlyCollection<T> things, Func<T, bool> isTrue) =>
        quantity is Quantity.Every or Quantity.No && things.Count == 0
            ? Outcome.Untested
            : Of(IsTrueOf(quantity, things, isTrue));

    /// <summary>The same where nothing can be left untested: every one of none is true.</summary>
    public static bool IsTrueOf<T>(Quantity quantity, IReadOnlyCollection<T> things, Func<T, bool> isTrue) =>
        quantity switch
        {
            Quantity.Every => things.All(isTrue),
            Quantity.Some => things.Any(isTrue),
            Quantity.No => !things.Any(isTrue),
            Quantity.Exactly exactly => things.Count(isTrue) == exactly.Number,
            _ => throw new ArgumentOutOfRangeException(nameof(quantity)),
        };
}
