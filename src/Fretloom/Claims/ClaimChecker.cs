using Fretloom.Claims.Checking;

namespace Fretloom.Claims;

/// <summary>Checks claims by going through every case.</summary>
public static class ClaimChecker
{
    /// <summary>Goes through every case of a sentence.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="options">How; null for the default.</param>
    /// <param name="progress">Told the share of the cases done, from 0 to 1, from any thread.</param>
    /// <param name="cancellation">Looked at all along.</param>
    /// <exception cref="ClaimTooCostlyException">The cost is above the budget.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ClaimVerdict Check(
        ClaimSentence sentence,
        CheckOptions? options = null,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(sentence);
        options ??= CheckOptions.Default;
        Within(sentence, options);
        return VerdictOf(Survey.Of(sentence, options, progress, cancellation), options, cancellation);
    }

    /// <summary>Refuses what costs more than the budget.</summary>
    internal static void Within(ClaimSentence sentence, CheckOptions options)
    {
        if (ClaimCost.Of(sentence).WhyNot(options.Budget) is { } refusal)
        {
            throw new ClaimTooCostlyException(refusal);
        }
    }

    /// <summary>What comes of a sentence that was gone through.</summary>
    internal static ClaimVerdict VerdictOf(Survey survey, CheckOptions options, CancellationToken cancellation)
    {
        var looks = options.LooksElsewhere;
        return new ClaimVerdict(
            survey.Sentence,
            survey.Verdict,
            survey.Cases,
            survey.DistinctCases,
            survey.Failing,
            survey.Untested,
            survey.NotApplicable,
            survey.ByKey,
            Failures.Of(survey, options.MostFailures, cancellation),
            looks && survey.Verdict == Verdict.Fails ? Repairer.Of(survey, options, cancellation) : null,
            looks ? ElsewhereFinder.Of(survey, options, cancellation) : null
        );
    }
}
