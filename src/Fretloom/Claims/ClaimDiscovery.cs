using Fretloom.Claims.Discovery;

namespace Fretloom.Claims;

/// <summary>Finds true statements worth teaching that nobody asked for.</summary>
/// <remarks>
/// Templates make thousands of statements about a string set. Those that are true of it are tried on every tuning of as many strings (on
/// a sample from five strings on) in the kinds of key of <c>every key</c>; in other modes when those are asked for. What is true there too is no news; what
/// is true in the same cases is one line. A re-entrant set has no laws: those speak of tunings that ascend. Same scope and seed, same answer.
/// </remarks>
public static class ClaimDiscovery
{
    /// <summary>The most strings of which laws are looked for: beyond, checking one on every tuning takes long.</summary>
    public const int MostStringsOfLaws = 6;

    /// <summary>Looks for laws and landmarks.</summary>
    /// <param name="scope">Where.</param>
    /// <param name="options">How; null for the default.</param>
    /// <param name="progress">Told the share done, from 0 to 1, from any thread.</param>
    /// <param name="cancellation">Looked at all along.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static DiscoveryResult Run(
        DiscoveryScope scope,
        DiscoveryOptions? options = null,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(scope);
        options ??= DiscoveryOptions.Default;
        var search = Search.Of(scope, options.Seed, progress is null ? null : progress.Report, cancellation);
        var lines = new Lines(search, cancellation);
        var landmarks = Told(LandmarkRanking.Of(search, lines, options.Count), 0.8, 0.9).ToValueList();
        var laws =
            search.Here.Strings.Count > MostStringsOfLaws
                ? []
                : Told(new LawFinder(search, cancellation).Best(lines, options.Count), 0.9, 1).ToValueList();
        var random = LandmarkRanking.AtRandom(search, lines, options.Count, options.Seed).ToValueList();
        progress?.Report(1);
        return new DiscoveryResult(
            scope,
            search.Tried,
            search.Candidates.Count(one => one.IsTrueHere),
            search.Ground.Steps.Count,
            laws,
            landmarks,
            random
        )
        {
            WhyNoLaws = laws.Count == 0 ? WhyNoLaws(search) : null,
        };

        IEnumerable<DiscoveredClaim> Told(IEnumerable<DiscoveredClaim> claims, double from, double to)
        {
            foreach (var (at, claim) in claims.Index())
            {
                progress?.Report(from + (to - from) * at / options.Count);
                yield return claim;
            }
        }
    }

    private static string WhyNoLaws(Search search)
    {
        var steps = Ground.StepsOf(search.Here);
        return steps.Length >= MostStringsOfLaws
                ? $"Laws are looked for on up to {MostStringsOfLaws} strings: of more there are too many tunings to go through."
            : steps.Any(step => step < 1)
                ? "Laws are looked for among tunings that ascend, each string sounding above the one before it. These strings are re-entrant, so none can be told of them."
            : steps.Any(step => step > TuningCondition.LargestStep)
                ? $"Laws are looked for among tunings in steps of 1 to {TuningCondition.LargestStep} semitones. Two of these strings lie farther apart, so none can be told of them."
            : "No condition of at most three parts was found under which one of these statements is true of every tuning.";
    }
}
