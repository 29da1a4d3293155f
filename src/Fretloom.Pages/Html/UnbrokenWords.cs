using System.Text.RegularExpressions;

namespace Fretloom.Pages.Html;

/// <summary>Writes sentences so that no line ends within <c>strings 4-1</c> or <c>half-turn</c>; copied, they are as they were.</summary>
internal static partial class UnbrokenWords
{
    /// <summary>Writes an element that holds a sentence.</summary>
    public static HtmlText Sentence(
        this HtmlText html,
        string name,
        string text,
        params ReadOnlySpan<(string Name, string? Value)> attributes
    )
    {
        html.Open(name, attributes);
        var at = 0;
        foreach (Match match in Hyphenated().Matches(text))
        {
            html.Text(text[at..match.Index]).Element("span", match.Value, ("class", "unbroken"));
            at = match.Index + match.Length;
        }

        return html.Text(text[at..]).Close();
    }

    [GeneratedRegex("(strings )?[0-9]+-[0-9]+|half-turn")]
    private static partial Regex Hyphenated();
}
