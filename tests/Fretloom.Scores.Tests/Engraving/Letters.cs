using System.Globalization;
using System.Xml.Linq;

namespace Fretloom.Scores.Tests.Engraving;

/// <summary>The box of a text in a picture, by rough measures of Source Sans 3: letters half as wide and seven tenths as high as their size.</summary>
internal sealed record Letters(string Text, double Left, double Top, double Right, double Bottom)
{
    /// <summary>Measures one.</summary>
    public static Letters Of(XElement text)
    {
        var (x, y, size) = (Number(text, "x"), Number(text, "y"), Number(text, "font-size"));
        var width = size * text.Value.Length * 0.5;
        var left = text.Attribute("text-anchor")?.Value == "middle" ? x - width / 2 : x;
        return new(text.Value, left, y - size * 0.7, left + width, y);
    }

    /// <summary>Whether two of them lie over each other.</summary>
    public bool Touches(Letters other) =>
        Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    private static double Number(XElement text, string name) =>
        double.Parse(text.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
