using System.Diagnostics;
using System.Globalization;
using Fretloom.Claims;
using Fretloom.Sentences;

namespace Fretloom.Bench;

/// <summary>How long work that is stopped takes to end: at most 50 ms is wanted.</summary>
internal static class ClaimStops
{
    private const int Stops = 25;

    private static readonly (string Name, string Text)[] Claims =
    [
        (
            "all six-string tunings",
            "In every key, on every 6 string tuning, every empty fret lies next to a full fret."
        ),
        (
            "shapes on all six-string tunings",
            "In every key, on every 6 string tuning, every seventh shape of strings 4-1 spans at most 5 frets."
        ),
        (
            "a window on all six-string tunings",
            "In every key, on every 6 string tuning, on frets 0 to 12, there are exactly 3 full frets."
        ),
        (
            "fingers, with other places",
            "In every key, on guitar strings 4-1, on frets 1 to 15, every seventh shape can be played with one finger a note."
        ),
        (
            "fingers on every listed string set",
            "In every key, on every listed string set, on frets 1 to 12, every triad shape of strings 3-1 can be played with one finger a note."
        ),
    ];

    private static readonly string[] Scopes =
    [
        "on a guitar, on strings 4-1, in every major key",
        "on a guitar, in every major key",
    ];

    public static void Print()
    {
        Console.WriteLine(
            "whole run in ms; from the wish to stop to the end: the median and the longest in ms, the longest in ms of processor time"
        );
        foreach (var (name, text) in Claims)
        {
            var sentence = ClaimParser.Parse(text).Value!;
            foreach (var threads in new[] { 1, Environment.ProcessorCount })
            {
                var options = CheckOptions.Default with { Threads = threads, UsesTransposition = false };
                Print(
                    $"{name}, {threads} threads",
                    token => ClaimChecker.Check(sentence, options, null, token).Failing
                );
            }
        }

        foreach (var scope in Scopes)
        {
            Print(
                scope,
                token => ClaimDiscovery.Run(DiscoveryParser.Parse(scope).Value!, null, null, token).Laws.Count
            );
        }
    }

    /// <summary>Stops the work at moments spread evenly over a whole run.</summary>
    private static void Print(string name, Func<CancellationToken, long> work)
    {
        work(CancellationToken.None);
        var clock = Stopwatch.StartNew();
        work(CancellationToken.None);
        var whole = clock.Elapsed;
        var ends = Enumerable
            .Range(0, Stops)
            .Select(stop => Stop(work, whole * (stop + 0.5) / Stops))
            .OfType<(double Passed, double Used)>()
            .OrderBy(end => end.Passed)
            .ToList();
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{name}: {whole.TotalMilliseconds:0}; {ends[ends.Count / 2].Passed:0.0}, {ends[^1].Passed:0.0}, {ends.Max(end => end.Used):0.0} ({ends.Count} stops)"
            )
        );
    }

    /// <summary>Milliseconds from the stop to the end, passed and used by the processor; null when the work was done before.</summary>
    private static (double Passed, double Used)? Stop(Func<CancellationToken, long> work, TimeSpan after)
    {
        using var source = new CancellationTokenSource();
        var (stopped, used) = (0L, TimeSpan.Zero);
        using var at = new Timer(_ =>
        {
            (stopped, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
            source.Cancel();
        });
        at.Change(after, Timeout.InfiniteTimeSpan);
        try
        {
            work(source.Token);
            return null;
        }
        catch (OperationCanceledException)
        {
            return (
                Stopwatch.GetElapsedTime(stopped).TotalMilliseconds,
                (Environment.CpuUsage.TotalTime - used).TotalMilliseconds
            );
        }
    }
}
