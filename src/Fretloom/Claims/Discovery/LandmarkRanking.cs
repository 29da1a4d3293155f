namespace Fretloom.Claims.Discovery;

/// <summary>Chooses what is worth telling of the target.</summary>
internal static class LandmarkRanking
{
    private const int MostOfOneTemplate = 4;
    private const int MostRedundant = 2;

    /// <summary>The best lines, the best first: of all the keys asked for, then of some kinds of them.</summary>
    public static IEnumerable<DiscoveredClaim> Of(Search search, Lines lines, int count)
    {
        var groups = AlikeGroup
            .Of(WithFamilies(search))
            .Where(group => !group.All.Any(one => SaysLess(one, search)))
            .ToDictionary(group => group.Best);
        var ofSome = AlikeGroup
            .Of(search.Candidates.Where(one => IsTrueOfSome(one, search)))
            .ToDictionary(group => group.Best);
        var taken = new List<Candidate>();
        foreach (var candidate in Candidate.Ranked(groups.Keys).Concat(Candidate.Ranked(ofSome.Keys)))
        {
            if (taken.Count == count)
            {
                yield break;
            }

            var alike = groups.GetValueOrDefault(candidate) ?? ofSome[candidate];
            if (IsWelcome(candidate, taken) && lines.Landmark(candidate, alike.All) is { } line)
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
            .Select(each => lines.Bare(each.Candidate))
            .OfType<DiscoveredClaim>()
            .Take(count);
    }

    /// <summary>What is true here, members of a family in one statement.</summary>
    private static IEnumerable<Candidate> WithFamilies(Search search) =>
        search
            .TrueHere.GroupBy(one => Families.Of(one.Statement) ?? one.Text)
            .Select(family => family.ToList())
            .Select(family => family.Count == 1 ? family[0] : Candidate.Joined(family, search.Ground));

    /// <summary>Whether it says of some frets what is true of every one.</summary>
    private static bool SaysLess(Candidate candidate, Search search) =>
        candidate.Statement.Here is Claim.OfFrets { Quantity: Quantity.Some } some
        && search.IsTrue(some with { Quantity = new Quantity.Every() });

    /// <summary>Whether it is true of the target in some of the kinds of key asked for, which can be said in few words.</summary>
    private static bool IsTrueOfSome(Candidate candidate, Search search) =>
        candidate is { IsTrueHere: false, IsTrivial: false, TellsOfNeck: true, KindsHere.Count: > 0 }
        && KindCondition.Of([.. candidate.KindsHere.Select(kind => search.Kinds[kind])], search) is not null;

    private static bool IsWelcome(Candidate candidate, List<Candidate> taken) =>
        taken.Count(one => one.Statement.Template == candidate.Statement.Template) < MostOfOneTemplate
        && !candidate.Members.All(one => taken.Exists(other => Implies(other, one)))
        && taken.Count(one => IsRedundant(one, taken.Append(candidate))) <= MostRedundant;

    private static bool Implies(Candidate line, Candidate other) =>
        line.Members.Any(member => member.Truth.Holds.IsWithin(other.Truth.Holds));

    /// <summary>Whether another line says all that a line says, and more.</summary>
    private static bool IsRedundant(Candidate one, IEnumerable<Candidate> others) =>
        others.Any(other => other != one && other.Truth.Holds.IsWithin(one.Truth.Holds));
}
