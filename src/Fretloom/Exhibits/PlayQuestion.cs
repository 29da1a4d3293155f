using Fretloom.Exercises;
using Fretloom.Sentences;

namespace Fretloom.Exhibits;

/// <summary>A play sentence as text, read and worked out in one step.</summary>
public static class PlayQuestion
{
    /// <summary>Reads a sentence and works it out.</summary>
    /// <param name="text">The sentence; <c>play</c> and the full stop may be left out.</param>
    /// <param name="defaults">What to use where it says nothing.</param>
    /// <returns>The exercise, or the first error with its place; at column 1 when it is about something the sentence does not say.</returns>
    public static SentenceResult<Exercise> Answer(string text, ShowDefaults defaults)
    {
        ArgumentNullException.ThrowIfNull(defaults);
        return SentenceAnswer.Of(
            PlayParser.Parse(text, defaults.Instrument),
            sentence =>
            {
                var resolution = PlayResolver.Resolve(sentence, defaults);
                return (resolution.Exercise, resolution.Error?.Message, PlaceOf(text, resolution.Error));
            }
        );
    }

    private static (int Column, int Length)? PlaceOf(string text, PlayError? error) =>
        (error?.Played is { } played ? PlayParser.PlaceOf(text, played) : null)
        ?? (error?.Shown is { } shown ? PlayParser.PlaceOf(text, shown) : null);
}
