using System.Globalization;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Sentences.Play;
using Fretloom.Sentences.Reading;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits.Playing;

/// <summary>A scale in a row from low to high.</summary>
/// <param name="scale">The scale.</param>
/// <param name="map">Where to play it.</param>
/// <param name="player">The hand and the instrument.</param>
internal sealed class ScaleRows(Scale scale, NeckMap map, Player player)
{
    /// <summary>The row, or what stands in the way.</summary>
    /// <param name="subject">The scale as it was asked for.</param>
    /// <param name="position">The position that was named, or null.</param>
    /// <param name="octaves">The octaves that were asked for, or null.</param>
    public (PlayedGroup? Row, PlayError? Error) Of(Subject subject, int? position, int? octaves) =>
        octaves is { } asked ? InOctaves(subject, position, asked)
        : subject.NotesAString is { } count
            ? Shifted(Best(ScaleShapeFinder.NotesPerString(map, scale, count), count), subject)
        : subject.IsLaidOut ? InPosition(position ?? 1)
        : InFirstPlace();

    private (PlayedGroup?, PlayError?) InPosition(int position)
    {
        if (ScaleShapeFinder.WhyNot(map, position) is { } reason)
        {
            return (null, new(reason, ShowPhrase.Position));
        }

        var (row, error) = Best(ScaleShapeFinder.InPosition(map, scale, position));
        return scale.Kind.IsSevenNote && row is not null && FromTonicToTonic(row) is { } octaves
            ? (octaves, null)
            : (row, error);
    }

    // A scale that is laid out in no way is played in the lowest position of the frets, and where that holds no octave, along the strings.
    private (PlayedGroup?, PlayError?) InFirstPlace()
    {
        var position = Math.Max(1, map.Frets.First);
        if (ScaleShapeFinder.WhyNot(map, position) is { } reason)
        {
            return (null, new(reason, ShowPhrase.Frets));
        }

        var (row, error) = Best(ScaleShapeFinder.InPosition(map, scale, position));
        return row is null ? (row, error)
            : FromTonicToTonic(row) is { } octaves ? (octaves, null)
            : Along();
    }

    /// <summary>The row that costs the hand least of those that hold so many octaves: in one position or as many notes a string as asked; else along the strings.</summary>
    private (PlayedGroup?, PlayError?) InOctaves(Subject subject, int? position, int octaves)
    {
        var best = Layouts(subject, position)
            .Select(shape => Cut(shape.Notes.OrderBy(note => note.Pitch.MidiNumber).Select(NoteOf), octaves))
            .OfType<ValueList<NeckNote>>()
            .Select(notes => (Notes: notes, Fingers: LineFingering.FindBothWays(player, SpotsOf(notes))))
            .Where(row => row.Fingers.IsFound)
            .OrderBy(row => row.Fingers.Best!.Cost)
            .Select(row => row.Notes)
            .FirstOrDefault();
        return best.Count > 0 ? Shifted(Rows.LineOf(best, player), subject)
            : !subject.IsLaidOut && Cut(EveryNote(), octaves) is { } along ? Rows.LineOf(along, player)
            : (null, new(TooFew(subject, position, octaves), Played: PlayPhrase.Octaves));
    }

    private IEnumerable<Shape> Layouts(Subject subject, int? position)
    {
        if (subject.NotesAString is { } count)
        {
            // So many notes on every string, the one that it begins on too.
            return ScaleShapeFinder
                .NotesPerString(map, scale, count)
                .Where(shape => LowestOf(shape).PitchClass == scale.Tonic.PitchClass);
        }

        IEnumerable<int> positions = subject.IsLaidOut ? [position ?? 1] : map.Frets.Frets.Where(fret => fret > 0);
        return positions
            .Where(one => ScaleShapeFinder.WhyNot(map, one) is null)
            .SelectMany(one => ScaleShapeFinder.InPosition(map, scale, one));
    }

