using System.Globalization;
using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Scores.Midi;
using Fretloom.Scores.Sound;

namespace Fretloom.Bench;

/// <summary>What sound and MIDI files take of one core: processor time, the median of some rounds.</summary>
internal static class SoundTimes
{
    private const int Rounds = 7;

    private static readonly string[] Sentences =
    [
        "the seventh chords from I to IV, up and down, in eighths, at 72",
        "the scale, 3 notes a string, in G major, in sixteenths, at 60",
        "the seventh chords, up and down, in eighths, at 72, sustained",
        "C, F, G7 and C, strummed, in first position, at 90, 4 times, down down-up up-down-up",
    ];

    public static void Print()
    {
        Console.WriteLine("seconds of sound; processor ms; times real time; ms for the MIDI file");
        foreach (var sentence in Sentences)
        {
            var answer = PlayQuestion.Answer(sentence, ShowDefaults.Standard);
            if (!answer.IsRead)
            {
                Console.WriteLine($"{sentence}: {answer.Errors[0].Message}");
                continue;
            }

            Print(sentence, answer.Value);
        }
    }

    private static void Print(string sentence, Exercise exercise)
    {
        var sound = Median(() =>
        {
            using var file = new MemoryStream();
            WavFile.Write(file, SoundRenderer.Render(exercise, new SoundOptions()), 44_100);
        });
        var midi = Median(() => MidiWriter.Write(exercise, new MidiOptions()));
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{exercise.Seconds:0.0} {sound:0.0} {1000 * exercise.Seconds / sound:0} {midi:0.00}  {sentence}"
            )
        );
    }

    private static double Median(Action work)
    {
        work();
        return Enumerable.Range(0, Rounds).Select(_ => Milliseconds(work)).Order().ElementAt(Rounds / 2);
    }

    private static double Milliseconds(Action work)
    {
        var before = Environment.CpuUsage.TotalTime;
        work();
        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
    }
}
