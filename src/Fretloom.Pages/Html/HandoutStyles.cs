using Fretloom.Pages.Svg;

namespace Fretloom.Pages.Html;

/// <summary>The styles of a handout for a page that brings its own fonts.</summary>
public static class HandoutStyles
{
    /// <summary>
    /// The style sheet. It names the families <see cref="Fonts.TextFaces.Serif"/> and <see cref="Fonts.TextFaces.Sans"/>. Light or dark as the
    /// reader wishes; <c>data-theme</c> on the root element decides for the pictures.
    /// </summary>
    public static string Screen { get; } =
        SvgTheme.ScreenStyles + EmbeddedText.Read("handout.css") + EmbeddedText.Read("player.css");
}
