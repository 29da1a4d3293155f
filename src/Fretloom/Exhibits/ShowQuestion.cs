using Fretloom.Sentences;

namespace Fretloom.Exhibits;

/// <summary>A show sentence as text, read and worked out in one step.</summary>
public static class ShowQuestion
{
    /// <summary>Reads a sentence and works it out.</summary>
    /// <param name="text">The sentence; <c>show</c> and the full stop may be left out.</param>
    /// <param name="defaults">What to use where it says nothing.</param>
    /// <returns>The exhibit, or the first error with its place; at column 1 when it is about something the sentence does not say.</returns>
    public static SentenceResult<Exhibit> Answer(string text, ShowDefaults defaults)
    {
        ArgumentNullException.ThrowIfNull(defaults);
        return SentenceAnswer.Of(
            ShowParser.Parse(text, defaults.Instrument),
            sentence =>
            {
                var resolution = ShowResolver.Resolve(sentence, defaults);
                return (resolution.Exhibit, resolution.Error?.Message, PlaceOf(text, resolution.Error));
            }
        );
    }

    private static (int Column, int Length)? PlaceOf(string text, ResolutionError? error) =>
        error is null ? null : ShowParser.PlaceOf(text, error.Phrase);
}
