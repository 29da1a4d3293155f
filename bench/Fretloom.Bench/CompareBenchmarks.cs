using BenchmarkDotNet.Attributes;
using Fretloom.Exhibits;
using Fretloom.Sentences;

namespace Fretloom.Bench;

/// <summary>
/// The seven seventh chords of a key on every string set of four, frets 0 to 15: shapes and fingers alone, goal under 30 ms,
/// against what a named hand adds: other ways to each chord out of reach, looked for on the whole neck.
/// </summary>
public class CompareBenchmarks
{
    private const string Chords = "the seventh chords, on a guitar, in C major, frets 0-15";

    [Benchmark(Baseline = true)]
    public SentenceResult<Exhibit> Fingered() => ShowQuestion.Answer(Chords, ShowDefaults.Standard);

    [Benchmark]
    public SentenceResult<Exhibit> Compared() =>
        ShowQuestion.Answer(Chords + ", for a child's hand", ShowDefaults.Standard);
}
