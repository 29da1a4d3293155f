using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Exhibits;

/// <summary>What a sentence leaves unsaid: from the lesson's front matter, else the program's own defaults.</summary>
/// <param name="Instrument">The instrument.</param>
/// <param name="Key">The key; null when the lesson names none. Then a scale that is named brings its own key, else C major.</param>
/// <param name="Strings">The strings; null for all. Left out where the sentence names another instrument without them.</param>
/// <param name="Frets">The frets; null for 0-12, or as many as there are.</param>
/// <param name="Hand">The hand; null when the lesson names none. Then it is an adult's.</param>
/// <param name="IsLeftHanded">Whether pictures are mirrored.</param>
/// <param name="NoteNames">How notes and strings are named in pictures. Sentences, chord symbols and JSON stay English.</param>
/// <param name="IsTurnedOver">Whether the instrument is turned over; a sentence that names the player is not bound by it.</param>
/// <param name="UsesThumb">Whether the thumb may stop a string.</param>
public sealed record ShowDefaults(
    Instrument Instrument,
    Key? Key = null,
    StringSet? Strings = null,
    FretRange? Frets = null,
    HandSize? Hand = null,
    bool IsLeftHanded = false,
    NoteNaming NoteNames = NoteNaming.English,
    bool IsTurnedOver = false,
    bool UsesThumb = false
)
{
    /// <summary>Guitar in standard tuning, adult hand, nothing else said.</summary>
    public static ShowDefaults Standard { get; } = new(Catalogue.Default);
}
