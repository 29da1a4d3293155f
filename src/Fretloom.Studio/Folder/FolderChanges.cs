using System.Threading.Channels;

namespace Fretloom.Studio.Folder;

/// <summary>Tells who listens of every lesson file that changes, whoever changes it.</summary>
/// <remarks>
/// The system's messages only say that it is time to look; what has changed is found by looking. So a message that is lost, or a file system
/// that sends none, costs no more than <see cref="Between"/>.
/// </remarks>
/// <param name="folder">The folder.</param>
/// <param name="clock">Tells the time.</param>
internal sealed class FolderChanges(LessonFolder folder, TimeProvider clock) : IAsyncDisposable
{
    // Programs write a file in several steps.
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    // Changes; of those that a listener has not read when there are more, the oldest are dropped.
    private const int Unread = 256;

    private readonly Lock _gate = new();
    private readonly Dictionary<string, ((DateTime, long)? Stamp, string Tag)> _known = [];
    private readonly List<Channel<FolderChange>> _listeners = [];
    private readonly Channel<bool> _wakes = Channel.CreateBounded<bool>(
        new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite }
    );
    private readonly TaskCompletionSource _isWatching = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly CancellationTokenSource _stop = new();
    private Task _watching = Task.CompletedTask;

    /// <summary>How long it waits for a message before it looks all the same.</summary>
    public TimeSpan Between { get; init; } = TimeSpan.FromSeconds(2);

    /// <summary>Whether it asks the system for messages.</summary>
    public bool AsksSystem { get; init; } = true;

    /// <summary>Begins to watch.</summary>
    public void Begin() => _watching = Task.Run(() => WatchAsync(_stop.Token));

    /// <summary>Listens.</summary>
    /// <param name="stop">Ends it.</param>
    /// <returns>Every change from now on.</returns>
    public async Task<ChannelReader<FolderChange>> ListenAsync(CancellationToken stop)
    {
        await _isWatching.Task.WaitAsync(stop);
        var listener = Channel.CreateBounded<FolderChange>(
            new BoundedChannelOptions(Unread) { FullMode = BoundedChannelFullMode.DropOldest }
        );
        lock (_gate)
        {
            _listeners.Add(listener);
        }

        stop.Register(() => Leave(listener));
        return listener.Reader;
    }

    /// <summary>Tells of a file that was saved here.</summary>
    public void Saved(string name, string tag)
    {
        lock (_gate)
        {
            Note(name, null, tag);
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        await _watching.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        _stop.Dispose();
    }

    private void Leave(Channel<FolderChange> listener)
    {
        lock (_gate)
        {
            _listeners.Remove(listener);
        }

        listener.Writer.TryComplete();
    }

    private async Task WatchAsync(CancellationToken stop)
    {
        using var watcher = AsksSystem ? Watcher() : null;
        Look();
        _isWatching.SetResult();
        while (!stop.IsCancellationRequested)
        {
            await NextLookAsync(stop);
            Look();
        }
    }

    private async Task NextLookAsync(CancellationToken stop)
    {
        using var patience = new CancellationTokenSource(Between, clock);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(stop, patience.Token);
        try
        {
            await _wakes.Reader.ReadAsync(either.Token);
            await Task.Delay(Pause, clock, stop);
            _wakes.Reader.TryRead(out _);
        }
        catch (OperationCanceledException) when (!stop.IsCancellationRequested)
        {
            // No message for so long.
        }
    }

    private FileSystemWatcher? Watcher()
    {
        try
        {
            var watcher = new FileSystemWatcher(folder.Location);
            watcher.Created += (_, _) => _wakes.Writer.TryWrite(true);
            watcher.Changed += (_, _) => _wakes.Writer.TryWrite(true);
            watcher.Deleted += (_, _) => _wakes.Writer.TryWrite(true);
            watcher.Renamed += (_, _) => _wakes.Writer.TryWrite(true);
            watcher.EnableRaisingEvents = true;
            return watcher;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The system watches no more folders: looking now and then has to do.
            return null;
        }
    }

    private void Look()
    {
        lock (_gate)
        {
            var names = Names();
            foreach (var gone in _known.Keys.Except(names).ToList())
            {
                _known.Remove(gone);
                Tell(new FolderChange(gone, null));
            }

            foreach (var name in names)
            {
                LookAt(name);
            }
        }
    }

    private void LookAt(string name)
    {
        try
        {
            var stamp = folder.StampOf(name);
            if ((!_known.TryGetValue(name, out var known) || known.Stamp != stamp) && folder.Read(name) is { } text)
            {
                Note(name, stamp, text.Tag);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Not to be read at the moment; the next look may see more.
        }
    }

    private IReadOnlyList<string> Names()
    {
        try
        {
            return folder.Names();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The folder itself is gone.
            return [];
        }
    }

    private void Note(string name, (DateTime, long)? stamp, string tag)
    {
        var isNews = !_known.TryGetValue(name, out var known) || known.Tag != tag;
        _known[name] = (stamp, tag);
        if (isNews)
        {
            Tell(new FolderChange(name, tag.Trim('"')));
        }
    }

    private void Tell(FolderChange change) => _listeners.ForEach(listener => listener.Writer.TryWrite(change));
}
