using System.Globalization;
using Fretloom.Exercises;

namespace Fretloom.Scores.Sound;

/// <summary>Renders an exercise as sound, string by string.</summary>
/// <remarks>
/// A string that is plucked again, or whose note ends, is damped. What would be louder than nine tenths of full scale is made
/// softer as a whole, so nothing clips. A4 is 440 Hz (ISO 16), twelve equal half-steps. The whole sound is held in memory, 8 bytes a frame.
/// </remarks>
public static class SoundRenderer
{
    /// <summary>The longest that an exercise may sound: its sound is held in memory, some 320 MB for a quarter of an hour. Ours, without source.</summary>
    public const int MostMinutes = 15;

    /// <summary>How far from the middle the outer strings stand, from 0 to 1 at a side. By ear, without source.</summary>
    internal const double Spread = 0.35;

    /// <summary>How much louder the first note of a bar is, as a factor: 1.2 decibels. By ear, without source.</summary>
    internal const double AccentGain = 1.15;

    // The peak of the whole sound, full scale being 1: a margin of 0.9 decibels for what a converter adds between samples. Ours, without source.
    private const double Loudest = 0.9;

    // What may still ring after the last note, and after a finger lies on a string. By ear, without source.
    private const double TailSeconds = 1;
    private const double DampedSeconds = 0.25;

    // Of the work, for the progress that is told.
    private const double StringsShare = 0.9;

    /// <summary>The sound, left and right in turn, from -1 to 1.</summary>
    /// <param name="exercise">What is played, count-in and all passes.</param>
    /// <param name="options">How.</param>
    /// <param name="progress">Told the share that is done, from 0 to 1, ascending, now and then.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ArgumentException">The exercise takes more than <see cref="MostMinutes"/>, as <see cref="WhyTooLong"/> says.</exception>
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
        if (WhyTooLong(exercise) is { } tooLong)
        {
            throw new ArgumentException(tooLong, nameof(exercise));
        }

        var performance = Performance.Of(exercise);
        var sound = new float[2 * (int)((performance.Seconds + TailSeconds) * options.Rate)];
        if (options.HasStrings)
        {
            var voice = StringVoice.For(exercise.Instrument);
            AddStrings(performance, options, voice, sound, progress, cancellation);
            AddBody(voice, options.Rate, sound, cancellation);
        }

        AddClicks(performance, options, sound);
        Soften(sound);
        progress?.Report(1);
        return sound;
    }

    /// <summary>Why an exercise is too long to be rendered, and what to do about it; null when it is not.</summary>
    public static string? WhyTooLong(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var minutes = exercise.Seconds / 60;
        return minutes <= MostMinutes
            ? null
            : string.Create(
                CultureInfo.InvariantCulture,
                $"This would sound for {Math.Ceiling(minutes):N0} minutes, and a sound file holds at most {MostMinutes}; play it fewer times, in fewer tempos or faster, or make a MIDI file of it."
            );
    }

    /// <summary>The frequency of a MIDI note, in hertz.</summary>
    public static double Hz(int midi) => 440 * Math.Pow(2, (midi - 69) / 12.0);

    private static void AddStrings(
        Performance performance,
        SoundOptions options,
        StringVoice voice,
        float[] sound,
        IProgress<double>? progress,
        CancellationToken cancellation
    )
    {
        var strings = performance
            .Notes.Where(note => !options.Muted.Contains(note.Spot.String))
            .GroupBy(note => (note.Spot.String, note.IsPartner));
        var done = 0;
        foreach (var line in strings)
        {
            var gains = Gains(performance.Exercise, options, line.Key.String);
            var notes = line.ToList();
            for (var at = 0; at < notes.Count; at++)
            {
                cancellation.ThrowIfCancellationRequested();
                var start = Frame(performance, notes[at].At, options.Rate);
                var end = Frame(performance, notes[at].At + notes[at].Length, options.Rate);
                var next = at + 1 < notes.Count ? Frame(performance, notes[at + 1].At, options.Rate) : int.MaxValue;
                var gain = notes[at].IsAccented ? AccentGain : 1;
                var plucked = new PluckedString(Hz(notes[at].Midi), options.Rate, voice, Seed(options, notes[at], at));
                Add(
                    plucked,
                    sound,
                    (start, Math.Min(end, next)),
                    options.Rate,
                    (gains.Left * gain, gains.Right * gain)
                );
                progress?.Report(StringsShare * ++done / performance.Notes.Count);
            }
        }
    }

    private static ulong Seed(SoundOptions options, SoundedNote note, int at) =>
        (ulong)(
            options.Seed * 1_000_003L + note.Spot.String * 7919L + at * 104_729L + (note.IsPartner ? 15_485_863L : 0)
        );

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

    private static void AddBody(StringVoice voice, int rate, float[] sound, CancellationToken cancellation)
    {
        var (left, right) = (new Body(voice, rate), new Body(voice, rate));
        for (var at = 0; at < sound.Length; at += 2)
        {
            if (at % (1 << 20) == 0)
            {
                cancellation.ThrowIfCancellationRequested();
            }

            sound[at] = (float)left.Next(sound[at]);
            sound[at + 1] = (float)right.Next(sound[at + 1]);
        }
    }

    // Equal power: the squares of both gains make 1 (common practice, no source).
    private static (double Left, double Right) Gains(Exercise exercise, SoundOptions options, int number)
    {
        var count = exercise.Instrument.Strings.Count;
        var said = options.Pan.Where(one => one.String == number).Select(one => (double?)one.Place).FirstOrDefault();
        var place = said ?? (count > 1 ? Spread * (1 - 2.0 * (number - 1) / (count - 1)) : 0);
        var turn = (place + 1) * Math.PI / 4;
        return (Math.Cos(turn), Math.Sin(turn));
    }

    private static void AddClicks(Performance performance, SoundOptions options, float[] sound)
    {
        var (first, other) = (ClickSound.Of(true, options.Rate), ClickSound.Of(false, options.Rate));
        var hasAll = options.HasClick || performance.Exercise.HasClick;
        foreach (var click in performance.Clicks.Where(click => hasAll || click.At < performance.CountIn))
        {
            var start = Frame(performance, click.At, options.Rate);
            var samples = click.IsFirst ? first : other;
            for (var frame = 0; frame < samples.Length; frame++)
            {
                sound[2 * (start + frame)] += samples[frame];
                sound[2 * (start + frame) + 1] += samples[frame];
            }
        }
    }

    private static void Soften(float[] sound)
    {
        var peak = 0f;
        foreach (var sample in sound)
        {
            peak = Math.Max(peak, Math.Abs(sample));
        }

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
