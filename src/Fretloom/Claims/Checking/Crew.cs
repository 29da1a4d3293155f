namespace Fretloom.Claims.Checking;

/// <summary>Work that can be cut into pieces, each a run of string sets in every key.</summary>
internal interface IWorker
{
    /// <summary>How many pieces.</summary>
    int Pieces { get; }

    /// <summary>How many string sets the claim can be asked of.</summary>
    int PlacesThatFit { get; }

    /// <summary>A worker with memory of its own, for one thread.</summary>
    IWorker Another();

    /// <summary>Does a piece.</summary>
    /// <param name="piece">Counted from 0.</param>
    /// <param name="tallies">One for each key, added to.</param>
    /// <param name="cancellation">Asked often.</param>
    void Do(int piece, Tally[] tallies, CancellationToken cancellation);
}

/// <summary>Does all pieces, on one thread or several; what comes out does not depend on how many.</summary>
internal static class Crew
{
    public static Tally[] Run(
        IWorker worker,
        int keys,
        int threads,
        IProgress<double>? progress,
        CancellationToken cancellation
    )
    {
        var total = NewTallies(keys);
        var done = 0;
        if (threads == 1 || worker.Pieces == 1)
        {
            for (var piece = 0; piece < worker.Pieces; piece++)
            {
                worker.Do(piece, total, cancellation);
                Report();
            }

            return total;
        }

        Parallel.For(
            0,
            worker.Pieces,
            new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation },
            () => (Worker: worker.Another(), Tallies: NewTallies(keys)),
            (piece, _, local) =>
            {
                local.Worker.Do(piece, local.Tallies, cancellation);
                Report();
                return local;
            },
            local =>
            {
                lock (total)
                {
                    for (var key = 0; key < keys; key++)
                    {
                        total[key].Add(local.Tallies[key]);
                    }
                }
            }
        );
        return total;

        void Report() => progress?.Report(Interlocked.Increment(ref done) / (double)worker.Pieces);
    }

    private static Tally[] NewTallies(int keys) => [.. Enumerable.Range(0, keys).Select(_ => new Tally())];
}
