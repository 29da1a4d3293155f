namespace Fretloom.Claims.Discovery;

/// <summary>A statement with the widest condition under which it is true.</summary>
/// <param name="Candidate">The statement.</param>
/// <param name="Condition">What the tuning must be.</param>
/// <param name="Kinds">Indexes of the kinds of key in which it is true.</param>
/// <param name="Region">Where the condition is met.</param>
/// <param name="Say">Says of a statement that the condition suffices.</param>
/// <param name="Converses">That it is necessary, the widest first, if it may be.</param>
/// <param name="Score">By which laws are ranked.</param>
internal sealed record FoundLaw(
    Candidate Candidate,
    TuningCondition Condition,
    ValueList<int> Kinds,
    Row Region,
    Func<Statement, ClaimSentence> Say,
    ValueList<ClaimSentence> Converses,
    double Score
)
{
    public ClaimSentence Sentence => Say(Candidate.Statement);

    /// <summary>Whether another law says all that it says: it is true where the other is, and the other is a law wherever it says anything.</summary>
    public bool FollowsFrom(FoundLaw other) =>
        other.Candidate.Truth.Holds.IsWithin(Candidate.Truth.Holds)
        && Candidate.Truth.Holds.And(Region).IsWithin(other.Candidate.Truth.Holds.And(other.Region));
}

/// <summary>Looks for the widest condition of at most three simple parts under which a statement is never false.</summary>
internal sealed class LawFinder
{
    private const int MostParts = 3;
    private const int FewestTunings = 8;
    private const double LeastShare = 0.1;
    private const double MostSurprise = 4;
    private const double ForExactness = 2;
    private const double ForBeingTrueHere = 1;
    private const double CostOfPart = 0.5;
    private const int MostOfOneTemplate = 4;

    private readonly Search _search;
    private readonly CancellationToken _cancellation;
    private readonly List<(TuningCondition Condition, Row Places, int Count)> _conditions;

    public LawFinder(Search search, CancellationToken cancellation)
    {
        (_search, _cancellation) = (search, cancellation);
        _conditions =
        [
            .. TuningCondition
                .Of(Ground.StepsOf(search.Here))
                .Select(condition => (condition, search.Ground.PlacesWhere(condition.IsMetBy)))
                .Select(each => (each.condition, each.Item2, each.Item2.Total))
                .Where(each => each.Total >= FewestTunings),
        ];
    }

    /// <summary>The best laws, the best first.</summary>
    public IEnumerable<DiscoveredClaim> Best(Lines lines, int count)
    {
        var found = AlikeGroup
            .Of(_search.Candidates.Where(one => one is { IsTrivial: false, TellsOfNeck: true }))
            .Select(group => (Law: Of(group.Best), All: group.All.Where(one => IsNoFalser(one, group.Best)).ToList()))
            .Where(each => each.Law is not null)
            .Select(each => (Law: each.Law!, each.All));
        var taken = new List<FoundLaw>();
        foreach (var (law, all) in Ranked(WithFamilies(found)))
        {
            if (taken.Count == count)
            {
                yield break;
            }

            if (
                taken.Count(one => one.Candidate.Statement.Template == law.Candidate.Statement.Template)
                    < MostOfOneTemplate
                && !taken.Exists(law.FollowsFrom)
                && lines.Law(law, all) is { } line
            )
            {
                taken.Add(law);
                yield return line;
            }
        }
    }

    /// <summary>Those that say something of the keys asked for first.</summary>
    private IEnumerable<(FoundLaw Law, List<Candidate> All)> Ranked(
        IEnumerable<(FoundLaw Law, List<Candidate> All)> found
    ) =>
        found
            .OrderByDescending(each => each.Law.Kinds.Intersect(_search.Asked).Any())
            .ThenByDescending(each => Math.Round(each.Law.Score, 6))
            .ThenBy(each => each.Law.Candidate.Text.Length)
            .ThenBy(each => each.Law.Candidate.Text, StringComparer.Ordinal);

    /// <summary>Laws that differ only in the smaller string set they name, under one condition, said in one line.</summary>
    private IEnumerable<(FoundLaw Law, List<Candidate> All)> WithFamilies(
        IEnumerable<(FoundLaw Law, List<Candidate> All)> found
    ) =>
        found
            .GroupBy(each =>
                Families.Of(each.Law.Candidate.Statement) is { } family && each.Law.Converses.Count == 0
                    ? (family, each.Law.Condition, each.Law.Kinds)
                    : (each.Law.Candidate.Text, each.Law.Condition, each.Law.Kinds)
            )
            .Select(family => family.ToList())
            .Select(family => family.Count == 1 ? family[0] : Joined(family));

