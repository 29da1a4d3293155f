using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>Keys as they are written short, or in German: <c>Am</c>, <c>B flat min</c>, <c>Bbmaj</c>, <c>d-Moll</c>, <c>B-Dur</c>. Common practice, no source.</summary>
internal static class ShortKeys
{
    private static readonly (string Word, string Kind, bool IsGerman)[] Kinds =
    [
        ("moll", "minor", true),
        ("dur", "major", true),
        ("maj", "major", false),
        ("min", "minor", false),
        ("m", "minor", false),
    ];

    /// <summary>The key some tokens ahead in the words of a sentence, and how many tokens it takes; null and 0 when there is none.</summary>
    public static (string? Key, int Count) At(Cursor at, int ahead)
    {
        var token = at.Peek(ahead);
        foreach (var (word, kind, isGerman) in Kinds)
        {
            // Large M is the sign of a major seventh.
            var comparison = word.Length == 1 ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;
            if (token.Text.Length > word.Length && token.Text.EndsWith(word, comparison))
            {
                return Tonic(token.Text[..^word.Length].TrimEnd('-'), isGerman) is { } tonic
                    ? ($"{tonic} {kind}", 1)
                    : default;
            }

            if (at.Peek(ahead + 1).Text.Equals(word, comparison) && Tonic(token.Text, isGerman) is { } alone)
            {
                return ($"{alone} {kind}", 2);
            }

            // B flat min.
            if (at.Peek(ahead + 2).Text.Equals(word, comparison) && Notes.Read(at, ahead, out var name) == 2)
            {
                return ($"{name} {kind}", 3);
            }
        }

        return default;
    }

    private static NoteName? Tonic(string text, bool isGerman) =>
        Scale.TryParseTonic(isGerman || text is "H" or "h" ? FromGerman(text) : text, out var tonic) ? tonic : null;

    // Fis is F sharp, Es and As are E and A flat, B is B flat and H is B.
    private static string FromGerman(string text) =>
        text.ToLowerInvariant() switch
        {
            "h" => "B",
            "b" => "Bb",
            "es" or "as" => $"{text[0]}b",
            [_, 'i', 's'] => $"{text[0]}#",
            [_, 'e', 's'] => $"{text[0]}b",
            _ => text,
        };
}
