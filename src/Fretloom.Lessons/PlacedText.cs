namespace Fretloom.Lessons;

/// <summary>A line, and where its first character stands in the file, counted from 0.</summary>
internal readonly record struct PlacedLine(string Text, int Offset);

/// <summary>Some lines of a file joined by line feeds, with the place in the file of every character.</summary>
internal sealed class PlacedText(IReadOnlyList<PlacedLine> lines)
{
    /// <summary>The lines, joined.</summary>
    public string Text { get; } = string.Join('\n', lines.Select(line => line.Text));

    /// <summary>The place in the file of a character of <see cref="Text"/>, both counted from 0.</summary>
    public int OffsetOf(int at)
    {
        foreach (var line in lines)
        {
            if (at <= line.Text.Length)
            {
                return line.Offset + Math.Max(0, at);
            }

            at -= line.Text.Length + 1;
        }

        return lines.Count == 0 ? 0 : lines[^1].Offset + lines[^1].Text.Length;
    }

    /// <summary>The place in the file of a line and a column of <see cref="Text"/>, both counted from 1.</summary>
    public int OffsetOf(long line, long column)
    {
        var (text, offset) = lines[(int)Math.Clamp(line - 1, 0, lines.Count - 1)];
        return offset + (int)Math.Clamp(column - 1, 0, text.Length);
    }
}