    // What is true in exactly the same cases is that of each member, and of none of them together.
    private (FoundLaw Law, List<Candidate> All) Joined(List<(FoundLaw Law, List<Candidate> All)> family)
    {
        var members = family.ConvertAll(each => each.Law.Candidate);
        var joined = Candidate.Joined(
            [.. members.OrderBy(one => one.Statement.Here, Comparer<Claim>.Create(FromFar))],
            _search.Ground
        );
        return (family[0].Law with { Candidate = joined, Score = family.Max(each => each.Law.Score) }, []);
    }

    private static int FromFar(Claim one, Claim other) =>
        -string.CompareOrdinal(Sentences.ClaimPrinter.Print(one), Sentences.ClaimPrinter.Print(other));

    /// <summary>Whether one is false nowhere but where the other is, and so true under the other's condition too.</summary>
    private static bool IsNoFalser(Candidate one, Candidate other) => one.Truth.Fails.IsWithin(other.Truth.Fails);

    /// <summary>The law of a statement; null when no condition is wide enough.</summary>
    private FoundLaw? Of(Candidate candidate)
    {
        _cancellation.ThrowIfCancellationRequested();
        var (best, covered, kinds, keys) = ((TuningCondition?)null, 0.0, (List<int>)[], (KindCondition?)null);
        foreach (var (condition, places, _) in _conditions)
        {
            var suffices = Enumerable
                .Range(0, _search.Kinds.Count)
                .Where(kind => !candidate.Truth.Fails.Meets(kind, places) && candidate.Truth.Holds.Meets(kind, places))
                .ToList();
            if (suffices.Count == 0)
            {
                continue;
            }

            var share = _search.Ground.Weigh(candidate.Truth.Holds.And(Cells(suffices, places)));
            if (share > covered && Kinds(suffices) is { } said && said.Parts + condition.Parts <= MostParts)
            {
                (best, covered, kinds, keys) = (condition, share, suffices, said);
            }
        }

        return best is null || covered < LeastShare * _search.Ground.Weigh(candidate.Truth.Holds)
            ? null
            : Law(candidate, best, kinds, keys!);
    }

    private FoundLaw Law(Candidate candidate, TuningCondition condition, List<int> kinds, KindCondition keys)
    {
        var strings = _search.Here.Strings.Count;
        ClaimSentence Say(Statement one) =>
            new(
                keys.Keys,
                condition.Tunings(strings),
                null,
                KindCondition.If([.. condition.Said, .. keys.Said], one.Anywhere)
            );
        var converses = Converses(candidate, condition, kinds, keys).ToValueList();
        var score =
            Math.Min(MostSurprise, candidate.Surprise)
            + candidate.Worth
            + (converses.Count > 0 ? ForExactness : 0)
            + (candidate.IsTrueHere ? ForBeingTrueHere : 0)
            - CostOfPart * (condition.Parts + keys.Parts);
        return new FoundLaw(
            candidate,
            condition,
            kinds.ToValueList(),
            Cells(kinds, _conditions.First(each => each.Condition == condition).Places),
            Say,
            converses,
            score
        );
    }

    /// <summary>In every key where that is so, and else in the keys of the law.</summary>
    private IEnumerable<ClaimSentence> Converses(
        Candidate candidate,
        TuningCondition condition,
        List<int> kinds,
        KindCondition keys
    )
    {
        if (condition.NamesSteps)
        {
            yield break;
        }

        var places = _conditions.First(each => each.Condition == condition).Places;
        var all = Enumerable.Range(0, _search.Kinds.Count).ToList();
        var everywhere = new PlaceScope.Tunings(_search.Here.Strings.Count);
        var holds = candidate.Truth.Holds;
        var claim = candidate.Statement.Anywhere;
        if (keys.Claims is { } ofKey && holds.IsWithin(Cells(kinds, places)))
        {
            List<Claim> then = [.. condition.Claims, .. ofKey];
            if (then.Count > 0)
            {
                yield return new ClaimSentence(
                    Kinds(all)!.Keys,
                    everywhere,
                    null,
                    KindCondition.If([claim], KindCondition.Joined(then))
                );
            }
        }

        List<Claim> ofTuning = [.. condition.Claims];
        if (ofTuning.Count > 0 && keys.Parts > 0 && holds.And(OfKinds(kinds)).IsWithin(Cells(kinds, places)))
        {
            yield return new ClaimSentence(
                keys.Keys,
                everywhere,
                null,
                KindCondition.If([.. keys.Said, claim], KindCondition.Joined(ofTuning))
            );
        }
    }

    private KindCondition? Kinds(List<int> kinds) =>
        KindCondition.Of([.. kinds.Select(kind => _search.Kinds[kind])], _search);

    private Row Cells(List<int> kinds, Row places)
    {
        var row = new Row(_search.Kinds.Count, places.Places);
        kinds.ForEach(kind => row.CopyInto(kind, places));
        return row;
    }

    private Row OfKinds(List<int> kinds) => Cells(kinds, _search.Ground.PlacesWhere(_ => true));
}
