using System.Globalization;

namespace Fretloom.Bench;

/// <summary>The benchmarks of claims measured in processor time, so that what else the machine does matters little.</summary>
internal static class ClaimRatios
{
    private const int Rounds = 7;

    public static void Print()
    {
        Console.WriteLine(
            "ns a case: sets, loops, every key visited, one tonic for twelve; times the sets; whole work in ms"
        );
        for (var law = 0; law < ClaimLaws.All.Length; law++)
        {
            var bench = new ClaimBenchmarks { Law = law };
            bench.Agree();
            var sets = Measure(bench.WithSets) / (243 * 48);
            var loops = Measure(bench.InLoops) / (243 * 48);
            var visited = Measure(bench.EveryKeyVisited) / (161_051 * 48);
            var settled = Measure(bench.OneTonicForTwelve) / (161_051 * 48);
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{ClaimLaws.All[law].Text}: {sets:0} {loops:0} {visited:0.00} {settled:0.000}; {sets / loops:0} {sets / visited:0} {sets / settled:0}; {visited * 161_051 * 48 / 1e6:0.0} {settled * 161_051 * 48 / 1e6:0.0}"
                )
            );
        }
    }

    /// <summary>The median of some rounds, after as many for warming up, in nanoseconds of processor time.</summary>
    private static double Measure(Func<long> work)
    {
        var times = new List<double>();
        for (var round = 0; round < 2 * Rounds; round++)
        {
            var before = Environment.CpuUsage.TotalTime;
            work();
            times.Add((Environment.CpuUsage.TotalTime - before).TotalNanoseconds);
        }

        return times.Skip(Rounds).Order().ElementAt(Rounds / 2);
    }
}
