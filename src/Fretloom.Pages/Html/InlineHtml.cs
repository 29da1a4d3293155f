using Fretloom.Lessons.Syntax;

namespace Fretloom.Pages.Html;

/// <summary>Writes running text as HTML.</summary>
internal static class InlineHtml
{
    /// <summary>Writes all of it.</summary>
    public static void Write(HtmlText html, ValueList<Inline> content)
    {
        foreach (var inline in content)
        {
            Write(html, inline);
        }
    }

    private static void Write(HtmlText html, Inline inline)
    {
        switch (inline)
        {
            case Inline.Text text:
                html.Text(text.Characters);
                break;
            case Inline.Code code:
                html.Element("code", code.Characters);
                break;
            case Inline.Emphasis emphasis:
                Around(html.Open("em"), emphasis.Content);
                break;
            case Inline.Strong strong:
                Around(html.Open("strong"), strong.Content);
                break;
            case Inline.Link link:
                Around(html.Open("a", ("href", link.Address)), link.Content);
                break;
            case Inline.Checkbox box:
                html.Open(
                        "span",
                        ("class", box.IsTicked ? "box ticked" : "box"),
                        ("role", "img"),
                        ("aria-label", box.IsTicked ? "done" : "to do")
                    )
                    .Close();
                break;
            case Inline.LineBreak:
                html.Empty("br");
                break;
        }
    }

    private static void Around(HtmlText html, ValueList<Inline> content)
    {
        Write(html, content);
        html.Close();
    }
}
