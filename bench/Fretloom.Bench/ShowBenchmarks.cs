using BenchmarkDotNet.Attributes;
using Fretloom.Exhibits;
using Fretloom.Sentences;

namespace Fretloom.Bench;

/// <summary>
/// A show sentence read and worked out, from text to exhibit, against reading it alone. The goal is a median under 1 ms
/// for each.
/// </summary>
public class ShowBenchmarks
{
    /// <summary>The sentence.</summary>
    [Params(
        "the notes of the key, on a guitar, in D major, on strings 4-1, frets 0-12, as degrees",
        "the seventh chords, on a guitar, in D major, on strings 4-1, frets 0-12, as members",
        "the triads, on a guitar, in D major, in every inversion",
        "C, F and G7, strummed, in first position",
        "the scale, 3 notes a string, on a guitar, in G major",
        "the symmetries, on a guitar, in C major"
    )]
    public string Sentence { get; set; } = "";

    [Benchmark(Baseline = true)]
    public SentenceResult<ShowSentence> Read() => ShowParser.Parse(Sentence);

    [Benchmark]
    public SentenceResult<Exhibit> ReadAndWorkOut() => ShowQuestion.Answer(Sentence, ShowDefaults.Standard);
}
