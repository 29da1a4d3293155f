using System.Collections.Concurrent;
using System.Text;
using Fretloom.Lessons;

namespace Fretloom.Studio.Folder;

/// <summary>The lesson files that lie in one folder.</summary>
/// <remarks>
/// A file is saved as a draft beside it, which is written through to the disk and takes its place in one step, so that whoever reads it, and
/// whoever comes after a crash, finds one of the whole versions. Who saves the same file waits for the other. Other programs may change the
/// files at any time; what they write between the look at a file and its replacement, a moment, would be lost.
/// </remarks>
internal sealed class LessonFolder
{
    private const string Draft = ".fretloom-save-";

    private readonly string _folder;
    private readonly string _realFolder;
    private readonly ConcurrentDictionary<string, Lock> _gates = new();
    private readonly ConcurrentDictionary<string, (DateTime Changed, long Length, string Title)> _titles = new();

    /// <summary>Looks into a folder.</summary>
    /// <param name="folder">It is there.</param>
    public LessonFolder(string folder)
    {
        _folder = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        _realFolder = RealPath.Of(_folder);
    }

    /// <summary>Where it is.</summary>
    public string Location => _folder;

    /// <summary>The names of the lessons, in order.</summary>
    public IReadOnlyList<string> Names() =>
        [
            .. Directory
                .EnumerateFiles(_folder)
                .Select(path => Path.GetFileName(path))
                .Where(name => PathOf(name) is { } path && File.Exists(path))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>The lessons by name.</summary>
    public IReadOnlyList<ListedLesson> List()
    {
        var listed = new List<ListedLesson>();
        foreach (var name in Names())
        {
            try
            {
                listed.Add(Listed(name));
            }
            catch (Exception problem) when (IsOfFiles(problem))
            {
                // Gone meanwhile, or another user's: not to be had.
            }
        }

        return listed;
    }

    /// <summary>Reads a lesson; null where there is none of this name.</summary>
    public LessonText? Read(string name)
    {
        if (PathOf(name) is not { } path)
        {
            return null;
        }

        try
        {
            return ReadFile(path);
        }
        catch (Exception problem) when (problem is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    /// <summary>When a lesson file was last changed and how long it is; null where there is none.</summary>
    public (DateTime Changed, long Length)? StampOf(string name) =>
        PathOf(name) is { } path && new FileInfo(path) is { Exists: true } file
            ? (file.LastWriteTimeUtc, file.Length)
            : null;

    /// <summary>Replaces a lesson, or makes a new one, whole or not at all.</summary>
    /// <param name="name">The name.</param>
    /// <param name="content">The new content.</param>
    /// <param name="mayReplace">Whether what is there may be replaced: asked with its entity tag, null for no file, while nobody else saves it.</param>
    /// <returns>What came of it; null where no lesson may have this name.</returns>
    public SaveOutcome? Save(string name, byte[] content, Func<string?, bool> mayReplace)
    {
        if (PathOf(name) is not { } path || Directory.Exists(path))
        {
            return null;
        }

        lock (_gates.GetOrAdd(path, _ => new Lock()))
        {
            var before = File.Exists(path) ? ReadFile(path).Tag : null;
            return mayReplace(before) && Replace(path, content, isNew: before is null)
                ? new SaveOutcome(true, LessonText.TagOf(content))
                : new SaveOutcome(false, File.Exists(path) ? ReadFile(path).Tag : null);
        }
    }

    /// <summary>Removes the drafts of programs that were killed.</summary>
    public void RemoveAbandoned()
    {
        foreach (var draft in Directory.EnumerateFiles(_folder, Draft + "*"))
        {
            try
            {
                // A program that lives holds its draft open.
                using (new FileStream(draft, FileMode.Open, FileAccess.ReadWrite, FileShare.None)) { }
                File.Delete(draft);
            }
            catch (Exception problem) when (IsOfFiles(problem))
            {
                // In use, or another user's: not ours to remove.
            }
        }
    }

    private ListedLesson Listed(string name)
    {
        var (changed, length) = StampOf(name) ?? throw new FileNotFoundException();
        if (!_titles.TryGetValue(name, out var known) || (known.Changed, known.Length) != (changed, length))
        {
            var text = Encoding.UTF8.GetString(Read(name)?.Bytes ?? []);
            known = (changed, length, FrontMatter.Of(text).Title);
            _titles[name] = known;
        }

        return new ListedLesson(name, known.Title, changed);
    }

    // The file of a name: a link is followed to another file of this folder, and nowhere else.
    private string? PathOf(string name)
    {
        if (!LessonName.IsFine(name))
        {
            return null;
        }

        var file = new FileInfo(Path.Combine(_folder, name));
        try
        {
            return file.LinkTarget is null ? file.FullName
                : file.ResolveLinkTarget(returnFinalTarget: true) is { } end && IsHere(end) ? end.FullName
                : null;
        }
        catch (Exception problem) when (IsOfFiles(problem))
        {
            return null;
        }
    }

    private bool IsHere(FileSystemInfo end) =>
        end is FileInfo { LinkTarget: null, DirectoryName: { } folder }
        && (folder == _folder || folder == _realFolder)
        && LessonName.IsFine(end.Name);

    // What has no length is no file with text in it, and opening it may wait for ever.
    private static LessonText ReadFile(string path)
    {
        var file = new FileInfo(path);
        if (file.Length == 0)
        {
            return new LessonText([]);
        }

        using var stream = file.Open(FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[Math.Min(stream.Length, SourceText.MaxBytes + 1L)];
        var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return new LessonText(bytes[..read]);
    }

    private static bool Replace(string path, byte[] content, bool isNew)
    {
        var draft = Path.Combine(Path.GetDirectoryName(path)!, Draft + Path.GetRandomFileName());
        try
        {
            using var file = new FileStream(draft, FileMode.CreateNew, FileAccess.Write, FileShare.Delete, 1);
            if (!isNew && !OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(file.SafeFileHandle, File.GetUnixFileMode(path));
            }

            file.Write(content);
            file.Flush(flushToDisk: true);
            // Held open, so that nobody takes it for abandoned.
            File.Move(draft, path, overwrite: !isNew);
            return true;
        }
        catch (IOException) when (isNew && File.Exists(path))
        {
            // Another program made it meanwhile.
            return false;
        }
        finally
        {
            File.Delete(draft);
        }
    }

    private static bool IsOfFiles(Exception problem) => problem is IOException or UnauthorizedAccessException;
}
