using System.IO.Compression;
using System.Text;
using Fretloom.Exercises;

namespace Fretloom.Scores.MusicXml;

/// <summary>Writes compressed MusicXML (.mxl): a ZIP file whose container names the score.</summary>
public static class MxlFile
{
    private const string Score = "score.musicxml";

    private const string Container = $"""
        <?xml version="1.0" encoding="UTF-8"?>
        <container>
          <rootfiles>
            <rootfile full-path="{Score}" media-type="application/vnd.recordare.musicxml+xml"/>
          </rootfiles>
        </container>

        """;

    // The same exercise gives the same bytes.
    private static readonly DateTimeOffset Stamp = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The bytes of the file.</summary>
    public static byte[] Write(Exercise exercise)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "META-INF/container.xml", Container);
            Add(zip, Score, MusicXmlWriter.Write(exercise));
        }

        return bytes.ToArray();
    }

    private static void Add(ZipArchive zip, string name, string text)
    {
        var entry = zip.CreateEntry(name);
        entry.LastWriteTime = Stamp;
        using var stream = entry.Open();
        stream.Write(Encoding.UTF8.GetBytes(text));
    }
}
