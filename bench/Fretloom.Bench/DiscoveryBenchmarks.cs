using BenchmarkDotNet.Attributes;
using Fretloom.Claims;
using Fretloom.Sentences;

namespace Fretloom.Bench;

/// <summary>Whole searches, from the words to both lists, rechecked. Wanted: under 1 s on four strings, under 5 s on six.</summary>
public class DiscoveryBenchmarks
{
    private DiscoveryScope scope = DiscoveryParser.Parse("on a guitar, in every major key").Value!;

    [Params("4-1", "6-1")]
    public string Strings { get; set; } = "4-1";

    [GlobalSetup]
    public void Read() =>
        scope = DiscoveryParser.Parse($"on a guitar, on strings {Strings}, in every major key").Value!;

    [Benchmark]
    public int Discover() => ClaimDiscovery.Run(scope).Landmarks.Count;
}
