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
        var survey = Survey.Of(sentence, options, progress, cancellation);
        return new ClaimVerdict(
            sentence,
            survey.Verdict,
            survey.Cases,
            survey.DistinctCases,
            survey.Failing,
            survey.Untested,
            survey.NotApplicable,
            [],
            null,
            null
        );
    }
}