    private string TooFew(Subject subject, int? position, int octaves)
    {
        if (subject.IsLaidOut)
        {
            var layout = subject.NotesAString is { } count
                ? string.Create(CultureInfo.InvariantCulture, $"with {count} notes a string")
                : $"in {Numbers.OrdinalWord(position ?? 1)} position";
            return $"the {scale} scale {layout} does not go over {OctavesPhrase.WordsOf(octaves)} on these strings and frets; ask for fewer octaves, or leave the layout to Fretloom";
        }

        var most = Tonics(EveryNote()).Count - 1;
        return $"the {scale} scale has {(most < 1 ? "no whole octave" : OctavesPhrase.WordsOf(most))} on these strings and frets; look at more of them, or ask for fewer octaves";
    }

    private (PlayedGroup?, PlayError?) Along()
    {
        var notes = EveryNote();
        return Rows.LineOf(FromTonicToTonic(notes, note => note) ?? notes, player);
    }

    private ValueList<NeckNote> EveryNote() =>
        map.NotesNamed(scale.Notes)
            .GroupBy(note => note.Pitch.MidiNumber)
            .OrderBy(same => same.Key)
            .Select(same => NearestToTheNut.Of(same, map.Instrument))
            .ToValueList();

    private PlayedGroup? FromTonicToTonic(PlayedGroup row) =>
        FromTonicToTonic(row.Notes, note => note.Note) is { } notes ? row with { Notes = notes } : null;

    /// <summary>From the lowest tonic to the highest; null when there are not two.</summary>
    private ValueList<T>? FromTonicToTonic<T>(ValueList<T> row, Func<T, NeckNote> note)
    {
        var tonics = Tonics(row.Select(note));
        return tonics.Count < 2 ? null : row.Take(tonics[^1] + 1).Skip(tonics[0]).ToValueList();
    }

    // So many octaves from the lowest tonic; null when the row does not hold them without a gap.
    private ValueList<NeckNote>? Cut(IEnumerable<NeckNote> row, int octaves)
    {
        var notes = row.ToValueList();
        var tonics = Tonics(notes);
        var count = octaves * scale.Notes.Count + 1;
        return tonics.Count > octaves && tonics[octaves] - tonics[0] + 1 == count
            ? notes.Skip(tonics[0]).Take(count).ToValueList()
            : null;
    }

    private List<int> Tonics(IEnumerable<NeckNote> row) =>
        [.. row.Index().Where(one => one.Item.Pitch.PitchClass == scale.Tonic.PitchClass).Select(one => one.Index)];

    // The shape in reach that begins on the tonic, else the first in reach.
    private (PlayedGroup?, PlayError?) Best(ValueList<Shape> shapes, int? count = null)
    {
        var inHand = ShapeFingering
            .Sorted(shapes.Select(shape => ShapeFingering.Of(player, shape, isOneNotePerString: false)))
            .ToList();
        var best =
            inHand.Find(shape => shape.WhyNot is null && BeginsOnTonic(shape))
            ?? inHand.Find(shape => shape.WhyNot is null);
        return best is not null ? (PlayedGroup.Of(best), null)
            : inHand.Count > 0 ? (null, new(inHand[0].WhyNot!, ShowPhrase.Subject))
            : (
                null,
                new(
                    count is null
                        ? $"the {scale} scale does not fit these strings and frets; look at more frets, or on other strings"
                        : string.Create(
                            CultureInfo.InvariantCulture,
                            $"the {scale} scale does not fit these strings and frets with {count} notes on each string; ask for fewer, or on fewer strings"
                        ),
                    ShowPhrase.Frets
                )
            );
    }

    private bool BeginsOnTonic(ShapeInHand shape) => LowestOf(shape.Shape).PitchClass == scale.Tonic.PitchClass;

    private static Pitch LowestOf(Shape shape) => shape.Notes.MinBy(note => note.Pitch.MidiNumber).Pitch;

    private (PlayedGroup?, PlayError?) Shifted((PlayedGroup? Row, PlayError? Error) answer, Subject subject) =>
        subject.NotesAString is not null && answer.Row is { } row ? (StringShifts.Fingered(row, player), null) : answer;

    private static NeckNote NoteOf(ShapeNote note) => new(note.Spot, note.Pitch, note.Degree);

    private static ValueList<Spot> SpotsOf(ValueList<NeckNote> notes) => notes.Select(note => note.Spot).ToValueList();
}
