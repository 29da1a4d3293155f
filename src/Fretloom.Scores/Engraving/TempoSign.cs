using System.Xml.Linq;

namespace Fretloom.Scores.Engraving;

/// <summary>The small note of a tempo: a quarter, dotted where a beat falls into three. Text has no such sign in the page's fonts.</summary>
internal static class TempoSign
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>How wide the sign is, in parts of the letters' size.</summary>
    public static double Width(bool isDotted) => isDotted ? 0.85 : 0.6;

    /// <summary>Draws it.</summary>
    /// <param name="isDotted">Whether it has a dot.</param>
    /// <param name="x">Its left edge.</param>
    /// <param name="y">The line that the letters stand on.</param>
    /// <param name="size">The letters' size.</param>
    public static XElement Draw(bool isDotted, double x, double y, double size)
    {
        const string note =
            "M0.36,-0.18 C0.38,-0.08 0.27,0.02 0.15,0.02 C0.05,0.02 0,-0.03 0,-0.09 C0,-0.19 0.11,-0.27 0.22,-0.27 "
            + "C0.26,-0.27 0.29,-0.26 0.31,-0.245 V-0.86 H0.36 Z";
        const string dot = " M0.5,-0.12 a0.05,0.05 0 1 0 0.1,0 a0.05,0.05 0 1 0 -0.1,0 Z";
        var place = FormattableString.Invariant($"translate({x:0.##} {y:0.##}) scale({size:0.##})");
        return new XElement(
            Svg + "path",
            new XAttribute("d", note + (isDotted ? dot : "")),
            new XAttribute("transform", place),
            new XAttribute("stroke", "none")
        );
    }
}
