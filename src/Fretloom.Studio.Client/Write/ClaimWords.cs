namespace Fretloom.Studio.Client.Write;

/// <summary>Parts that claims are made of; each stands in a claim of the guide, and tests read it there.</summary>
internal static class ClaimWords
{
    /// <summary>The parts by what they say, those that begin a claim first, those that end it last.</summary>
    public static IReadOnlyList<WordGroup> Groups { get; } =
    [
        new("in which keys", ["In every major key,", "In every minor key,", "In every key,"]),
        new(
            "where",
            [
                "on strings 4-1,",
                "on guitar strings 4-1,",
                "on ukulele,",
                "on every 4 string tuning,",
                "on frets 0 to 12,",
            ]
        ),
        new(
            "what is claimed",
            [
                "there are exactly 3 full frets.",
                "there is exactly 1 empty fret.",
                "there is at least 1 full fret.",
                "the dominant seventh shape is the half-turn of the half-diminished seventh shape.",
                "every seventh shape spans at most 5 frets.",
                "every seventh shape can be played with one finger a note.",
            ]
        ),
    ];
}
