namespace Fretloom.Claims.Discovery;

/// <summary>Chooses what is worth telling of the target.</summary>
internal static class LandmarkRanking
{
    private const int MostOfOneTemplate = 4;
    private const int MostRedundant = 2;

    /// <summary>The best lines, the best first.</summary>
    public static IEnumerable<DiscoveredClaim> Of(Search search, Lines lines, int count)
    {
        var groups = AlikeGroup.Of(search.TrueHere).ToDictionary(group => group.Best);
        var taken = new List<Candidate>();
        foreach (var candidate in Candidate.Ranked(groups.Keys))
        {
            if (taken.Count == count)
            {
                yield break;
            }

            if (IsWelcome(candidate, taken) && lines.Landmark(candidate, groups[candidate].All) is { } line)
            {
                taken.Add(candidate);
                yield return line;
            }
        }
    }

    /// <summary>True statements in the order of a seed.</summary>
    public static IEnumerable<DiscoveredClaim> AtRandom(Search search, Lines lines, int count, int seed)
    {
        var random = new SeededRandom(seed);
        return search
            .Candidates.Where(one => one.IsTrueHere)
            .OrderBy(one => one.Text, StringComparer.Ordinal)
            .Select(one => (Candidate: one, Order: random.Below(int.MaxValue)))
            .OrderBy(each => each.Order)
            .Select(each => lines.Landmark(each.Candidate, []))
            .OfType<DiscoveredClaim>()
            .Take(count);
    }

    private static bool IsWelcome(Candidate candidate, List<Candidate> taken) =>
        taken.Count(one => one.Statement.Template == candidate.Statement.Template) < MostOfOneTemplate
        && !taken.Any(one => one.Truth.Holds.IsWithin(candidate.Truth.Holds))
        && taken.Count(one => IsRedundant(one, taken.Append(candidate))) <= MostRedundant;

    /// <summary>Whether another line says all that a line says, and more.</summary>
    private static bool IsRedundant(Candidate one, IEnumerable<Candidate> others) =>
        others.Any(other => other != one && other.Truth.Holds.IsWithin(one.Truth.Holds));
}
