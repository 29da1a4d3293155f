using System.Buffers;
using System.Text;

namespace Fretloom.Pages.Html;

/// <summary>Builds HTML that is also well-formed XML: every element is closed, every text escaped.</summary>
internal sealed class HtmlText
{
    // What is markup, and what XML does not allow or allows in pairs alone.
    private static readonly SearchValues<char> Telling = SearchValues.Create([
        .. "<>&\"\uFFFE\uFFFF",
        .. Enumerable.Range(0, ' ').Select(code => (char)code).Except(['\n', '\t']),
        .. Enumerable.Range(0xD800, 0x800).Select(code => (char)code),
    ]);

    private readonly StringBuilder _html = new();
    private readonly Stack<string> _open = new();

    /// <summary>Opens an element.</summary>
    /// <param name="name">The element's name.</param>
    /// <param name="attributes">Names and values; one with a null value is left out.</param>
    public HtmlText Open(string name, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Tag(name, attributes);
        _html.Append('>');
        _open.Push(name);
        return this;
    }

    /// <summary>Closes the element opened last.</summary>
    public HtmlText Close()
    {
        _html.Append("</").Append(_open.Pop()).Append('>');
        return this;
    }

    /// <summary>Writes an element that has no content, such as a rule.</summary>
    public HtmlText Empty(string name, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Tag(name, attributes);
        _html.Append("/>");
        return this;
    }

    /// <summary>Writes text, escaped.</summary>
    public HtmlText Text(string text)
    {
        var rest = text.AsSpan();
        while (rest.IndexOfAny(Telling) is var at and >= 0)
        {
            _html.Append(rest[..at]);
            // Characters that XML 1.0 (section 2.2) does not allow become the replacement character.
            _ = rest[at] switch
            {
                '<' => _html.Append("&lt;"),
                '>' => _html.Append("&gt;"),
                '&' => _html.Append("&amp;"),
                '"' => _html.Append("&quot;"),
                _ when IsPair(rest[at..]) => _html.Append(rest[at]).Append(rest[++at]),
                _ => _html.Append('\uFFFD'),
            };
            rest = rest[(at + 1)..];
        }

        _html.Append(rest);
        return this;
    }

    /// <summary>Writes an element that holds text alone.</summary>
    public HtmlText Element(string name, string text, params ReadOnlySpan<(string Name, string? Value)> attributes) =>
        Open(name, attributes).Text(text).Close();

    /// <summary>Writes what is known to be markup: a drawing, a style sheet.</summary>
    public HtmlText Raw(string markup)
    {
        _html.Append(markup);
        return this;
    }

    /// <summary>Ends the line.</summary>
    public HtmlText Line()
    {
        _html.Append('\n');
        return this;
    }

    /// <summary>How many characters there are so far.</summary>
    public int Length => _html.Length;

    /// <summary>The HTML from a character on, counted from 0.</summary>
    public string From(int start) => _html.ToString(start, _html.Length - start);

    /// <summary>The HTML so far.</summary>
    public override string ToString() => _html.ToString();

    private static bool IsPair(ReadOnlySpan<char> text) => text.Length > 1 && char.IsSurrogatePair(text[0], text[1]);

    private void Tag(string name, ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        _html.Append('<').Append(name);
        foreach (var (attribute, value) in attributes)
        {
            if (value is not null)
            {
                _html.Append(' ').Append(attribute).Append("=\"");
                Text(value);
                _html.Append('"');
            }
        }
    }
}
