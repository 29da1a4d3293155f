using Fretloom.Claims.Checking;

namespace Fretloom.Claims;

/// <summary>A check that is done piece by piece, for whoever has other things to do in between. It gives the same verdict as <see cref="ClaimChecker"/>.</summary>
/// <remarks>Not for several threads at once.</remarks>
public sealed class ClaimCheck
{
    private readonly CheckOptions _options;
    private readonly SurveyPlan _plan;
    private readonly Tally[] _tallies;
    private int _done;

    /// <summary>Begins a check.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="options">How; null for the default. It is done on one thread, whatever they say.</param>
    /// <exception cref="ClaimTooCostlyException">The cost is above the budget.</exception>
    public ClaimCheck(ClaimSentence sentence, CheckOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        _options = options ?? CheckOptions.Default;
        ClaimChecker.Within(sentence, _options);
        _plan = SurveyPlan.Of(sentence, _options);
        _tallies = Crew.NewTallies(_plan.Tried.Count);
    }

    /// <summary>Whether every case was gone through.</summary>
    public bool IsDone => _done >= _plan.Worker.Pieces;

    /// <summary>The share of the cases that were gone through, from 0 to 1.</summary>
    public double Share => IsDone ? 1 : _done / (double)_plan.Worker.Pieces;

    /// <summary>Does one piece more; nothing when it is done.</summary>
    public void GoOn()
    {
        if (!IsDone)
        {
            _plan.Worker.Do(_done++, _tallies, CancellationToken.None);
        }
    }

    /// <summary>The verdict, with what is told of failures, a repair and other places.</summary>
    /// <exception cref="InvalidOperationException">It is not done.</exception>
    public ClaimVerdict Verdict() =>
        IsDone
            ? ClaimChecker.VerdictOf(_plan.Done(_tallies), _options, CancellationToken.None)
            : throw new InvalidOperationException("The check is not done.");
}
