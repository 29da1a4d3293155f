using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Studio.Client.Words;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.See;

/// <summary>What is said of a spot that is pointed at.</summary>
public static class SpotWords
{
    /// <summary>Its note, degree, the chords of the key it belongs to, and how far it lies from the spot chosen last.</summary>
    /// <param name="exhibit">What is seen.</param>
    /// <param name="spot">A spot of the instrument.</param>
    /// <param name="chosen">The spots chosen, the last one last.</param>
    /// <param name="labels">The words.</param>
    public static string Of(Exhibit exhibit, Spot spot, ValueList<Spot> chosen, Labels labels)
    {
        if (exhibit.Map.NoteAt(spot) is not { } note)
        {
            return "";
        }

        var key = exhibit.Map.Key;
        var name = $"{exhibit.NameOf(note.Pitch.Name)} ({Accidentals.Pretty(note.Pitch.ToString())})";
        var parts = new List<string> { labels.Of("spot-place", spot.String, spot.Fret, name) };
        if (exhibit.Map.IsInKey(spot))
        {
            parts.Add(labels.Of("spot-degree", Accidentals.Pretty(note.Degree.ToString())));
            var chords = key.Triads().Where(chord => chord.Chord.Notes.Contains(note.Pitch.Name));
            parts.Add(labels.Of("spot-chords", string.Join(", ", chords.Select(chord => chord.Numeral.ToPrinted()))));
        }
        else
        {
            parts.Add(labels["spot-outside"]);
        }

        if (chosen is [.., var last] && last != spot)
        {
            var distance = exhibit.Map.Instrument.DistanceMm(last, spot);
            parts.Add(labels.Of("spot-distance", (int)Math.Round(distance), last));
        }

        return string.Join(" · ", parts);
    }
}
