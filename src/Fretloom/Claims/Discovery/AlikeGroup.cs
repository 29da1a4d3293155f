namespace Fretloom.Claims.Discovery;

/// <summary>Candidates that are true in exactly the same cases: one line.</summary>
/// <param name="Best">The one that is told.</param>
/// <param name="All">All of them, the best first.</param>
internal sealed record AlikeGroup(Candidate Best, ValueList<Candidate> All)
{
    public static IEnumerable<AlikeGroup> Of(IEnumerable<Candidate> candidates) =>
        candidates
            .GroupBy(one => one.Truth.Holds)
            .Select(group => Candidate.Ranked(group).ToValueList())
            .Select(ranked => new AlikeGroup(ranked[0], ranked));
}
