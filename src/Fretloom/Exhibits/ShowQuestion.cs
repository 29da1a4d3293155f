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
        var read = ShowParser.Parse(text, defaults.Instrument);
        if (!read.IsRead)
        {
            return SentenceResult<Exhibit>.Wrong(read.Errors[0]);
        }

        var resolution = ShowResolver.Resolve(read.Value, defaults);
        return resolution.IsShown
            ? SentenceResult<Exhibit>.Read(resolution.Exhibit)
            : SentenceResult<Exhibit>.Wrong(ErrorAt(text, resolution.Error));
    }

    private static SentenceError ErrorAt(string text, ResolutionError error)
    {
        var (column, length) = ShowParser.PlaceOf(text, error.Phrase) ?? (1, 0);
        return new SentenceError(column, length, error.Message);
    }
}
