using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>Whether a claim names the frets, and so the place on a real neck, that what it says depends on.</summary>
internal static class Windows
{
    /// <summary>The failure for a claim without a window, or without an instrument; null when both are known.</summary>
    /// <param name="scope">What the claim speaks of.</param>
    /// <param name="place">The word that needs them.</param>
    /// <param name="what">What it speaks of.</param>
    public static Failure? Needed(Scope scope, Token place, string what)
    {
        var begins = scope.ClaimBegins;
        return scope.Places is PlaceScope.Tunings
                ? Failure.At(place, $"{what} depends on the instrument, and a tuning has no length: name an instrument")
            : scope.Window is null
                ? Failure.At(
                    place,
                    $"{what} depends on where the shape lies: name the frets, such as 'on frets 0 to 12'",
                    Edit.Of(begins, $"on frets 0 to 12, {begins.Text}")
                )
            : null;
    }
}
