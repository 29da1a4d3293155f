using Fretloom.Claims.Checking;

namespace Fretloom.Claims.Discovery;

/// <summary>Makes what is told of a candidate.</summary>
internal sealed class Lines(Search search, CancellationToken cancellation)
{
    private const int OtherKindSemitones = 2;

    private readonly Dictionary<string, Place> _listed = ListedStringSets
        .All.GroupBy(place => string.Join(' ', place.Strings.Steps))
        .ToDictionary(group => group.Key, group => group.First());

    /// <summary>The line of a landmark; null when it does not stand the check.</summary>
    public DiscoveredClaim? Landmark(Candidate candidate, IEnumerable<Candidate> alike)
    {
        ClaimSentence Say(Statement one) => new(search.Scope.Keys, search.Scope.Place, null, one.Here);
        var sentence = Say(candidate.Statement);
        return Recheck.CasesOf(sentence, cancellation) is { } cases
            ? Line(candidate, sentence, Say, cases, candidate.Score, alike, null)
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
        return Line(law.Candidate, law.Sentence, law.Say, cases, law.Score, alike, converse);
    }

    private DiscoveredClaim Line(
        Candidate candidate,
        ClaimSentence sentence,
        Func<Statement, ClaimSentence> sayAlike,
        long cases,
        double score,
        IEnumerable<Candidate> alike,
        ClaimSentence? converse
    )
    {
        return new DiscoveredClaim(
            sentence,
            Summaries.Of(candidate.Statement.Here),
            cases,
            Math.Round(score, 2),
            candidate.Statement.Template.Name,
            Math.Round(candidate.Elsewhere, 4),
            alike.Where(other => other != candidate).Select(other => sayAlike(other.Statement)).ToValueList(),
            Nearest(candidate),
            converse,
            Examples.Of(Shown(candidate, sentence), (PlaceScope.On)search.Scope.Place, sentence.Keys)
        );
    }

    /// <summary>What is said of the target: with its string numbers, and the condition of a law.</summary>
    private static Claim Shown(Candidate candidate, ClaimSentence sentence) =>
        sentence.Claim is Claim.If condition
            ? condition with
            {
                Then = candidate.Statement.Here,
            }
            : candidate.Statement.Here;

    private NearestFailure? Nearest(Candidate candidate)
    {
        var here = Ground.StepsOf(search.Here);
        var (best, least) = (((int Kind, int[] Steps, int Semitones)?)null, int.MaxValue);
        for (var place = 0; place < search.Ground.Steps.Count; place++)
        {
            var steps = search.Ground.Steps[place];
            var semitones = steps.Zip(here, (a, b) => Math.Abs(a - b)).Sum();
            for (var kind = 0; kind < search.Kinds.Count && semitones < least; kind++)
            {
                var far = semitones + (search.Asked.Contains(kind) ? 0 : OtherKindSemitones);
                if (far < least && candidate.Truth.Fails[kind, place])
                {
                    (best, least) = ((kind, steps, semitones), far);
                }
            }
        }

        return best is { } found ? Failure(candidate.Statement, found.Kind, found.Steps, found.Semitones) : null;
    }

    private NearestFailure Failure(Statement statement, int kind, int[] steps, int semitones)
    {
        var place =
            semitones == 0 ? search.Here
            : _listed.TryGetValue(string.Join(' ', steps), out var listed) ? listed
            : Place.Tuned(steps);
        var claim = statement.On(search.Here.Strings.Numbers, place.Strings.Numbers);
        var sentence = new ClaimSentence(new KeyScope.EveryOf(search.Kinds[kind]), search.Scope.Place, null, claim);
        var failing = OutcomeTable.Of(sentence, [place], cancellation).Single().Smallest(sentence);
        var on = new PlaceScope.On(failing.Instrument, failing.Strings);
        var pictures = Examples.In(failing.Key, claim, on);
        return new NearestFailure(search.Kinds[kind], place.Name, semitones, failing, pictures);
    }
}

/// <summary>Says in few words what stands in one line.</summary>
internal static class Summaries
{
    /// <summary><c>on the full frets string 4 sounds degrees 1, 2 and 5</c>; null when the claim is short enough.</summary>
    public static string? Of(Claim claim) =>
        claim is Claim.And and && and.Parts.All(part => part is Claim.DegreeStands)
            ? OfDegrees([.. and.Parts.Cast<Claim.DegreeStands>()])
            : null;

    private static string OfDegrees(List<Claim.DegreeStands> parts)
    {
        var strings = parts.GroupBy(part => part.String).Select(OfString);
        return $"at the {ClaimWords.Of(parts[0].Noun.Kind)}s {string.Join(", ", strings)}";
    }

    private static string OfString(IGrouping<int, Claim.DegreeStands> parts)
    {
        var degrees = ClaimWords.List(parts.Select(part => ClaimWords.Number(part.Degree)));
        var noun = parts.Count() == 1 ? "degree" : "degrees";
        return $"string {ClaimWords.Number(parts.Key)} sounds {noun} {degrees}";
    }
}
