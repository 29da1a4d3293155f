using System.Security.Cryptography;
using System.Text;
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
    /// <param name="script">The one script that may run; null for none. The page names it by its hash.</param>
    public static void Write(HtmlText html, string title, string styles, string? script = null)
    {
        var policy = script is null ? Policy : Policy + $"; script-src 'sha256-{HashOf(script)}'";
        html.Open("head").Line();
        html.Empty("meta", ("charset", "utf-8")).Line();
        html.Empty("meta", ("http-equiv", "Content-Security-Policy"), ("content", policy)).Line();
        html.Empty("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1")).Line();
        html.Empty("meta", ("name", "color-scheme"), ("content", "light dark")).Line();
        html.Element("title", title).Line();
        html.Open("style")
            .Raw(FontStyles.Value)
            .Raw(SvgTheme.ScreenStyles)
            .Raw(EmbeddedText.Read("handout.css"))
            .Raw(script is null ? "" : EmbeddedText.Read("player.css"))
            .Raw(styles)
            .Close()
            .Line();
        html.Close().Line();
    }

    // Content Security Policy Level 3, section 8.4: the SHA-256 of the script's UTF-8, in base64.
    private static string HashOf(string script) =>
        Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
}
