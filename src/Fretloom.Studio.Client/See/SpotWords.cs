using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Studio.Client.Words;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.See;

/// <summary>What is said of a spot that is pointed at.</summary>
/// <param name="Place">Where it lies, its note and its degree, and how far it lies from the spot chosen last.</param>
/// <param name="Chords">The chords of the key it belongs to: triads, then seventh chords.</param>
/// <param name="Rest">What is not known yet to somebody who has heard note and degree.</param>
public sealed record SpotWords(string Place, string Chords, string Rest)
{
    /// <summary>Nothing.</summary>
    public static SpotWords None { get; } = new("", "", "");

    /// <summary>The words for a spot.</summary>
    /// <param name="exhibit">What is seen.</param>
    /// <param name="spot">A spot of the instrument.</param>
    /// <param name="chosen">The spots chosen, the last one last.</param>
    /// <param name="labels">The words.</param>
    public static SpotWords Of(Exhibit exhibit, Spot spot, ValueList<Spot> chosen, Labels labels)
    {
        if (exhibit.Map.NoteAt(spot) is not { } note)
        {
            return None;
        }

        var isInKey = exhibit.Map.IsInKey(spot);
        var name = $"{exhibit.NameOf(note.Pitch.Name)} ({Accidentals.Pretty(note.Pitch.ToString())})";
        string[] place =
        [
            labels.Of("spot-place", spot.String, spot.Fret, name),
            isInKey ? labels.Of("spot-degree", Accidentals.Pretty(note.Degree.ToString())) : labels["spot-outside"],
        ];
        string[] distance =
            chosen is [.., var last] && last != spot
                ? [labels.Of("spot-distance", (int)Math.Round(exhibit.Map.Instrument.DistanceMm(last, spot)), last)]
                : [];
        string[] chords = isInKey ? [ChordsWith(note.Pitch.Name, exhibit.Map.Key, labels)] : [];
        return new(Joined([.. place, .. distance]), Joined(chords), Joined([.. distance, .. chords]));
    }

    private static string ChordsWith(NoteName note, Key key, Labels labels) =>
        labels.Of("spot-chords", Numerals(key.Triads(), note), Numerals(key.Sevenths(), note));

    private static string Numerals(IEnumerable<DiatonicChord> chords, NoteName note) =>
        string.Join(
            ", ",
            chords.Where(chord => chord.Chord.Notes.Contains(note)).Select(chord => chord.Numeral.ToPrinted())
        );

    private static string Joined(IEnumerable<string> parts) => string.Join(" · ", parts);
}
