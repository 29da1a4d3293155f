using Fretloom.Exercises;

namespace Fretloom.Scores;

/// <summary>The tempo in words, over the staff and beside it, without the note that is counted.</summary>
public static class TempoWords
{
    /// <summary>Such as <c>= 72</c> or <c>= 60 to 96, in steps of 6, swing</c>.</summary>
    internal static string Of(Exercise exercise) => string.Join(", ", Words(exercise).Prepend($"= {Number(exercise)}"));

    /// <summary>One tempo in beats a minute, <c>72</c>, or the first and the last, <c>60 to 96</c>.</summary>
    public static string Number(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var (first, last) = (exercise.Passes[0], exercise.Passes[^1]);
        return first == last ? $"{first}" : $"{first} to {last}";
    }

    /// <summary>What else is to be known at the beginning: <c>in steps of 6</c>, <c>4 times</c>, <c>swing</c>, <c>let ring</c>; empty for nothing.</summary>
    public static IEnumerable<string> Words(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return All(exercise);
    }

    private static IEnumerable<string> All(Exercise exercise)
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
