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
        var gate = new Lock();
        if (threads == 1 || worker.Pieces == 1)
        {
            for (var piece = 0; piece < worker.Pieces; piece++)
            {
                worker.Do(piece, total, cancellation);
                Report();
            }

            return total;
        }

        var next = -1;
        Exception? wrong = null;
        var crew = Enumerable.Range(0, Math.Min(threads, worker.Pieces)).Select(_ => new Thread(Work)).ToList();
        crew.ForEach(thread => thread.Start());
        crew.ForEach(thread => thread.Join());
        if (wrong is not null)
        {
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(wrong);
        }

        return total;

        void Work()
        {
            try
            {
                var (mine, tallies) = (worker.Another(), NewTallies(keys));
                for (var piece = Interlocked.Increment(ref next); piece < mine.Pieces && wrong is null; )
                {
                    mine.Do(piece, tallies, cancellation);
                    Report();
                    piece = Interlocked.Increment(ref next);
                }

                lock (total)
                {
                    for (var key = 0; key < keys; key++)
                    {
                        total[key].Add(tallies[key]);
                    }
                }
            }
            catch (Exception exception)
            {
                wrong = exception;
            }
        }

        // One at a time: what is reported never steps back.
        void Report()
        {
            lock (gate)
            {
                done++;
                progress?.Report(done / (double)worker.Pieces);
            }
        }
    }

    /// <summary>Counts of nothing yet, one for each key.</summary>
    public static Tally[] NewTallies(int keys) => [.. Enumerable.Range(0, keys).Select(_ => new Tally())];
}
