namespace Fretloom.Studio.Work;

/// <summary>A folder among the system's temporary files, which goes with the studio.</summary>
/// <remarks>What a killed studio left behind is removed by the next one.</remarks>
internal sealed class ScratchFolder : IAsyncDisposable
{
    private const string Prefix = "fretloom-studio-";

    private readonly FileStream _lock;

    /// <summary>Makes the folder.</summary>
    public ScratchFolder()
    {
        RemoveAbandoned();
        Location = Directory.CreateTempSubdirectory(Prefix).FullName;
        _lock = Lock(Location, FileMode.CreateNew);
    }

    /// <summary>Where it is.</summary>
    public string Location { get; }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _lock.DisposeAsync();
        Remove(Location);
    }

    /// <summary>Removes a folder with all that is in it, if it can be.</summary>
    public static void Remove(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // A file of it is being sent, or it is gone: the system removes what is left.
        }
    }

    // A studio that lives holds the lock; the system lets go of it when the program ends in any way.
    private static FileStream Lock(string folder, FileMode mode) =>
        new(Path.Combine(folder, "lock"), mode, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);

    private static void RemoveAbandoned()
    {
        foreach (var folder in Directory.GetDirectories(Path.GetTempPath(), Prefix + "*"))
        {
            try
            {
                Lock(folder, FileMode.Open).Dispose();
                Remove(folder);
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                // In use, just made or just removed by another, or another user's: not ours to remove.
            }
        }
    }
}
