using System.Globalization;
using Fretloom.Scores.Sound;
using Fretloom.Testing;

namespace Fretloom.Scores.Tests.Sound;

/// <summary>An independent ear: the program aubiopitch (Debian's aubio-tools).</summary>
/// <remarks>
/// It listens twice. Its method yinfast finds the note over the whole range, but reckons in samples: at 2,000 Hz it misses a steady tone by some ten
/// cents. From E5 up the method mcomb is taken, which looks at the peaks of the spectrum.
/// </remarks>
internal static class Aubio
{
    private const int Window = 4096;
    private const int HighMidi = 76;

    /// <summary>Why it cannot be asked here; null when it can.</summary>
    public static string? WhyNot => Run.IsInstalled("aubiopitch") ? null : "skipped: aubiopitch is not installed";

    /// <summary>What it hears in each of some stretches of a WAV file, as a MIDI note number with its fraction; 0 for silence.</summary>
    /// <param name="file">The file.</param>
    /// <param name="rate">Its samples in a second.</param>
    /// <param name="stretches">Begin and end in seconds.</param>
    public static async Task<List<double>> MidiAsync(
        string file,
        int rate,
        IReadOnlyList<(double Begin, double End)> stretches
    )
    {
        var low = await MidiAsync(file, rate, stretches, "yinfast");
        var high = await MidiAsync(file, rate, stretches, "mcomb");
        return [.. low.Zip(high, (one, other) => one < HighMidi ? one : other)];
    }

    private static async Task<IEnumerable<double>> MidiAsync(
        string file,
        int rate,
        IReadOnlyList<(double Begin, double End)> stretches,
        string method
    )
    {
        var result = await Run.ProgramAsync(
            "aubiopitch",
            ["-i", file, "-r", $"{rate}", "-p", method, "-B", $"{Window}", "-H", "512", "-u", "midi"]
        );
        Assert.Equal(0, result.ExitCode);
        var heard = result
            .Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.Split(' ').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToList())
            .Select(cells => (At: cells[0], Midi: cells[1]))
            .ToList();
        // A line is about the window that ends at its time; 0 is silence, into which notes of a sound font may fall.
        var window = (double)Window / rate;
        return stretches
            .Select(stretch =>
                heard
                    .Where(line => line.At - window >= stretch.Begin && line.At <= stretch.End && line.Midi > 0)
                    .Select(line => line.Midi)
                    .Order()
                    .ToList()
            )
            .Select(inside => inside.ElementAtOrDefault(inside.Count / 2));
    }
}
