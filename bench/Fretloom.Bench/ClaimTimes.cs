using System.Globalization;
using Fretloom.Claims;
using Fretloom.Sentences;

namespace Fretloom.Bench;

/// <summary>What checking takes from text to verdict, and in memory, for one sentence of each sort; in processor time, on one thread.</summary>
internal static class ClaimTimes
{
    private const int Rounds = 5;

    private static readonly CheckOptions VerdictOnly = CheckOptions.Default with
    {
        LooksElsewhere = false,
        MostFailures = 1,
    };

    /// <summary>What can be said of every tuning of six strings.</summary>
    private static readonly string[] OfTunings =
    [
        "there is at least 1 full fret",
        "the full frets include the root fret of the seventh shape on degree 5 of strings 4-1",
        "every seventh shape of strings 4-1 spans at most 5 frets",
        "the half-turn carries the seventh shape on degree 5 of strings 4-1 to the seventh shape on degree 7 of strings 6-3",
        "the full frets moved down 5 frets are the full frets of ukulele",
        "neighbouring full frets lie at most 5 frets apart",
        "the gap between the full frets and the empty frets is exactly 1 fret",
        "on frets 0 to 12, there are exactly 3 full frets",
        "on frets 0 to 12, every empty fret lies next to a full fret",
        "on frets 0 to 12, every seventh shape of strings 4-1 spans at most 5 frets",
        "on frets 0 to 12, the half-turn carries the full frets to themselves",
        "on frets 0 to 12, the gap between the full frets and the empty frets is exactly 1 fret",
        "on frets 0 to 24, every triad shape of strings 3-1 begins on a full fret",
    ];

    /// <summary>What can be said of one instrument, and of the listed string sets.</summary>
    private static readonly string[] OfNamed =
    [
        "on guitar, there is at least 1 full fret",
        "on guitar strings 4-1, on frets 0 to 12, every seventh shape spans at most 5 frets",
        "on guitar strings 4-1, on frets 3 to 12, every seventh shape stretches at most 120 mm",
        "on guitar strings 4-1, on frets 1 to 12, the V7 shape is fingered as the I7 shape of low-G ukulele",
        "on ukulele, on frets 0 to 12, every seventh shape can be played with one finger a note by a small hand",
        "on every listed string set, on frets 0 to 12, every triad shape of strings 3-1 stretches at most 100 mm",
        "on every listed string set, on frets 0 to 12, every triad shape of strings 3-1 can be played with one finger a note",
    ];

    public static void Print()
    {
        Console.WriteLine("ms from text to verdict; foreseen; ns a case that is gone through; MB allocated");
        foreach (var said in OfTunings)
        {
            Print($"In every key, on every 6 string tuning, {said}.");
        }

        foreach (var said in OfNamed)
        {
            Print($"In every key, {said}.");
        }

        foreach (var strings in new[] { 4, 5, 6, 7, 8 })
        {
            Print($"In every key, on every {strings} string tuning, there is at least 1 full fret.");
        }
    }

    private static void Print(string text)
    {
        var times = new List<double>();
        var allocated = 0L;
        for (var round = 0; round < Rounds; round++)
        {
            var bytes = GC.GetAllocatedBytesForCurrentThread();
            var before = Environment.CpuUsage.TotalTime;
            ClaimChecker.Check(ClaimParser.Parse(text).Value!, VerdictOnly);
            times.Add((Environment.CpuUsage.TotalTime - before).TotalNanoseconds);
            allocated = GC.GetAllocatedBytesForCurrentThread() - bytes;
        }

        var cost = ClaimCost.Of(ClaimParser.Parse(text).Value!);
        var time = times.Order().ElementAt(Rounds / 2);
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{time / 1e6:0.0} {cost.Nanoseconds / 1e6:0.0} {time / cost.Tried:0.0} {allocated / 1e6:0.0}  {text}"
            )
        );
    }
}
