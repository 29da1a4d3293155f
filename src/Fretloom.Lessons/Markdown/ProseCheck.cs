using System.Text.RegularExpressions;

namespace Fretloom.Lessons.Markdown;

/// <summary>Finds names of notes, chords, keys and frets in prose: they stay as they are when a lesson is made in other keys.</summary>
internal static partial class ProseCheck
{
    /// <summary>The first such name in a text, or null.</summary>
    /// <param name="text">Prose as it was typed.</param>
    /// <returns>Where it begins, counted from 0, and the name.</returns>
    public static (int At, string Name)? Find(string text)
    {
        var match = Bound().Match(text);
        return match.Success ? (match.Index, match.Value) : null;
    }

    /// <summary>The finding about such a name.</summary>
    public static string Message(string name) =>
        $"'{name}' stays as it is in every key; {{key}}, {{degree 5}} and {{chord V7}} follow the key.";

    // A note with an accidental, a chord symbol, a note letter other than A and I-like words, a fret by number, frets in a row.
    [GeneratedRegex(
        @"(?<![\w/#{])(?:[A-G](?:[#♯♭]|b(?![a-z])|-flat|-sharp)(?:[mM]|maj|min|dim|aug|sus|add|[ø°△0-9])*"
            + @"|[A-G](?:maj|min|m|M|dim|aug|sus|add|[ø°△+])?[0-9ø°]+(?:[b#♭♯][0-9]+)*|[A-G]m(?!\w)"
            + @"|[B-G](?![\w'’-])|A (?:major|minor|harmonic|melodic|dorian|phrygian|lydian|mixolydian|locrian)"
            + @"|[Ff]rets? [0-9]+|[0-9]{1,2}(?:-[0-9]{1,2}){2,})",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Bound();
}
