using Fretloom.Exhibits;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.Know;

/// <summary>What else might be looked at on the same strings and frets.</summary>
public static class RelatedSubjects
{
    /// <summary>Subjects of show sentences, at most six, none that is shown now.</summary>
    /// <param name="exhibit">What is seen now.</param>
    public static IEnumerable<string> Of(Exhibit exhibit)
    {
        var (strings, tonic) = (exhibit.Map.Strings.Count, exhibit.Map.Key.Tonic);
        string[] all =
        [
            "the notes of the key",
            .. strings >= 3 ? new[] { "the triads" } : [],
            .. strings >= 4 ? new[] { "the seventh chords" } : [],
            "the thirds",
            "the scale, 3 notes a string",
            IsMinor(exhibit.Map.Key) ? $"{tonic} minor pentatonic" : $"{tonic} major pentatonic",
            $"every {tonic}",
        ];
        return all.Where(subject => !exhibit.Sentence.StartsWith($"show {subject},", StringComparison.Ordinal)).Take(6);
    }

    private static bool IsMinor(Key key) => key.Tonic.IntervalTo(key.Notes[2]).ToDegreeText() == "b3";
}
