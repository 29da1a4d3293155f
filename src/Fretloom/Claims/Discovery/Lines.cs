using Fretloom.Claims.Checking;
using Fretloom.Theory;

namespace Fretloom.Claims.Discovery;

/// <summary>Makes what is told of a candidate.</summary>
internal sealed class Lines(Search search, CancellationToken cancellation)
{
    private readonly NearestFailures _nearest = new(search, cancellation);

    /// <summary>The line of a landmark; null when it does not stand the check.</summary>
    public DiscoveredClaim? Landmark(Candidate candidate, IEnumerable<Candidate> alike)
    {
        var kinds = KindsOf(candidate.KindsHere);
        var keys = candidate.IsTrueHere ? null : KindCondition.Of(kinds, search);
        ClaimSentence Say(Statement one) =>
            new(
                keys?.Keys ?? search.Scope.Keys,
                search.Scope.Place,
                null,
                KindCondition.If(keys?.Said ?? [], one.Here)
            );
        var sentence = Say(candidate.Statement);
        return Recheck.CasesOf(sentence, cancellation) is { } cases
            ? Line(candidate, sentence, Say, cases, candidate.Score, alike, kinds, null)
            : null;
    }

    /// <summary>The sentence of a landmark and its share elsewhere alone; null when it does not stand the check.</summary>
    public DiscoveredClaim? Bare(Candidate candidate)
    {
        var sentence = new ClaimSentence(search.Scope.Keys, search.Scope.Place, null, candidate.Statement.Here);
        return Recheck.CasesOf(sentence, cancellation) is { } cases
            ? Bare(candidate, sentence, cases, candidate.Score)
            : null;
    }

    /// <summary>The line of a law; null when it does not stand the check.</summary>
    public DiscoveredClaim? Law(FoundLaw law, IEnumerable<Candidate> alike)
    {
        if (Recheck.CasesOf(law.Sentence, cancellation) is not { } cases)
        {
            return null;
        }

        var converse = law.Converses.FirstOrDefault(one => Recheck.CasesOf(one, cancellation) is not null);
        return Line(law.Candidate, law.Sentence, law.Say, cases, law.Score, alike, KindsOf(law.Kinds), converse);
    }

    private DiscoveredClaim Line(
        Candidate candidate,
        ClaimSentence sentence,
        Func<Statement, ClaimSentence> sayAlike,
        long cases,
        double score,
        IEnumerable<Candidate> alike,
        ValueList<ScaleKind> kinds,
        ClaimSentence? converse
    ) =>
        Bare(candidate, sentence, cases, score) with
        {
            Summary = Summaries.Of(candidate.Statement.Here),
            AlsoSays = alike
                .Where(other => other != candidate)
                .Select(other => sayAlike(other.Statement))
                .ToValueList(),
            NearestFailure = _nearest.Of(candidate, kinds),
            Converse = converse,
            Pictures = Examples.Of(Shown(candidate, sentence), (PlaceScope.On)search.Scope.Place, sentence.Keys),
        };

    private static DiscoveredClaim Bare(Candidate candidate, ClaimSentence sentence, long cases, double score) =>
        new(
            sentence,
            null,
            cases,
            Math.Round(score, 2),
            candidate.Statement.Template.Name,
            Math.Round(candidate.Elsewhere, 4),
            [],
            null,
            null,
            []
        );

    private ValueList<ScaleKind> KindsOf(IEnumerable<int> kinds) =>
        kinds.Select(kind => search.Kinds[kind]).ToValueList();

    /// <summary>What is said of the target: with its string numbers, and the condition of a law.</summary>
    private static Claim Shown(Candidate candidate, ClaimSentence sentence) =>
        sentence.Claim is Claim.If condition
            ? condition with
            {
                Then = candidate.Statement.Here,
            }
            : candidate.Statement.Here;
}
