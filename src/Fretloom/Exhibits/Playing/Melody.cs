using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;

namespace Fretloom.Exhibits.Playing;

/// <summary>Notes that are named, one after another.</summary>
/// <remarks>
/// Where no octave is named each note is the one nearest to the note before, upward where two are as near, and the first is the
/// lowest from which all the others lie on the neck. Where there is no such one, each is the nearest that does. Each is played where
/// it lies nearest to the nut. Ours, without source.
/// </remarks>
/// <param name="named">The notes.</param>
/// <param name="map">Where to play them.</param>
internal sealed class Melody(ValueList<GivenNote> named, NeckMap map)
{
    private readonly Dictionary<GivenNote, List<NeckNote>> _places = named
        .Distinct()
        .ToDictionary(note => note, note => ShowResolver.NotesOf(note, map).ToList());

    /// <summary>The row, or what stands in the way.</summary>
    public (PlayedGroup? Row, PlayError? Error) Played(Player player)
    {
        foreach (var (note, places) in _places)
        {
            if (places.Count == 0)
            {
                return (
                    null,
                    new($"{note} lies on none of these strings and frets; look at more of them", ShowPhrase.Frets)
                );
            }
        }

        var firsts = Sounds(named[0]).ToList();
        var notes = firsts.Select(first => From(first, isFree: false)).FirstOrDefault(row => row is not null);
        return Rows.LineOf((notes ?? From(firsts[0], isFree: true))!.ToValueList(), player);
    }

    /// <summary>The notes from a first one on; null when one lies on none of the strings and frets.</summary>
    /// <param name="first">What the first sounds.</param>
    /// <param name="isFree">Whether a note may lie farther from the one before than need be.</param>
    private List<NeckNote>? From(int first, bool isFree)
    {
        var (row, before) = (new List<NeckNote>(), first);
        foreach (var note in named)
        {
            var sound = Sounds(note).OrderBy(midi => Math.Abs(midi - before)).ThenByDescending(midi => midi).First();
            if (!isFree && note.Octave is null && !IsNearest(sound, before))
            {
                return null;
            }

            row.Add(NearestToTheNut.Of(_places[note].Where(place => place.Pitch.MidiNumber == sound), map.Instrument));
            before = sound;
        }

        return row;
    }

    // No octave of it lies nearer; of two that lie half an octave away the upper one.
    private static bool IsNearest(int sound, int before) => sound - before is > -6 and <= 6;

    private IEnumerable<int> Sounds(GivenNote note) =>
        _places[note].Select(place => place.Pitch.MidiNumber).Distinct().Order();
}
