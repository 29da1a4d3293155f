using System.Diagnostics.CodeAnalysis;
using Fretloom.Sentences;

namespace Fretloom.Exhibits;

/// <summary>An exhibit, or the reason why a sentence that reads well cannot be shown.</summary>
public sealed record Resolution
{
    private Resolution(Exhibit? exhibit, ResolutionError? error) => (Exhibit, Error) = (exhibit, error);

    /// <summary>What was asked for; null when there is an <see cref="Error"/>.</summary>
    public Exhibit? Exhibit { get; }

    /// <summary>What stands in the way; null when there is an <see cref="Exhibit"/>.</summary>
    public ResolutionError? Error { get; }

    /// <summary>Whether there is an exhibit.</summary>
    [MemberNotNullWhen(true, nameof(Exhibit))]
    [MemberNotNullWhen(false, nameof(Error))]
    public bool IsShown => Exhibit is not null;

    internal static Resolution Shown(Exhibit exhibit) => new(exhibit, null);

    internal static Resolution Refused(ShowPhrase phrase, string message) => new(null, new(phrase, message));
}

/// <summary>Why a sentence cannot be shown.</summary>
/// <param name="Phrase">The phrase to change.</param>
/// <param name="Message">What is wrong, and what would go.</param>
public sealed record ResolutionError(ShowPhrase Phrase, string Message);
