using BenchmarkDotNet.Attributes;
using Fretloom.Theory;

namespace Fretloom.Bench;

/// <summary>Spelling what a neck sounds against building the key that spells it. Compare the ratio, not the times.</summary>
public class KeyBenchmarks
{
    private readonly Key key = Key.Parse("D major");

    [Benchmark(Baseline = true)]
    public Key BuildKey() => Key.Parse("D major");

    /// <summary>MIDI notes 40 to 86: E2 to D6, the range of a guitar.</summary>
    [Benchmark]
    public Pitch[] SpellGuitarRange() => [.. Enumerable.Range(40, 47).Select(key.SpellMidi)];
}
