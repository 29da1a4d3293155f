using Fretloom.Exercises;

namespace Fretloom.Scores;

/// <summary>The tempo as it stands over the staff, without the note that is counted.</summary>
internal static class TempoWords
{
    /// <summary>Such as <c>= 72</c> or <c>= 60 to 96, in steps of 6, swing</c>.</summary>
    public static string Of(Exercise exercise) => string.Join(", ", Words(exercise).Prepend($"= {Number(exercise)}"));

    /// <summary>One tempo, or the first and the last.</summary>
    public static string Number(Exercise exercise)
    {
        var (first, last) = (exercise.Passes[0], exercise.Passes[^1]);
        return first == last ? $"{first}" : $"{first} to {last}";
    }

    /// <summary>What else is to be known at the beginning.</summary>
    public static IEnumerable<string> Words(Exercise exercise)
    {
        var rungs = exercise.Passes.Distinct().ToList();
        if (rungs.Count > 1)
        {
            yield return $"in steps of {rungs[1].BeatsPerMinute - rungs[0].BeatsPerMinute}";
        }

        var times = exercise.Passes.Count / rungs.Count;
        if (times > 1)
        {
            yield return rungs.Count > 1 ? $"each {times} times" : $"{times} times";
        }

        if (exercise.IsSwung)
        {
            yield return "swing";
        }

        if (exercise.Touch != Touching.Plain)
        {
            yield return exercise.Touch == Touching.Sustained ? "let ring" : "short";
        }
    }
}
