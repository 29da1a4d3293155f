namespace Fretloom.Lessons;

/// <summary>Says what somebody probably meant.</summary>
internal static class Suggestion
{
    /// <summary>The end of a sentence that offers the nearest of some words, or lists them when none is near.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="known">What could have been written, in small letters.</param>
    public static string For(string word, IEnumerable<string> known) =>
        Nearest(word, known) is { } nearest
            ? $"did you mean '{nearest}'?"
            : $"expected one of: {string.Join(", ", known)}.";

    /// <summary>The nearest of some words; null when none is near.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="known">What could have been written, in small letters.</param>
    public static string? Nearest(string word, IEnumerable<string> known)
    {
        var small = word.ToLowerInvariant();
        var tolerated = EditDistance.Tolerated(small.Length);
        return known
            .Where(candidate => Math.Abs(candidate.Length - small.Length) <= tolerated)
            .Select(candidate => (candidate, Distance: EditDistance.Between(small, candidate)))
            .Where(near => near.Distance <= tolerated)
            .OrderBy(near => near.Distance)
            .Select(near => near.candidate)
            .FirstOrDefault();
    }

    /// <summary>What was written, cut to a length that a message can hold.</summary>
    public static string Quoted(string word) => word.Length <= 40 ? $"'{word}'" : $"'{word[..40]}...'";
}
