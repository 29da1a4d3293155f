namespace Fretloom.Pages.Documents;

/// <summary>
/// Files that appear together: each is written into a hidden folder beside its place, and all are renamed when all are whole.
/// </summary>
/// <remarks>
/// Disposed before <see cref="Publish"/>, nothing is left and nothing that was there has changed. No file is ever seen half
/// written. The renames follow one another, though: a program that is killed between two of them leaves some files new and
/// others old. What a killed program leaves in its hidden folder is removed by the next one that writes to the same place.
/// </remarks>
public sealed class StagedFiles : IDisposable
{
    private const string Prefix = ".fretloom-";

    private readonly string _folder;
    private readonly Action<string, byte[]> _write;
    private readonly List<string> _newFolders;
    private readonly string _staging;
    private readonly FileStream _lock;
    private readonly List<string> _names = [];

    /// <summary>Makes the folder if it is not there.</summary>
    /// <param name="folder">Where the files will be.</param>
    /// <exception cref="IOException">The folder cannot be made or written to.</exception>
    /// <exception cref="UnauthorizedAccessException">This user may not write there.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public StagedFiles(string folder)
        : this(folder, File.WriteAllBytes) { }

    /// <summary>Makes the folder if it is not there, and writes whole files in a way of one's own.</summary>
    internal StagedFiles(string folder, Action<string, byte[]> write)
    {
        (_folder, _write) = (Path.GetFullPath(folder), write);
        _newFolders = MissingFolders(_folder);
        Directory.CreateDirectory(_folder);
        RemoveAbandoned(_folder);
        _staging = Path.Combine(_folder, Prefix + Path.GetRandomFileName());
        Directory.CreateDirectory(_staging);
        _lock = Lock(_staging, FileMode.CreateNew);
    }

    /// <summary>Writes a file that will have a name.</summary>
    public void Add(string name, byte[] content)
    {
        _write(Path.Combine(_staging, name), content);
        _names.Add(name);
    }

    /// <summary>Puts every file in its place, over one of the same name.</summary>
    /// <exception cref="IOException">A folder has the name of a file: then no file is put in its place.</exception>
    public void Publish()
    {
        if (_names.Find(name => Directory.Exists(Path.Combine(_folder, name))) is { } taken)
        {
            throw new IOException($"There is a folder named '{taken}'.");
        }

        foreach (var name in _names)
        {
            File.Move(Path.Combine(_staging, name), Path.Combine(_folder, name), overwrite: true);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _lock.Dispose();
        if (Directory.Exists(_staging))
        {
            Directory.Delete(_staging, recursive: true);
        }

        foreach (var folder in _newFolders.TakeWhile(folder => !Directory.EnumerateFileSystemEntries(folder).Any()))
        {
            Directory.Delete(folder);
        }
    }

    // The folder and those around it that have to be made, the innermost first.
    private static List<string> MissingFolders(string folder)
    {
        var missing = new List<string>();
        for (var at = folder; at is not null && !Directory.Exists(at); at = Path.GetDirectoryName(at))
        {
            missing.Add(at);
        }

        return missing;
    }

    // A program that lives holds the lock in its hidden folder; the system lets go of it when the program ends in any way.
    private static FileStream Lock(string staging, FileMode mode) =>
        new(Path.Combine(staging, "lock"), mode, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);

    private static void RemoveAbandoned(string folder)
    {
        foreach (var staging in Directory.GetDirectories(folder, Prefix + "*"))
        {
            try
            {
                Lock(staging, FileMode.Open).Dispose();
                Directory.Delete(staging, recursive: true);
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                // In use, just made or just removed by another, or another user's: not ours to remove.
            }
        }
    }
}
