namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>How a file is written that the editor does not show: its line ends, and whether it begins with a byte order mark.</summary>
/// <remarks>Saved again, a file keeps its form; one with mixed line ends gets those of its first line.</remarks>
public readonly record struct WrittenForm(string LineEnd, bool HasMark)
{
    private const char Mark = '\uFEFF';

    /// <summary>The form of a new file.</summary>
    public static WrittenForm Plain { get; } = new("\n", false);

    /// <summary>The form of a file, and its text as the editor has it: with line feeds only.</summary>
    public static (WrittenForm Form, string Text) Of(string file)
    {
        var hasMark = file.StartsWith(Mark);
        var text = hasMark ? file[1..] : file;
        var end = text.IndexOfAny(['\r', '\n']);
        var lineEnd =
            end < 0 || text[end] == '\n' ? "\n"
            : end + 1 < text.Length && text[end + 1] == '\n' ? "\r\n"
            : "\r";
        return (new WrittenForm(lineEnd, hasMark), Plainly(text));
    }

    /// <summary>A text in this form.</summary>
    public string Write(string text) =>
        (HasMark ? Mark.ToString() : "")
        + (LineEnd == "\n" ? text : text.Replace("\n", LineEnd, StringComparison.Ordinal));

    private static string Plainly(string text) =>
        text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
}
