namespace Fretloom.Pages.Documents;

/// <summary>
/// Files that appear all at once: each is written into a hidden folder beside its place, and renamed when all are whole.
/// Disposed before <see cref="Publish"/>, nothing is left and nothing that was there has changed.
/// </summary>
public sealed class StagedFiles : IDisposable
{
    private readonly string _folder;
    private readonly string _staging;
    private readonly Action<string, byte[]> _write;
    private readonly bool _isNewFolder;
    private readonly List<string> _names = [];

    /// <summary>Makes the folder if it is not there.</summary>
    /// <param name="folder">Where the files will be.</param>
    /// <exception cref="IOException">The folder cannot be made or written to.</exception>
    /// <exception cref="UnauthorizedAccessException">This user may not write there.</exception>
    public StagedFiles(string folder)
        : this(folder, File.WriteAllBytes) { }

    /// <summary>Makes the folder if it is not there, and writes whole files in a way of one's own.</summary>
    internal StagedFiles(string folder, Action<string, byte[]> write)
    {
        (_folder, _write) = (folder, write);
        _isNewFolder = !Directory.Exists(folder);
        Directory.CreateDirectory(folder);
        _staging = Directory
            .CreateDirectory(Path.Combine(folder, $".fretloom-{Environment.ProcessId}-{GetHashCode()}"))
            .FullName;
    }

    /// <summary>Writes a file that will have a name.</summary>
    public void Add(string name, byte[] content)
    {
        _write(Path.Combine(_staging, name), content);
        _names.Add(name);
    }

    /// <summary>Puts every file in its place, over one of the same name.</summary>
    public void Publish()
    {
        foreach (var name in _names)
        {
            File.Move(Path.Combine(_staging, name), Path.Combine(_folder, name), overwrite: true);
        }

        Directory.Delete(_staging);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!Directory.Exists(_staging))
        {
            return;
        }

        Directory.Delete(_staging, recursive: true);
        if (_isNewFolder && !Directory.EnumerateFileSystemEntries(_folder).Any())
        {
            Directory.Delete(_folder);
        }
    }
}
