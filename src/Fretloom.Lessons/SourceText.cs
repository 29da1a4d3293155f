using System.Globalization;
using System.Text;
using System.Text.Unicode;

namespace Fretloom.Lessons;

/// <summary>The text of a lesson file with line feeds only, and the place of each character.</summary>
public sealed class SourceText
{
    /// <summary>The largest file that is read, in bytes.</summary>
    public const int MaxBytes = 1_000_000;

    private readonly List<int> _lineStarts = [0];

    /// <summary>Takes a text; a byte order mark at its start is dropped, and every kind of line end becomes a line feed.</summary>
    public SourceText(string text)
    {
        Text = text.TrimStart('\uFEFF')
            .Replace("\r\n", "\n", StringComparison.Ordinal)
            .Replace('\r', '\n')
            .Replace('\0', '\uFFFD');
        for (var at = 0; at < Text.Length; at++)
        {
            if (Text[at] == '\n')
            {
                _lineStarts.Add(at + 1);
            }
        }
    }

    /// <summary>The text.</summary>
    public string Text { get; }

    /// <summary>How many lines there are, at least 1.</summary>
    public int LineCount => _lineStarts.Count;

    /// <summary>Where a line begins.</summary>
    /// <param name="line">The line, counted from 1.</param>
    /// <returns>A place in <see cref="Text"/>, counted from 0.</returns>
    public int StartOf(int line) => _lineStarts[line - 1];

    /// <summary>The characters of a line, without its line end.</summary>
    /// <param name="line">The line, counted from 1.</param>
    public string Line(int line)
    {
        var end = line < LineCount ? StartOf(line + 1) - 1 : Text.Length;
        return Text[StartOf(line)..end];
    }

    /// <summary>The line and the character in the line, both counted from 1, of a place in <see cref="Text"/>.</summary>
    /// <param name="offset">Counted from 0; places outside the text count as its nearest end.</param>
    public (int Line, int Column) PlaceOf(int offset)
    {
        offset = Math.Clamp(offset, 0, Text.Length);
        var line = _lineStarts.BinarySearch(offset);
        line = line >= 0 ? line + 1 : ~line;
        return (line, offset - StartOf(line) + 1);
    }

    /// <summary>Reads UTF-8.</summary>
    /// <param name="bytes">The content of a file.</param>
    /// <param name="error">What is wrong with it: too large, or not UTF-8, with the place; null when all is well.</param>
    /// <returns>The text, or null when there is an error.</returns>
    public static SourceText? Decode(ReadOnlySpan<byte> bytes, out Diagnostic? error)
    {
        error = null;
        if (bytes.Length > MaxBytes)
        {
            error = TooLarge(bytes.Length);
        }
        else if (!Utf8.IsValid(bytes))
        {
            error = NotUtf8(bytes);
        }

        return error is null ? new SourceText(Encoding.UTF8.GetString(bytes)) : null;
    }

    /// <summary>The finding about a file that is too large.</summary>
    /// <param name="bytes">Its size.</param>
    internal static Diagnostic TooLarge(long bytes) =>
        Diagnostic.OfFile(
            string.Create(
                CultureInfo.InvariantCulture,
                $"The file has {bytes / 1e6:0.0} MB; a lesson has at most {MaxBytes / 1e6:0} MB. Split it into several lessons."
            )
        );

    private static Diagnostic NotUtf8(ReadOnlySpan<byte> bytes)
    {
        var good = 0;
        while (Rune.DecodeFromUtf8(bytes[good..], out _, out var length) == System.Buffers.OperationStatus.Done)
        {
            good += length;
        }

        var before = new SourceText(Encoding.UTF8.GetString(bytes[..good]));
        var (line, column) = before.PlaceOf(before.Text.Length);
        return new Diagnostic(
            line,
            column,
            Severity.Error,
            $"The byte 0x{bytes[good]:X2} is not UTF-8 here. Save the lesson as UTF-8."
        );
    }
}
