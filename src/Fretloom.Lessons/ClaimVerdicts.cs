using System.Collections.Concurrent;
using Fretloom.Claims;

namespace Fretloom.Lessons;

/// <summary>Checks the claims of a lesson, each once, however many keys the lesson is made in.</summary>
/// <param name="checks">How.</param>
/// <param name="sentences">The claims, so that it is known how much work there is.</param>
/// <param name="memory">What came of claims that were checked before; null for nothing.</param>
internal sealed class ClaimVerdicts(
    ClaimChecks checks,
    IEnumerable<ClaimSentence> sentences,
    LessonMemory? memory = null
)
{
    private readonly ConcurrentDictionary<ClaimSentence, (ClaimVerdict? Verdict, string? Refusal)> _known = new();
    private readonly Lazy<Dictionary<ClaimSentence, double>> _work = new(() =>
        sentences.Distinct().ToDictionary(one => one, WorkOf)
    );

    /// <summary>What came of a claim, or why it takes too long to check.</summary>
    /// <exception cref="OperationCanceledException">The check was stopped.</exception>
    public (ClaimVerdict? Verdict, string? Refusal) Of(ClaimSentence sentence) =>
        _known.GetOrAdd(sentence, one => memory is null ? Check(one) : memory.Of(one, Check));

    /// <summary>Whether a claim is left unchecked for now, though it could be checked.</summary>
    public bool PutsOff(ClaimSentence sentence) =>
        checks.PutOff < CheckOptions.Default.Budget
        && ClaimCost.Of(sentence).Nanoseconds is var cost
        && cost > checks.PutOff
        && cost <= CheckOptions.Default.Budget;

    private (ClaimVerdict? Verdict, string? Refusal) Check(ClaimSentence sentence)
    {
        if (PutsOff(sentence))
        {
            return (null, "Checking this claim takes a while, so it is left for when the handout is made.");
        }

        try
        {
            var options = CheckOptions.Default with { Threads = checks.Threads };
            return (ClaimChecker.Check(sentence, options, Share(sentence), checks.Cancellation), null);
        }
        catch (ClaimTooCostlyException refusal)
        {
            return (null, refusal.Message);
        }
    }

    /// <summary>Tells of one claim's share as a share of all.</summary>
    private ShareOfAll? Share(ClaimSentence sentence) =>
        checks.Progress is null
            ? null
            : new ShareOfAll(
                checks.Progress,
                _known.Keys.Sum(one => _work.Value[one]) / _work.Value.Values.Sum(),
                _work.Value[sentence] / _work.Value.Values.Sum()
            );

    /// <summary>As foreseen; what will be refused is no work. Never nothing, so that there is always something to share.</summary>
    private static double WorkOf(ClaimSentence sentence)
    {
        var cost = ClaimCost.Of(sentence);
        return cost.WhyNot(CheckOptions.Default.Budget) is null ? cost.Nanoseconds + 1 : 1;
    }

    private sealed class ShareOfAll(IProgress<double> all, double before, double part) : IProgress<double>
    {
        public void Report(double value) => all.Report(before + part * value);
    }
}
