namespace Fretloom.Claims.Discovery;

/// <summary>A condition on tunings: palindromic, of equal steps, with steps in a range.</summary>
/// <param name="IsPalindromic">Whether the steps must read the same both ways.</param>
/// <param name="HasEqualSteps">Whether they must be all alike.</param>
/// <param name="Least">The smallest step.</param>
/// <param name="Most">The largest.</param>
internal sealed record TuningCondition(bool IsPalindromic, bool HasEqualSteps, int Least, int Most)
{
    /// <summary>The largest step of the tunings that laws speak of, in semitones.</summary>
    public const int LargestStep = 11;

    public bool NamesSteps => (Least, Most) != (1, LargestStep);

    /// <summary>Of how many simple parts it is made.</summary>
    public int Parts => (IsPalindromic ? 1 : 0) + (HasEqualSteps ? 1 : 0) + (NamesSteps ? 1 : 0);

    /// <summary>What the sentence says besides its quantifier.</summary>
    public IEnumerable<Claim> Said => HasEqualSteps ? [new Claim.HasEqualSteps()] : [];

    /// <summary>What a converse says of the tuning; a range of steps cannot be said so.</summary>
    public IEnumerable<Claim> Claims => IsPalindromic ? [new Claim.IsPalindromic()] : Said;

    /// <summary>
    /// Every condition that a tuning meets, those of fewer parts first, and that it is palindromic, met or not; none where a
    /// step is outside 1 to 11, as in a re-entrant one.
    /// </summary>
    public static IEnumerable<TuningCondition> Of(int[] steps) =>
        (
            from least in Enumerable.Range(1, Math.Max(0, steps.Min()))
            from most in Enumerable.Range(steps.Max(), Math.Max(0, LargestStep + 1 - steps.Max()))
            from kind in new[] { (false, false), (true, false), (false, true) }
            let condition = new TuningCondition(kind.Item1, kind.Item2, least, most)
            where condition.IsMetBy(steps) || condition is { IsPalindromic: true, NamesSteps: false }
            select condition
        )
            .OrderBy(condition => condition.Parts)
            .ThenBy(condition => condition.Least)
            .ThenByDescending(condition => condition.Most);

    public bool IsMetBy(int[] steps) =>
        (!IsPalindromic || Ground.IsPalindromic(steps))
        && (!HasEqualSteps || steps.Distinct().Count() < 2)
        && steps.All(step => step >= Least && step <= Most);

    /// <summary>The quantifier.</summary>
    public PlaceScope.Tunings Tunings(int strings) => new(strings, IsPalindromic, Least, Most);
}
