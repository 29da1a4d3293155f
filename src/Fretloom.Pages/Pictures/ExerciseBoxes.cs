using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>Chord boxes of the chords that an exercise holds, each once, with the fingers of the exercise.</summary>
internal static class ExerciseBoxes
{
    // So many boxes stand in a row or two; of more the exercise is no longer found.
    private const int Most = 12;

    // Fewer notes than this at once are no chord that is held.
    private const int FewestNotes = 3;

    /// <summary>Draws them in rows.</summary>
    /// <param name="exercise">What is played.</param>
    /// <param name="width">Points there are.</param>
    /// <param name="explained">The signs that the page has explained; others are, and are added.</param>
    public static IEnumerable<Picture> Of(Exercise exercise, double width, ExplainedSigns explained)
    {
        var shapes = exercise
            .Chords.Select(chord => chord.Shape)
            .OfType<Shape>()
            .DistinctBy(shape => (shape.Source.Name, shape.Notes))
            .ToValueList();
        return
            shapes.Count is 0 or > Most
            || exercise.Notes.GroupBy(note => note.At).All(chord => chord.Count() < FewestNotes)
            ? []
            : ChordBoxRow.DrawAll(Exhibit(exercise, shapes), width, explained);
    }

    private static Exhibit Exhibit(Exercise exercise, ValueList<Shape> shapes) =>
        new()
        {
            Sentence = exercise.Sentence,
            Map = new NeckMap(
                exercise.Instrument,
                exercise.Key,
                exercise.Instrument.AllStrings,
                new FretRange(0, exercise.Instrument.LastFret)
            ),
            Labels = LabelStyle.Fingers,
            ShowsFingers = true,
            NoteNames = exercise.NoteNames,
            IsLeftHanded = exercise.IsLeftHanded,
            Player = exercise.Player,
            Shapes = shapes,
            InHand = shapes.Select(shape => Held(exercise, shape)).ToValueList(),
        };

    private static ShapeInHand Held(Exercise exercise, Shape shape)
    {
        var fingers = exercise.Notes.ToLookup(note => note.Note.Spot, note => note.Finger);
        var begin = exercise.Chords.First(chord => chord.Shape == shape).At;
        var end = exercise
            .Chords.Where(chord => chord.At > begin)
            .Select(chord => chord.At)
            .FirstOrDefault(exercise.Length);
        var notes = exercise.Notes.Where(note => note.At >= begin && note.At < end).ToList();
        var fingered = shape
            .Spots.Select(spot => new FingeredNote(
                spot,
                notes.Find(note => note.Note.Spot == spot) is { Length.Ticks: > 0 } played
                    ? played.Finger
                    : fingers[spot].FirstOrDefault()
            ))
            .ToValueList();
        return new ShapeInHand(shape, new Fingering(fingered, [], shape.StretchMm, null), null, []);
    }
}
