using System.Security.Cryptography;
using Fretloom.Pages.Documents;

namespace Fretloom.Studio.Work;

/// <summary>Takes orders for handouts, has them made one after the other, and keeps the last ones.</summary>
/// <param name="workshop">Where they are made.</param>
/// <param name="scratch">Where they are kept.</param>
internal sealed class HandoutDesk(Workshop workshop, ScratchFolder scratch) : IAsyncDisposable
{
    /// <summary>How many are kept when another is taken. Ours, without source.</summary>
    public const int MostKept = 8;

    /// <summary>How many may be under way or waiting. Ours, without source.</summary>
    public const int MostWaiting = 16;

    private const int IdBytes = 16;

    private readonly Lock _gate = new();
    private readonly SemaphoreSlim _turn = new(1);
    private readonly List<HandoutJob> _jobs = [];
    private readonly List<Task> _runs = [];

    /// <summary>Takes an order.</summary>
    /// <param name="name">The name of the lesson's file.</param>
    /// <param name="text">The lesson.</param>
    /// <param name="optionsFor">What to make of it, in a folder.</param>
    /// <returns>The job; null when too many wait.</returns>
    public HandoutJob? Take(string name, byte[] text, Func<string, BuildOptions> optionsFor)
    {
        var id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes));
        var folder = Path.Combine(scratch.Location, id);
        var job = new HandoutJob(id, folder, name, text, optionsFor(Path.Combine(folder, "made")));
        lock (_gate)
        {
            if (_jobs.Count(one => !one.IsOver) >= MostWaiting)
            {
                return null;
            }

            foreach (var old in _jobs.Where(one => one.IsOver).SkipLast(MostKept - 1).ToList())
            {
                Forget(old);
            }

            _jobs.Add(job);
            _runs.RemoveAll(run => run.IsCompleted);
            _runs.Add(Task.Run(() => job.RunAsync(workshop.Builder, _turn)));
        }

        return job;
    }

    /// <summary>The job of a name; null when there is none, or it is no longer kept.</summary>
    public HandoutJob? Find(string id)
    {
        lock (_gate)
        {
            return _jobs.Find(job => job.Id == id);
        }
    }

    /// <summary>Stops a job, or forgets one that is over.</summary>
    public void Cancel(HandoutJob job)
    {
        lock (_gate)
        {
            if (job.IsOver)
            {
                Forget(job);
            }
            else
            {
                job.Stop();
            }
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Task[] runs;
        lock (_gate)
        {
            _jobs.ForEach(job => job.Stop());
            runs = [.. _runs];
        }

        await Task.WhenAll(runs);
        _jobs.ForEach(job => job.Dispose());
        _turn.Dispose();
    }

    private void Forget(HandoutJob job)
    {
        _jobs.Remove(job);
        job.Dispose();
        ScratchFolder.Remove(job.Folder);
    }
}
