using System.Globalization;
using Fretloom.Exercises;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;

namespace Fretloom.Exhibits.Playing;

/// <summary>Whether the fretting hand is in time where it goes along the neck.</summary>
/// <remarks>
/// It has the time from the beginning of what it stopped last to the beginning of what it stops next, in the fastest pass, and
/// goes a metre in a second at most. That is our setting, without source.
/// </remarks>
internal static class Shifts
{
    private const double MostMmPerSecond = 1_000;

    /// <summary>The first shift that is too fast; null when there is none.</summary>
    public static PlayError? WhyNot(Exercise exercise)
    {
        var fastest = exercise.Passes.MaxBy(pass => pass.BeatsPerMinute);
        var secondsOfQuarter = 60 / fastest.QuartersPerMinute(exercise.Metre);
        var notes = IndexFingers(exercise).ToList();
        for (var at = 1; at < notes.Count; at++)
        {
            var quarters = exercise.SoundsAt(notes[at].At) - exercise.SoundsAt(notes[at - 1].At);
            if (WhyNot(exercise.Instrument, notes[at - 1], notes[at], quarters * secondsOfQuarter) is { } wrong)
            {
                return wrong;
            }
        }

        // Back to the beginning for the next pass.
        return exercise.Passes.Count == 1 || notes.Count == 0
            ? null
            : WhyNot(
                exercise.Instrument,
                notes[^1],
                notes[0],
                (exercise.Length.Quarters - exercise.SoundsAt(notes[^1].At) + exercise.SoundsAt(notes[0].At))
                    * secondsOfQuarter
            );
    }

    private static PlayError? WhyNot(Instrument instrument, ExerciseNote before, ExerciseNote note, double seconds)
    {
        var mm = Math.Abs(IndexMm(instrument, note) - IndexMm(instrument, before));
        return mm <= MostMmPerSecond * seconds
            ? null
            : new(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"no hand gets from spot {before.Note.Spot} to {note.Note.Spot} in time: {mm:0} mm in {seconds:0.00} seconds; take a slower tempo, longer notes or spots that lie nearer"
                ),
                ShowPhrase.Subject,
                PlayPhrase.Tempo
            );
    }

    // Of notes that are stopped together, the one that tells where the index finger lies.
    private static IEnumerable<ExerciseNote> IndexFingers(Exercise exercise) =>
        exercise
            .Notes.Where(note => note.Finger is >= Finger.Index and <= Finger.Little)
            .GroupBy(note => note.At)
            .Select(chord => chord.MinBy(IndexFret));

    private static int IndexFret(ExerciseNote note) => Math.Max(1, note.Note.Spot.Fret - (note.Finger - Finger.Index));

    private static double IndexMm(Instrument instrument, ExerciseNote note) =>
        NeckGeometry.FretMm(instrument.ScaleLengthMm, instrument.Capo + IndexFret(note));
}
