using Fretloom.Exercises;

namespace Fretloom.Scores.Sound;

/// <summary>Renders an exercise as sound, string by string.</summary>
/// <remarks>
/// A string that is plucked again, or whose note ends, is damped. What would be louder than nine tenths of full scale is made
/// softer as a whole, so nothing clips. A4 is 440 Hz (ISO 16), twelve equal half-steps.
/// </remarks>
public static class SoundRenderer
{
    private const double Loudest = 0.9;
    private const double TailSeconds = 1.5;
    private const double DampedSeconds = 0.25;
    private const double Spread = 0.35;
    private const double AccentGain = 1.15;

    /// <summary>The sound, left and right in turn, from -1 to 1.</summary>
    /// <param name="exercise">What is played, count-in and all passes.</param>
    /// <param name="options">How.</param>
    /// <param name="progress">Told the share that is done, from 0 to 1, now and then.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static float[] Render(
        Exercise exercise,
        SoundOptions options,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(options);
        var performance = Performance.Of(exercise);
        var sound = new float[2 * (int)((performance.Seconds + TailSeconds) * options.Rate)];
        if (options.HasStrings)
        {
            Strings(performance, options, sound, progress, cancellation);
        }

        var peak = sound.Length == 0 ? 0 : sound.Max(Math.Abs);
        Clicks(performance, options, sound, peak > 0 ? Math.Min(peak, Loudest) : Loudest / 2);
        Soften(sound);
        progress?.Report(1);
        return sound;
    }

    /// <summary>The frequency of a MIDI note, in hertz.</summary>
    public static double Hz(int midi) => 440 * Math.Pow(2, (midi - 69) / 12.0);

    private static void Strings(
        Performance performance,
        SoundOptions options,
        float[] sound,
        IProgress<double>? progress,
        CancellationToken cancellation
    )
    {
        var exercise = performance.Exercise;
        var voice = StringVoice.For(exercise.Instrument.ScaleLengthMm);
        var strings = performance
            .Notes.Where(note => !options.Muted.Contains(note.Spot.String))
            .GroupBy(note => (note.Spot.String, IsPartner(exercise, note)));
        var dry = new float[sound.Length];
        var done = 0;
        foreach (var line in strings)
        {
            var (left, right) = Gains(exercise, options, line.Key.String);
            var notes = line.ToList();
            for (var at = 0; at < notes.Count; at++)
            {
                cancellation.ThrowIfCancellationRequested();
                var start = Frame(performance, notes[at].At, options.Rate);
                var end = Frame(performance, notes[at].At + notes[at].Length, options.Rate);
                var next = at + 1 < notes.Count ? Frame(performance, notes[at + 1].At, options.Rate) : int.MaxValue;
                var gain = notes[at].IsAccented ? AccentGain : 1;
                var plucked = new PluckedString(Hz(notes[at].Midi), options.Rate, voice, Seed(options, notes[at], at));
                Add(plucked, dry, (start, Math.Min(end, next)), options.Rate, (left * gain, right * gain));
                progress?.Report(0.9 * ++done / performance.Notes.Count);
            }
        }

        Body(voice, options.Rate, dry, sound);
    }

    private static bool IsPartner(Exercise exercise, SoundedNote note) =>
        note.Midi != exercise.Notes[note.Note].Note.Pitch.MidiNumber;

    private static ulong Seed(SoundOptions options, SoundedNote note, int at) =>
        (ulong)(options.Seed * 1_000_003L + note.Spot.String * 7919L + at * 104_729L + note.Midi);

    private static int Frame(Performance performance, double quarters, int rate) =>
        (int)Math.Round(performance.SecondsAt(quarters) * rate);

    private static void Add(
        PluckedString plucked,
        float[] sound,
        (int Start, int End) frames,
        int rate,
        (double Left, double Right) gain
    )
    {
        var last = Math.Min(frames.End + (int)(DampedSeconds * rate), sound.Length / 2);
        for (var frame = frames.Start; frame < last; frame++)
        {
            plucked.IsDamped = frame >= frames.End;
            var sample = plucked.Next();
            sound[2 * frame] += (float)(sample * gain.Left);
            sound[2 * frame + 1] += (float)(sample * gain.Right);
        }
    }

    // The body adds three resonances to what the strings give.
    private static void Body(StringVoice voice, int rate, float[] dry, float[] sound)
    {
        for (var side = 0; side < 2; side++)
        {
            var air = new Resonator(voice.BodyHz, 6, rate);
            var top = new Resonator(voice.BodyHz * 1.9, 8, rate);
            var back = new Resonator(voice.BodyHz * 3.8, 6, rate);
            for (var at = side; at < dry.Length; at += 2)
            {
                var sample = dry[at];
                sound[at] += (float)(
                    0.75 * sample + 0.6 * air.Next(sample) + 0.5 * top.Next(sample) + 0.3 * back.Next(sample)
                );
            }
        }
    }

    private static (double Left, double Right) Gains(Exercise exercise, SoundOptions options, int number)
    {
        var count = exercise.Instrument.Strings.Count;
        var pan =
            number <= options.Pan.Count ? options.Pan[number - 1]
            : count > 1 ? Spread * (1 - 2.0 * (number - 1) / (count - 1))
            : 0;
        var turn = (Math.Clamp(pan, -1, 1) + 1) * Math.PI / 4;
        return (Math.Cos(turn), Math.Sin(turn));
    }

    private static void Clicks(Performance performance, SoundOptions options, float[] sound, double loudness)
    {
        const double Seconds = 0.03;
        foreach (var click in performance.Clicks)
        {
            if (!options.HasClick && click.At >= performance.CountIn)
            {
                return;
            }

            var start = Frame(performance, click.At, options.Rate);
            var hz = click.IsFirst ? 1600 : 1100;
            var gain = loudness * (click.IsFirst ? 0.6 : 0.4);
            var frames = Math.Min((int)(Seconds * options.Rate), sound.Length / 2 - start);
            for (var frame = 0; frame < frames; frame++)
            {
                var fall = Math.Exp(-frame / (0.006 * options.Rate));
                var sample = (float)(gain * fall * Math.Sin(2 * Math.PI * hz * frame / options.Rate));
                sound[2 * (start + frame)] += sample;
                sound[2 * (start + frame) + 1] += sample;
            }
        }
    }

    private static void Soften(float[] sound)
    {
        var peak = sound.Length == 0 ? 0 : sound.Max(Math.Abs);
        if (peak <= Loudest)
        {
            return;
        }

        var gain = (float)(Loudest / peak);
        for (var at = 0; at < sound.Length; at++)
        {
            sound[at] *= gain;
        }
    }
}
