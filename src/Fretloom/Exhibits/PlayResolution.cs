using System.Diagnostics.CodeAnalysis;
using Fretloom.Exercises;
using Fretloom.Sentences;

namespace Fretloom.Exhibits;

/// <summary>An exercise, or the reason why a play sentence that reads well cannot be played.</summary>
public sealed record PlayResolution
{
    private PlayResolution(Exercise? exercise, PlayError? error) => (Exercise, Error) = (exercise, error);

    /// <summary>What was asked for; null when there is an <see cref="Error"/>.</summary>
    public Exercise? Exercise { get; }

    /// <summary>What stands in the way; null when there is an <see cref="Exercise"/>.</summary>
    public PlayError? Error { get; }

    /// <summary>Whether there is an exercise.</summary>
    [MemberNotNullWhen(true, nameof(Exercise))]
    [MemberNotNullWhen(false, nameof(Error))]
    public bool IsPlayed => Exercise is not null;

    internal static PlayResolution Played(Exercise exercise) => new(exercise, null);

    internal static PlayResolution Refused(PlayError error) => new(null, error);
}

/// <summary>Why a sentence cannot be played.</summary>
/// <param name="Message">What is wrong, and what would go.</param>
/// <param name="Shown">The phrase to change, when it is one that show sentences have too.</param>
/// <param name="Played">The phrase to change, when it is one of play sentences only.</param>
public sealed record PlayError(string Message, ShowPhrase? Shown = null, PlayPhrase? Played = null);
