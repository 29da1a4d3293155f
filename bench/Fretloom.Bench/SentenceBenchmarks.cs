using BenchmarkDotNet.Attributes;
using Fretloom.Sentences;

namespace Fretloom.Bench;

/// <summary>Reading a show sentence, right and wrong, against printing it. Compare the ratios, not the times.</summary>
public class SentenceBenchmarks
{
    private const string Text =
        "show the notes of the key, on a guitar, in D major, on strings 4-1, frets 0-12, one note per string, as degrees, for a small hand";

    private const string Wrong =
        "show the notes of the key, on a low-G ukelele, in D major, on strings 4-1, frets 0-12";

    private readonly ShowSentence _sentence = ShowParser.Parse(Text).Value!;

    [Benchmark(Baseline = true)]
    public string Print() => _sentence.ToString();

    [Benchmark]
    public SentenceResult<ShowSentence> Read() => ShowParser.Parse(Text);

    /// <summary>With the search for a suggestion, and its trial.</summary>
    [Benchmark]
    public SentenceResult<ShowSentence> ReadWrong() => ShowParser.Parse(Wrong);
}
