using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits.Playing;

/// <summary>Single notes in a row, fingered as a line.</summary>
internal static class Rows
{
    /// <summary>The row of a subject that is no chord and no third.</summary>
    public static (PlayedGroup? Row, PlayError? Error) Of(ShowSentence complete, NeckMap map, Player player) =>
        complete.Subjects[0] switch
        {
            Subject.ScaleShapes scale => Scale(scale, complete, map, player),
            Subject.NotesOfTheKey => InFirstPlace(map.Key.Scale, complete, map, player),
            Subject.NotesOfScale notes => InFirstPlace(notes.Scale, complete, map, player),
            Subject.GivenSpots given => Fingered(
                given.Spots.Select(map.NoteAt).OfType<NeckNote>().ToValueList(),
                player
            ),
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

    private static (PlayedGroup?, PlayError?) Scale(
        Subject.ScaleShapes subject,
        ShowSentence complete,
        NeckMap map,
        Player player
    )
    {
        var scale = subject.Scale ?? map.Key.Scale;
        var position = complete.Voicing.Position ?? 1;
        if (subject.NotesPerString is null && ScaleShapeFinder.WhyNot(map, position) is { } reason)
        {
            return (null, new(reason, ShowPhrase.Position));
        }

        if (subject.NotesPerString is { } count)
        {
            return Best(ScaleShapeFinder.NotesPerString(map, scale, count), scale, player);
        }

        var (row, error) = Best(ScaleShapeFinder.InPosition(map, scale, position), scale, player);
        return
            scale.Kind.IsSevenNote
            && row is not null
            && Octaves(row.Notes, note => note.Note, scale.Tonic) is { } octaves
            ? (row with { Notes = octaves }, null)
            : (row, error);
    }

    // A scale that is laid out in no way is played in the lowest position of the frets, and where that holds no octave, along the strings.
    private static (PlayedGroup?, PlayError?) InFirstPlace(
        Scale scale,
        ShowSentence complete,
        NeckMap map,
        Player player
    )
    {
        var position = Math.Max(1, complete.Frets!.Value.First);
        if (ScaleShapeFinder.WhyNot(map, position) is { } reason)
        {
            return (null, new(reason, ShowPhrase.Frets));
        }

        var (row, error) = Best(ScaleShapeFinder.InPosition(map, scale, position), scale, player);
        return row is null ? (row, error)
            : Octaves(row.Notes, note => note.Note, scale.Tonic) is { } octaves ? (row with { Notes = octaves }, null)
            : Along(map, scale, player);
    }

    // Each note where it lies nearest to the nut.
    private static (PlayedGroup?, PlayError?) Along(NeckMap map, Scale scale, Player player)
    {
        var notes = map.NotesNamed(scale.Notes)
            .GroupBy(note => note.Pitch.MidiNumber)
            .OrderBy(same => same.Key)
            .Select(same => same.MinBy(note => note.Spot.Fret))
            .ToValueList();
        return Fingered(Octaves(notes, note => note, scale.Tonic) ?? notes, player);
    }

    /// <summary>From the lowest tonic to the highest; null when there are not two.</summary>
    private static ValueList<T>? Octaves<T>(ValueList<T> row, Func<T, NeckNote> note, NoteName tonic)
    {
        var tonics = Enumerable
            .Range(0, row.Count)
            .Where(at => note(row[at]).Pitch.PitchClass == tonic.PitchClass)
            .ToList();
        return tonics.Count < 2 ? null : row.Take(tonics[^1] + 1).Skip(tonics[0]).ToValueList();
    }

    // The shape in reach that begins on the tonic, else the first in reach.
    private static (PlayedGroup?, PlayError?) Best(ValueList<Shape> shapes, Scale scale, Player player)
    {
        var inHand = ShapeFingering
            .Sorted(shapes.Select(shape => ShapeFingering.Of(player, shape, isOneNotePerString: false)))
            .ToList();
        var best =
            inHand.Find(shape => shape.WhyNot is null && BeginsOn(scale.Tonic, shape))
            ?? inHand.Find(shape => shape.WhyNot is null);
        return best is not null ? (PlayedGroup.Of(best), null)
            : inHand.Count > 0 ? (null, new(inHand[0].WhyNot!, ShowPhrase.Subject))
            : (
                null,
                new(
                    $"the {scale} scale does not fit these strings and frets; look at more frets, or on other strings",
                    ShowPhrase.Frets
                )
            );
    }

    private static bool BeginsOn(NoteName tonic, ShapeInHand shape) =>
        shape.Shape.Notes.MinBy(note => note.Pitch.MidiNumber).Pitch.PitchClass == tonic.PitchClass;

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
            var (row, error) = Fingered(notes, player);
            return (row is null ? null : row with { Widest = null }, error);
        }

        return (null, new("none of these notes lies on these strings and frets", ShowPhrase.Frets));
    }

    private static (PlayedGroup?, PlayError?) Fingered(ValueList<NeckNote> notes, Player player)
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
