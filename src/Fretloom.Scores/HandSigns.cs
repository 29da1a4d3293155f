using Fretloom.Exercises;

namespace Fretloom.Scores;

/// <summary>What is printed for the two hands at a note or chord.</summary>
internal static class HandSigns
{
    /// <summary>The picking hand: an arrow as the hand moves, toward the floor or away from it, or a letter for each finger; empty for nothing.</summary>
    public static string Picking(IReadOnlyList<ExerciseNote> together) =>
        together[0].Picked switch
        {
            Picked.Down => "↓",
            Picked.Up => "↑",
            > Picked.Up => string.Concat(together.Select(note => "pima"[note.Picked - Picked.Thumb])),
            _ => "",
        };

    /// <summary>Whether a chord is only struck again: strokes of one shape say their fingers once.</summary>
    public static bool IsStruckAgain(Exercise exercise, IReadOnlyList<ExerciseNote> together)
    {
        if (together.Count == 1 || exercise.Notes[0].At == together[0].At)
        {
            return false;
        }

        var earlier = exercise.Notes.Where(note => note.At < together[0].At).ToList();
        return earlier
            .TakeLast(together.Count)
            .Select(note => (note.Note.Spot, note.Finger))
            .SequenceEqual(together.Select(note => (note.Note.Spot, note.Finger)));
    }
}
