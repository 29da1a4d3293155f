using System.Text;

namespace Fretloom.Pages;

/// <summary>Texts that lie inside the assembly.</summary>
internal static class EmbeddedText
{
    /// <summary>Reads one by its file name.</summary>
    public static string Read(string name) => Encoding.UTF8.GetString(ReadBytes(name));

    /// <summary>Reads one by its file name, as UTF-8.</summary>
    public static byte[] ReadBytes(string name)
    {
        using var stream =
            typeof(EmbeddedText).Assembly.GetManifestResourceStream(name)
            ?? throw new ArgumentException($"No text named {name} lies in the assembly.", nameof(name));
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
