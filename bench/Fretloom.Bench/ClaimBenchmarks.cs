using BenchmarkDotNet.Attributes;
using Fretloom.Claims;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Bench;

/// <summary>
/// Laws over every six-string tuning with steps 1 to 11 in 48 keys, from text to verdict on one thread, against the same laws written by
/// hand and run over the tunings with steps 4 to 6. Times are for one case. Compare the ratios: at least 250 times the sets is wanted with
/// every key visited, 2,500 with transposition.
/// </summary>
public class ClaimBenchmarks
{
    private const int AllCases = 161_051 * 48;
    private const int SomeCases = 243 * 48;

    private static readonly ValueList<Key> Keys = new KeyScope.EveryKey().Keys;
    private static readonly int[][] Tunings = [.. ClaimLaws.Tunings(4, 6)];

    private static readonly CheckOptions OneThread = new()
    {
        Threads = 1,
        LooksElsewhere = false,
        MostFailures = 1,
    };

    /// <summary>Which law, by its place in the list.</summary>
    [Params(0, 1, 2)]
    public int Law { get; set; }

    private static CheckOptions Checked(bool usesTransposition) =>
        OneThread with
        {
            UsesTransposition = usesTransposition,
        };

    /// <summary>Throws unless all count the same failing cases.</summary>
    [GlobalSetup]
    public void Agree()
    {
        var expected = WithSets();
        if (InLoops() != expected || Check(" with steps 4 to 6", Checked(true)) != expected)
        {
            throw new InvalidOperationException($"The ways to check law {Law} do not agree.");
        }
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = SomeCases)]
    public long WithSets() => Tunings.Sum(steps => Keys.Count(key => !ClaimLaws.All[Law].WithSets(steps, key)));

    [Benchmark(OperationsPerInvoke = SomeCases)]
    public long InLoops()
    {
        var failing = 0L;
        foreach (var key in Keys)
        {
            var notes = key.PitchClasses.Mask;
            foreach (var steps in Tunings)
            {
                failing += ClaimLaws.All[Law].InLoops(steps, notes) ? 0 : 1;
            }
        }

        return failing;
    }

    [Benchmark(OperationsPerInvoke = AllCases)]
    public long EveryKeyVisited() => Check("", Checked(usesTransposition: false));

    [Benchmark(OperationsPerInvoke = AllCases)]
    public long OneTonicForTwelve() => Check("", Checked(usesTransposition: true));

    private long Check(string steps, CheckOptions options)
    {
        var text = $"In every key, on every 6 string tuning{steps}, {ClaimLaws.All[Law].Text}.";
        return ClaimChecker.Check(ClaimParser.Parse(text).Value!, options).Failing;
    }
}
