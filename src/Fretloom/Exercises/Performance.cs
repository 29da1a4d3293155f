using Fretloom.Neck;

namespace Fretloom.Exercises;

/// <summary>An exercise as it sounds: the count-in, then every pass.</summary>
/// <remarks>
/// Times are in quarter notes from the very beginning. Swing is played out; the strings of a stroke follow each other by a
/// hundredth of a second; notes that are sustained ring until their string is needed again, the chord changes or the pass ends; short ones stop
/// halfway. Of a pair of strings both sound. The hundredth is ours, without source.
/// </remarks>
public sealed record Performance
{
    private const double StrokeSeconds = 0.01;

    private Performance(Exercise exercise) => Exercise = exercise;

    /// <summary>What is played.</summary>
    public Exercise Exercise { get; }

    /// <summary>Every note by time.</summary>
    public ValueList<SoundedNote> Notes { get; private init; }

    /// <summary>A click for every beat, those of the count-in first.</summary>
    public ValueList<Click> Clicks { get; private init; }

    /// <summary>Where each tempo begins: at 0 that of the first pass, then each pass.</summary>
    public ValueList<TempoChange> Tempi { get; private init; }

    /// <summary>Where the first pass begins.</summary>
    public double CountIn { get; private init; }

    /// <summary>The end of the last pass.</summary>
    public double Quarters { get; private init; }

    /// <summary>How long all of it takes, in seconds, without the ringing at the end.</summary>
    public double Seconds => SecondsAt(Quarters);

    /// <summary>Plays an exercise.</summary>
    public static Performance Of(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var countIn = (exercise.Metre.Bar * exercise.CountInBars).Quarters;
        var pass = exercise.Length.Quarters;
        var passes = exercise.Passes;
        var ends = Ends(exercise);
        return new Performance(exercise)
        {
            CountIn = countIn,
            Quarters = countIn + passes.Count * pass,
            Tempi = passes
                .Select((tempo, at) => new TempoChange(at == 0 ? 0 : countIn + at * pass, tempo))
                .ToValueList(),
            Notes = passes
                .SelectMany((tempo, at) => NotesOf(exercise, ends, countIn + at * pass, tempo))
                .OrderBy(note => note.At)
                .ThenByDescending(note => note.Spot.String)
                .ToValueList(),
            Clicks = ClicksUntil(exercise, countIn + passes.Count * pass).ToValueList(),
        };
    }

    /// <summary>When a place comes, in seconds from the beginning.</summary>
    /// <param name="quarters">0 or more.</param>
    public double SecondsAt(double quarters)
    {
        var seconds = 0.0;
        for (var at = 0; at < Tempi.Count && Tempi[at].At < quarters; at++)
        {
            var end = at + 1 < Tempi.Count ? Math.Min(quarters, Tempi[at + 1].At) : quarters;
            seconds += (end - Tempi[at].At) * 60 / Tempi[at].Tempo.QuartersPerMinute(Exercise.Metre);
        }

        return seconds;
    }

    private static IEnumerable<Click> ClicksUntil(Exercise exercise, double end)
    {
        var beat = exercise.Metre.Beat.Quarters;
        for (var at = 0; at * beat < end; at++)
        {
            yield return new(at * beat, at % exercise.Metre.BeatsPerBar == 0);
        }
    }

    private static IEnumerable<SoundedNote> NotesOf(Exercise exercise, double[] ends, double begin, Tempo tempo)
    {
        var stroke = StrokeSeconds * tempo.QuartersPerMinute(exercise.Metre) / 60;
        for (var at = 0; at < exercise.Notes.Count; at++)
        {
            var note = exercise.Notes[at];
            var late = stroke * PlaceInStroke(exercise.Notes, at);
            var start = exercise.SoundsAt(note.At) + late;
            var length = Math.Max(stroke, ends[at] - start);
            var spot = note.Note.Spot;
            var midi = note.Note.Pitch.MidiNumber;
            var isAccented = note.At % exercise.Metre.Bar == default;
            yield return new(begin + start, length, spot, midi, isAccented, false, at);
            var course = exercise.Instrument.String(spot.String);
            if (course.Partner is { } partner)
            {
                var partnerMidi = midi + partner.MidiNumber - course.Open.MidiNumber;
                yield return new(begin + start, length, spot, partnerMidi, isAccented, true, at);
            }
        }
    }

    // How many strings of the same stroke sound before this one.
    private static int PlaceInStroke(ValueList<ExerciseNote> notes, int at)
    {
        if (notes[at].Picked is not (Picked.Down or Picked.Up))
        {
            return 0;
        }

        var (first, last) = (at, at);
        while (first > 0 && notes[first - 1].At == notes[at].At)
        {
            first--;
        }

        while (last + 1 < notes.Count && notes[last + 1].At == notes[at].At)
        {
            last++;
        }

        return notes[at].Picked == Picked.Down ? at - first : last - at;
    }

    /// <summary>When each note of a pass stops sounding, in quarter notes from its beginning.</summary>
    private static double[] Ends(Exercise exercise)
    {
        var notes = exercise.Notes;
        var ends = new double[notes.Count];
        var needed = new Dictionary<int, double>();
        var chords = exercise.Chords.Select(chord => exercise.SoundsAt(chord.At)).ToList();
        for (var at = notes.Count - 1; at >= 0; at--)
        {
            var (start, end) = (exercise.SoundsAt(notes[at].At), exercise.SoundsAt(notes[at].End));
            var number = notes[at].Note.Spot.String;
            ends[at] = exercise.Touch switch
            {
                Touching.Short => start + (end - start) / 2,
                Touching.Sustained => Math.Min(
                    needed.GetValueOrDefault(number, exercise.Length.Quarters),
                    chords.Find(chord => chord > start) is > 0 and var next ? next : exercise.Length.Quarters
                ),
                _ => end,
            };
            needed[number] = start;
        }

        return ends;
    }
}
