using Fretloom.Hand;

namespace Fretloom.Exhibits.Playing;

/// <summary>Fingers of a scale of which a string has more notes than the hand can take in one place.</summary>
/// <remarks>
/// The index finger begins such a string and the little finger ends it. Of four notes one finger plays two with a shift between them:
/// the index finger the first two or the little finger the last two, whichever leaves the other three nearer together. With more
/// notes the model of lines finds where the hand shifts. Common practice, no source.
/// </remarks>
internal static class StringShifts
{
    // Under four fingers, one for each fret.
    private const int MostFretsApart = 3;

    /// <summary>The row with such fingers; as it was where no string has a shift, or no hand can take it so.</summary>
    public static PlayedGroup Fingered(PlayedGroup row, Player player)
    {
        var strings = row.Notes.Index().GroupBy(note => note.Item.Note.Spot.String).ToList();
        if (!strings.Exists(one => HasShift([.. one.Select(note => note.Item)])))
        {
            return row;
        }

        var rules = strings
            .Select(one => one.Where(note => note.Item.Finger != Finger.None).ToList())
            .Where(stopped => stopped.Count > 2 && Fret(stopped[^1]) - Fret(stopped[0]) > MostFretsApart)
            .SelectMany(Rules)
            .ToValueList();
        var line = row.Notes.Select(note => (LineNote)new LineNote.At(note.Note.Spot)).ToValueList();
        var answer = LineFingering.Find(player, line, rules);
        return answer.IsFound
            ? row with
            {
                Notes = row
                    .Notes.Index()
                    .Select(note => note.Item with { Finger = answer.Best.Notes[note.Index].Finger })
                    .ToValueList(),
                Widest = answer.Best.Widest,
            }
            : row;
    }

    private static IEnumerable<LineRule> Rules(List<(int Index, PlayedNote Item)> stopped) =>
        stopped.Count == 4
            ? stopped.Zip(
                OfFour([.. stopped.Select(Fret)]),
                (note, finger) => new LineRule.WithFinger(note.Index, finger)
            )
            :
            [
                new LineRule.WithFinger(stopped[0].Index, Finger.Index),
                new LineRule.WithFinger(stopped[^1].Index, Finger.Little),
            ];

    private static Finger[] OfFour(int[] frets) =>
        frets[3] - frets[1] <= frets[2] - frets[0]
            ? [Finger.Index, Finger.Index, Between(frets[1], frets[2], frets[3]), Finger.Little]
            : [Finger.Index, Between(frets[0], frets[1], frets[2]), Finger.Little, Finger.Little];

    // Of three notes from index to little finger: 1 2 4 on frets 3 4 6 and 3 5 7, 1 3 4 on frets 3 5 6.
    private static Finger Between(int first, int middle, int last) =>
        middle - first == 1 || (middle - first == 2 && last - first > MostFretsApart) ? Finger.Middle : Finger.Ring;

    private static int Fret((int Index, PlayedNote Item) note) => note.Item.Note.Spot.Fret;

    // The fret that the index finger lies at, told by each finger, moves by more than one.
    private static bool HasShift(List<PlayedNote> notes)
    {
        var index = notes
            .Where(note => note.Finger != Finger.None)
            .Select(note => note.Note.Spot.Fret - (note.Finger - Finger.Index))
            .ToList();
        return index.Zip(index.Skip(1)).Any(pair => Math.Abs(pair.Second - pair.First) > 1);
    }
}
