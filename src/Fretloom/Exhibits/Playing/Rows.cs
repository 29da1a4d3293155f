using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;

namespace Fretloom.Exhibits.Playing;

/// <summary>Notes in a row, and thirds.</summary>
internal static class Rows
{
    /// <summary>The row of a subject that is no scale, no chord and no third.</summary>
    public static (PlayedGroup? Row, PlayError? Error) Of(ShowSentence complete, NeckMap map, Player player) =>
        complete.Subjects[0] switch
        {
            Subject.GivenSpots given => LineOf(given.Spots.Select(map.NoteAt).OfType<NeckNote>().ToValueList(), player),
            Subject.GivenNotes given => new Melody(given.Notes, map).Played(player),
            Subject.TheOpenStrings => Open(map),
            _ => Single(complete, map, player),
        };

    /// <summary>Thirds, from the nut on; each is a group of two notes held together.</summary>
    public static (ValueList<PlayedGroup> Groups, PlayError? Error) Thirds(NeckMap map, Player player)
    {
        if (map.Strings.Count != 2)
        {
            return (
                [],
                new("thirds are played on two strings; name them, such as 'on strings 3-2'", ShowPhrase.Strings)
            );
        }

        var groups = new List<PlayedGroup>();
        foreach (var third in Landmarks.ThirdsOf(map))
        {
            var answer = ChordFingering.Find(player, [third.Lower.Spot, third.Upper.Spot]);
            if (!answer.IsFound)
            {
                return ([], new(answer.Refusal.Message, ShowPhrase.Frets));
            }

            groups.Add(new(Notes([third.Lower, third.Upper], answer.Best), answer.Best.Widest));
        }

        return groups.Count > 0
            ? (groups.ToValueList(), null)
            : ([], new("no third of the key lies on these strings and frets", ShowPhrase.Strings));
    }

    private static (PlayedGroup?, PlayError?) Open(NeckMap map)
    {
        var notes = ShowResolver.OpenStrings(map).Select(note => new PlayedNote(note, Finger.None)).ToValueList();
        return notes.Count > 0
            ? (new(notes, null), null)
            : (null, new("no open string lies on these frets", ShowPhrase.Frets));
    }

    private static (PlayedGroup?, PlayError?) Single(ShowSentence complete, NeckMap map, Player player)
    {
        var notes = ShowResolver
            .NotesOf(complete, map)!
            .Value.OrderBy(note => note.Pitch.MidiNumber)
            .ThenByDescending(note => note.Spot.String)
            .ToValueList();
        if (notes.Count > 0)
        {
            // They lie far apart, and no two are held at one time.
            var (row, error) = LineOf(notes, player);
            return (row is null ? null : row with { Widest = null }, error);
        }

        return (null, new("none of these notes lies on these strings and frets", ShowPhrase.Frets));
    }

    /// <summary>Notes in this order, with the fingers of a line; the same both ways where no spot comes again.</summary>
    public static (PlayedGroup? Row, PlayError? Error) LineOf(ValueList<NeckNote> notes, Player player)
    {
        var spots = notes.Select(note => note.Spot).ToValueList();
        var answer =
            spots.Distinct().Count() == spots.Count
                ? LineFingering.FindBothWays(player, spots)
                : LineFingering.Find(player, spots.Select(spot => (LineNote)new LineNote.At(spot)).ToValueList(), []);
        return answer.IsFound
            ? (
                new(
                    notes.Select((note, at) => new PlayedNote(note, answer.Best.Notes[at].Finger)).ToValueList(),
                    answer.Best.Widest
                ),
                null
            )
            : (null, new(answer.Refusal.Message, ShowPhrase.Subject));
    }

    private static ValueList<PlayedNote> Notes(ValueList<NeckNote> notes, Fingering fingering) =>
        notes.Select(note => new PlayedNote(note, fingering.FingerAt(note.Spot) ?? Finger.None)).ToValueList();
}
