using System.Text.RegularExpressions;

namespace Fretloom.Lessons.Markdown;

/// <summary>Finds names of notes, chords, keys and frets in prose: they stay as they are when a lesson is made in other keys.</summary>
internal static partial class ProseCheck
{
    /// <summary>Warns of the first such name in a text.</summary>
    /// <param name="text">Prose as it was typed.</param>
    /// <param name="offset">Where it stands in the file.</param>
    /// <param name="bound">Takes what is wrong in other keys than the lesson's own.</param>
    public static void Check(string text, int offset, DiagnosticList bound)
    {
        if (Find(text) is var (at, name))
        {
            bound.Warning(
                offset + at,
                $"'{name}' stays as it is in every key; {{key}}, {{degree 5}} and {{chord V7}} follow the key."
            );
        }
    }

    /// <summary>The first such name in a text, or null.</summary>
    /// <param name="text">Prose as it was typed.</param>
    /// <returns>Where it begins, counted from 0, and the name.</returns>
    private static (int At, string Name)? Find(string text)
    {
        var match = Bound().Match(text);
        return match.Success ? (match.Index, match.Value) : null;
    }

    // A note with an accidental, a chord symbol, "in A" where a phrase ends, a note letter other than A and I-like words, a fret by number, frets in a row.
    [GeneratedRegex(
        @"(?<![\w/#{])(?:[A-G](?:[#♯♭]|b(?![a-z])|-flat|-sharp)(?:[mM]|maj|min|dim|aug|sus|add|[ø°△0-9])*"
            + @"|[A-G](?:maj|min|m|M|dim|aug|sus|add|[ø°△+])?[0-9ø°]+(?:[b#♭♯][0-9]+)*|[A-G]m(?!\w)"
            + @"|[B-G](?![\w'’-])|A (?:major|minor|harmonic|melodic|dorian|phrygian|lydian|mixolydian|locrian)"
            + @"|(?<=\b[Ii]n )A(?=\s*(?:[.,;:!?)]|$))"
            + @"|[Ff]rets? [0-9]+|[0-9]{1,2}(?:-[0-9]{1,2}){2,})",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Bound();
}
