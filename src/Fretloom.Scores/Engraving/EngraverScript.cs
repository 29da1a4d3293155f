using System.Text;

namespace Fretloom.Scores.Engraving;

/// <summary>The engraver's file in two: its script, and the WebAssembly that is packed in it as text.</summary>
/// <remarks>
/// Emscripten (<c>SINGLE_FILE</c>) writes <c>binaryDecode('…')</c>, for each byte the letter of that number, or U+0100 for 0, with the escapes
/// of a script. The script itself takes some ten times as long to unpack it.
/// </remarks>
/// <param name="Text">The script, which takes what was packed from <see cref="Name"/>.</param>
/// <param name="Packed">What was packed; empty when the file has nothing packed in this way, and is then run as it is.</param>
internal sealed record EngraverScript(string Text, byte[] Packed)
{
    /// <summary>The global that the script takes its WebAssembly from.</summary>
    public const string Name = "engraverMachine";

    /// <summary>Reads it.</summary>
    /// <param name="file">The content of the file, in UTF-8.</param>
    public static EngraverScript Of(ReadOnlySpan<byte> file)
    {
        var call = "binaryDecode('"u8;
        var start = file.IndexOf(call);
        if (start < 0)
        {
            return new(Encoding.UTF8.GetString(file), []);
        }

        var packed = new byte[file.Length];
        var length = 0;
        var at = start + call.Length;
        for (; at + 1 < file.Length && file[at] != '\''; at++)
        {
            packed[length++] = file[at] switch
            {
                (byte)'\\' => Escaped(file[++at]),
                < 0x80 and var letter => letter,
                // A letter of two bytes; the lowest eight bits of its number are what was packed.
                var lead => (byte)((lead << 6) | (file[++at] & 0x3F)),
            };
        }

        if (!file[at..].StartsWith("')"u8))
        {
            return new(Encoding.UTF8.GetString(file), []);
        }

        var before = Encoding.UTF8.GetString(file[..start]);
        var after = Encoding.UTF8.GetString(file[(at + "')".Length)..]);
        return new(before + Name + after, packed[..length]);
    }

    private static byte Escaped(byte letter) =>
        letter switch
        {
            (byte)'n' => (byte)'\n',
            (byte)'r' => (byte)'\r',
            (byte)'t' => (byte)'\t',
            _ => letter,
        };
}
