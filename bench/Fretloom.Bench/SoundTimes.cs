using System.Globalization;
using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Scores.Midi;
using Fretloom.Scores.Sound;

namespace Fretloom.Bench;

/// <summary>What sound and MIDI files take of one core: processor time, the median of some rounds.</summary>
internal static class SoundTimes
{
    private static readonly string[] Sentences =
    [
        "the seventh chords from I to IV, up and down, in eighths, at 72",
        "the scale, 3 notes a string, in G major, in sixteenths, at 60",
        "the seventh chords, up and down, in eighths, at 72, sustained",
        "C, F, G7 and C, strummed, in first position, at 90, 4 times, down down-up up-down-up",
        "the triads, on a banjo, in G major, up and down, in eighths, at 90",
        "the scale, on a bass, in E major, up and down, in quarters, at 80",
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
        var sound = ProcessorTime.Median(() =>
        {
            using var file = new MemoryStream();
            WavFile.Write(file, SoundRenderer.Render(exercise, new SoundOptions()), 44_100);
        });
        var midi = ProcessorTime.Median(() => MidiWriter.Write(exercise, new MidiOptions()));
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{exercise.Seconds:0.0} {sound:0.0} {1000 * exercise.Seconds / sound:0} {midi:0.00}  {sentence}"
            )
        );
    }
}
