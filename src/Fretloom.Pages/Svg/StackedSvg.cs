using System.Text;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Svg;

/// <summary>Writes several drawings as one SVG, one below the other.</summary>
public static class StackedSvg
{
    // Points between two drawings; ours, without source.
    private const double Gap = 12;

    // CSS pixels to a point (CSS Values and Units Level 3, 6.2), the unit of what lies inside.
    private const double PerPoint = 96.0 / 72;

    /// <summary>Writes drawings as a file of its own, from top to bottom and flush left; one alone is written as it is.</summary>
    /// <param name="drawings">At least one.</param>
    /// <param name="theme">Their colours.</param>
    /// <param name="title">What all of them show, in a few words.</param>
    /// <remarks>An SVG inside another has its own size and its own units: SVG 1.1, 7.9.</remarks>
    public static string Write(IReadOnlyList<Drawing> drawings, SvgTheme theme, string title)
    {
        ArgumentOutOfRangeException.ThrowIfZero(drawings.Count);
        if (drawings.Count == 1)
        {
            return SvgWriter.Write(drawings[0], theme);
        }

        var width = drawings.Max(drawing => drawing.Width);
        var height = drawings.Sum(drawing => drawing.Height) + (drawings.Count - 1) * Gap;
        var text = new StringBuilder();
        text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"fretloom\" width=\"").AppendHundredths(width);
        text.Append("pt\" height=\"").AppendHundredths(height).Append("pt\" viewBox=\"0 0 ");
        text.AppendHundredths(width * PerPoint).Append(' ').AppendHundredths(height * PerPoint);
        text.Append("\" role=\"img\" aria-labelledby=\"stack-title\">\n  <title id=\"stack-title\">");
        text.Append(System.Security.SecurityElement.Escape(title)).Append("</title>\n");
        var top = 0.0;
        foreach (var (at, drawing) in drawings.Index())
        {
            var inner = SvgWriter.Write(drawing, theme, FormattableString.Invariant($"picture-{at + 1}"));
            text.Append("<svg y=\"").AppendHundredths(top).Append("pt\"").Append(inner, 4, inner.Length - 4);
            top += drawing.Height + Gap;
        }

        return text.Append("</svg>\n").ToString();
    }
}
