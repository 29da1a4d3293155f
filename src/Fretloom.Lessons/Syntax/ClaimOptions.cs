namespace Fretloom.Lessons.Syntax;

/// <summary>What the author says about a claim.</summary>
public sealed record ClaimOptions
{
    /// <summary>Nothing said.</summary>
    public static ClaimOptions None { get; } = new();

    /// <summary>The names of the options in a lesson file.</summary>
    internal static IReadOnlyList<string> Names { get; } = ["caption", "title", "expect"];

    /// <summary>Words above the claim.</summary>
    public string? Caption { get; init; }

    /// <summary>A short heading above it.</summary>
    public string? Title { get; init; }

    /// <summary>Whether the claim is to fail, to teach the exception.</summary>
    public bool ExpectsFailure { get; init; }

    /// <summary>Where in the file that is said, counted from 0; 0 when it is not.</summary>
    public int ExpectOffset { get; init; }
}
