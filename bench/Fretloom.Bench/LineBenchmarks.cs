using BenchmarkDotNet.Attributes;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Tests.Hand.Lines;

namespace Fretloom.Bench;

/// <summary>
/// Free lines on a guitar: string, fret and finger of every note are chosen. Against the plain shortest path of the tests at
/// least 20 times; 1,000 notes in at most 12 times the time of 100.
/// </summary>
public class LineBenchmarks
{
    private static readonly Player Guitarist = new(Catalogue.Default);

    private ValueList<LineNote> notes;

    /// <summary>How many notes.</summary>
    [Params(30, 100, 1000)]
    public int Notes { get; set; }

    [GlobalSetup]
    public void Compose() => notes = Walk.On(Guitarist.Instrument, Notes, 1, isFree: true);

    [Benchmark(Baseline = true)]
    public FingeringAnswer Find() => LineFingering.Find(Guitarist, notes, []);

    [Benchmark]
    public FingeringAnswer FindFiveBest() => LineFingering.Find(Guitarist, notes, [], 5);

    /// <summary>The shortest path that the tests compare with: every arc priced anew.</summary>
    [Benchmark]
    public long? PlainShortestPath() => new SlowLines(Guitarist).Cheapest(notes, []);
}

/// <summary>Thirty notes with given spots on a guitar, against the solver CP-SAT: at least 1,000 times.</summary>
public class LineSolverBenchmarks
{
    private static readonly Player Guitarist = new(Catalogue.Default);

    private readonly ValueList<LineNote> notes = Walk.On(Guitarist.Instrument, 30, 1, isFree: false);

    [Benchmark(Baseline = true)]
    public FingeringAnswer Find() => LineFingering.Find(Guitarist, notes, []);

    [Benchmark]
    public long Solver() => SolverLines.Cheapest(Guitarist, notes);
}
