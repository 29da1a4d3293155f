namespace Fretloom.Bench;

/// <summary>What work takes of the processors, so that what else the machine does counts little.</summary>
internal static class ProcessorTime
{
    private const int Rounds = 7;

    /// <summary>The median of some rounds after one to warm up, in milliseconds.</summary>
    public static double Median(Action work)
    {
        work();
        return Enumerable.Range(0, Rounds).Select(_ => Milliseconds(work)).Order().ElementAt(Rounds / 2);
    }

    private static double Milliseconds(Action work)
    {
        var before = Environment.CpuUsage.TotalTime;
        work();
        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
    }
}
