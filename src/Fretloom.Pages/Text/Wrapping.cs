using System.Text;

namespace Fretloom.Pages.Text;

/// <summary>Breaks lines between words.</summary>
internal static class Wrapping
{
    /// <summary>The text in lines of at most so many characters; a longer word has a line of its own.</summary>
    public static IEnumerable<string> Lines(string text, int width)
    {
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line.ToString();
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        if (line.Length > 0)
        {
            yield return line.ToString();
        }
    }
}
