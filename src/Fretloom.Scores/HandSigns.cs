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
        var first = exercise.NotesBefore(together[0].At);
        return together.Count > 1
            && first >= together.Count
            && Enumerable
                .Range(0, together.Count)
                .All(at =>
                    exercise.Notes[first - together.Count + at].Note.Spot == together[at].Note.Spot
                    && exercise.Notes[first - together.Count + at].Finger == together[at].Finger
                );
    }
}
