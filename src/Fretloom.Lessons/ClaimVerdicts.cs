using System.Collections.Concurrent;
using Fretloom.Claims;

namespace Fretloom.Lessons;

/// <summary>Checks the claims of a lesson, each once, however many keys the lesson is made in.</summary>
/// <param name="cancellation">Stops a check.</param>
internal sealed class ClaimVerdicts(CancellationToken cancellation)
{
    private readonly ConcurrentDictionary<ClaimSentence, (ClaimVerdict? Verdict, string? Refusal)> _known = new();

    /// <summary>What came of a claim, or why it takes too long to check.</summary>
    /// <exception cref="OperationCanceledException">The check was stopped.</exception>
    public (ClaimVerdict? Verdict, string? Refusal) Of(ClaimSentence sentence) => _known.GetOrAdd(sentence, Check);

    private (ClaimVerdict? Verdict, string? Refusal) Check(ClaimSentence sentence)
    {
        try
        {
            return (ClaimChecker.Check(sentence, cancellation: cancellation), null);
        }
        catch (ClaimTooCostlyException refusal)
        {
            return (null, refusal.Message);
        }
    }
}
