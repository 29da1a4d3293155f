using System.IO.Compression;

namespace Fretloom.Studio.Work;

/// <summary>Puts files into one ZIP. The same files give the same bytes.</summary>
internal static class ZipFiles
{
    // The first that a ZIP can name.
    private static readonly DateTimeOffset Timeless = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Writes the ZIP.</summary>
    /// <param name="target">Where to.</param>
    /// <param name="files">Names and contents, in order.</param>
    public static void Write(Stream target, IEnumerable<(string Name, Func<Stream> Open)> files)
    {
        using var zip = new ZipArchive(target, ZipArchiveMode.Create, leaveOpen: true);
        foreach (var (name, open) in files)
        {
            var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
            entry.LastWriteTime = Timeless;
            using var content = open();
            using var packed = entry.Open();
            content.CopyTo(packed);
        }
    }
}
