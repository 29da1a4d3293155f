using System.Globalization;
using System.Xml.Linq;

namespace Fretloom.Scores.Engraving;

/// <summary>A bar as the engraver drew it, from left to right in its own units.</summary>
/// <param name="Left">Where its lines begin.</param>
/// <param name="Start">Where its first note begins, after clef and signs; in a bar of rest where its lines do.</param>
/// <param name="Right">Where its lines end.</param>
internal sealed record MeasuredBar(double Left, double Start, double Right)
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly XNamespace XLink = "http://www.w3.org/1999/xlink";

    /// <summary>Measures a bar of the engraver's picture.</summary>
    public static MeasuredBar Of(XElement measure)
    {
        // The first line of the staff: "M0 2549 L5184 2549".
        var line = measure
            .Descendants(Svg + "g")
            .First(group => Class(group) == "staff")
            .Elements(Svg + "path")
            .First()
            .Attribute("d")!
            .Value.Split(' ', 'M', 'L');
        var (left, right) = (Number(line[1]), Number(line[4]));
        var heads = measure
            .Descendants(Svg + "g")
            .Where(group => Class(group) == "note")
            .SelectMany(note => note.Descendants(Svg + "use"))
            .Select(use => Number(use.Attribute("transform")!.Value.Split('(', ',')[1]));
        return new(left, heads.DefaultIfEmpty(left).Min(), right);
    }

    private static string? Class(XElement element) => element.Attribute("class")?.Value;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
