namespace Fretloom.Lessons.Syntax;

/// <summary>What the author says about an exercise.</summary>
public sealed record ExerciseOptions
{
    /// <summary>Nothing said.</summary>
    public static ExerciseOptions None { get; } = new();

    /// <summary>The names of the options in a lesson file.</summary>
    internal static IReadOnlyList<string> Names { get; } = ["caption", "title"];

    /// <summary>Words to the student, below the heading.</summary>
    public string? Caption { get; init; }

    /// <summary>The heading, instead of the exercise's own name.</summary>
    public string? Title { get; init; }
}
