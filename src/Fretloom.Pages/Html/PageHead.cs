using Fretloom.Pages.Fonts;
using Fretloom.Pages.Svg;

namespace Fretloom.Pages.Html;

/// <summary>The head of a page that stands alone: it forbids itself to load anything and holds its styles and fonts.</summary>
internal static class PageHead
{
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:";

    // Half a megabyte that is the same on every page.
    private static readonly Lazy<string> FontStyles = new(() => FontStyleSheet.For(TextFaces.All));

    /// <summary>Writes the head.</summary>
    /// <param name="html">The page.</param>
    /// <param name="title">Its title.</param>
    /// <param name="styles">Rules of its own, after those that all pages share.</param>
    public static void Write(HtmlText html, string title, string styles)
    {
        html.Open("head").Line();
        html.Empty("meta", ("charset", "utf-8")).Line();
        html.Empty("meta", ("http-equiv", "Content-Security-Policy"), ("content", Policy)).Line();
        html.Empty("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1")).Line();
        html.Empty("meta", ("name", "color-scheme"), ("content", "light dark")).Line();
        html.Element("title", title).Line();
        html.Open("style")
            .Raw(FontStyles.Value)
            .Raw(SvgTheme.ScreenStyles)
            .Raw(EmbeddedText.Read("handout.css"))
            .Raw(styles)
            .Close()
            .Line();
        html.Close().Line();
    }
}
