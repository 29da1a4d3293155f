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
        ExerciseNote? last = null;
        foreach (var note in IndexFingers(exercise))
        {
            if (last is { } before && before.At < note.At)
            {
                var mm = Math.Abs(IndexMm(exercise.Instrument, note) - IndexMm(exercise.Instrument, before));
                var seconds = fastest.Seconds(note.At - before.At, exercise.Metre);
                if (mm > MostMmPerSecond * seconds)
                {
                    return new(
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"no hand gets from spot {before.Note.Spot} to {note.Note.Spot} in time: {mm:0} mm in {seconds:0.00} seconds; take a slower tempo, longer notes or spots that lie nearer"
                        ),
                        ShowPhrase.Subject,
                        PlayPhrase.Tempo
                    );
                }
            }

            last = note;
        }

        return null;
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
