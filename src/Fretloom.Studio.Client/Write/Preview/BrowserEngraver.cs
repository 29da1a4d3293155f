using System.Runtime.CompilerServices;
using Fretloom.Exercises;
using Fretloom.Scores.Engraving;
using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.Write.Preview;

/// <summary>Engraves the exercises of the handout one after another while the page goes on. What was engraved is kept as long as its exercise.</summary>
/// <param name="engine">Sets the scores.</param>
/// <param name="errands">Does what nobody waits for.</param>
/// <param name="clock">Says when to begin.</param>
public sealed class BrowserEngraver(IEngravingEngine engine, Errands errands, TimeProvider clock) : IEngraver
{
    private readonly ScoreEngraver _scores = new(engine);
    private readonly ConditionalWeakTable<Exercise, Dictionary<double, EngravedExercise>> _engraved = [];
    private readonly Queue<(Exercise Exercise, double WidthMm)> _queue = [];
    private HashSet<Exercise> _wanted = new(ReferenceEqualityComparer.Instance);
    private bool _isAtWork;

    /// <summary>Raised when an exercise is engraved at every width that was asked for, or cannot be.</summary>
    public event Action? Engraved;

    /// <summary>What is engraved by now; tablature that is awaited while it is not.</summary>
    public EngravedExercise Engrave(Exercise exercise, double widthMm)
    {
        var widths = _engraved.GetOrCreateValue(exercise);
        if (!widths.TryGetValue(widthMm, out var engraved))
        {
            widths[widthMm] = engraved = EngravedExercise.Awaited(exercise);
            _wanted.Add(exercise);
            _queue.Enqueue((exercise, widthMm));
            if (!_isAtWork)
            {
                _isAtWork = true;
                errands.Run(WorkAsync);
            }
        }

        return engraved;
    }

    /// <summary>Names the exercises that are to be seen; what is asked for of others is not begun.</summary>
    public void Want(IReadOnlyCollection<Exercise> exercises) =>
        _wanted = new HashSet<Exercise>(exercises, ReferenceEqualityComparer.Instance);

    /// <summary>How many of them could not be engraved.</summary>
    public int Refused =>
        _wanted.Count(exercise =>
            _engraved.TryGetValue(exercise, out var widths)
            && widths.Values.Any(engraved => engraved.Warning is not null)
        );

    private async Task WorkAsync()
    {
        try
        {
            // Whoever asks is writing the page: that comes first.
            await Task.Delay(Pace.Rest, clock);
            while (_queue.TryDequeue(out var next))
            {
                await EngraveAsync(next.Exercise, next.WidthMm);
            }
        }
        finally
        {
            _isAtWork = false;
        }
    }

    private async Task EngraveAsync(Exercise exercise, double widthMm)
    {
        var widths = _engraved.GetOrCreateValue(exercise);
        if (widths.TryGetValue(widthMm, out var known) && !known.IsAwaited)
        {
            return;
        }

        if (!_wanted.Contains(exercise))
        {
            // It is asked for again when it comes back.
            widths.Remove(widthMm);
            return;
        }

        try
        {
            var engraved = await _scores.EngraveAsync(exercise, widthMm);
            // What cannot be engraved at one width is not tried at another.
            foreach (var width in engraved.Warning is null ? [widthMm] : widths.Keys.ToList())
            {
                widths[width] = engraved;
            }
        }
        catch (EngraverGoneException)
        {
            // It is asked for again with the next page.
            widths.Remove(widthMm);
            return;
        }

        if (widths.Values.All(engraved => !engraved.IsAwaited))
        {
            Engraved?.Invoke();
        }
    }
}
