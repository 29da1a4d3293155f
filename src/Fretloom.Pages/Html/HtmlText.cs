using System.Text;

namespace Fretloom.Pages.Html;

/// <summary>Builds HTML that is also well-formed XML: every element is closed, every text escaped.</summary>
internal sealed class HtmlText
{
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
        foreach (var rune in text.EnumerateRunes())
        {
            // Characters that XML 1.0 (section 2.2) does not allow become the replacement character.
            _ = rune.Value switch
            {
                '<' => _html.Append("&lt;"),
                '>' => _html.Append("&gt;"),
                '&' => _html.Append("&amp;"),
                '"' => _html.Append("&quot;"),
                < ' ' and not ('\n' or '\t') or 0xFFFE or 0xFFFF => _html.Append('\uFFFD'),
                _ => _html.Append(rune.ToString()),
            };
        }

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
