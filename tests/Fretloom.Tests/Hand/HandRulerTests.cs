using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Fretloom.Testing;

namespace Fretloom.Tests.Hand;

/// <summary>The ruler that teachers print must be true on paper.</summary>
public partial class HandRulerTests
{
    private static readonly XElement Ruler = XDocument
        .Load(Repository.PathTo("docs", "pictures", "hand-ruler.svg"))
        .Root!;

    [Fact]
    public void One_unit_of_the_drawing_is_one_millimetre_on_paper()
    {
        var box = Ruler.Attribute("viewBox")!.Value.Split(' ');

        Assert.Equal(Ruler.Attribute("width")!.Value, box[2] + "mm");
        Assert.Equal(Ruler.Attribute("height")!.Value, box[3] + "mm");
    }

    [Fact]
    public void It_fits_on_A4_and_Letter_with_a_margin_of_10_mm()
    {
        var box = Ruler.Attribute("viewBox")!.Value.Split(' ').Select(Number).ToList();

        // ISO 216: A4 is 210 by 297 mm; ANSI Letter is 8.5 by 11 inches, 215.9 by 279.4 mm.
        Assert.InRange(box[2], 0, 210 - 20);
        Assert.InRange(box[3], 0, 279.4 - 20);
    }

    [Fact]
    public void There_is_a_mark_at_every_millimetre_and_a_number_at_every_tenth()
    {
        var marks = Ruler
            .Descendants()
            .SelectMany(node => Mark().Matches(node.Attribute("d")?.Value ?? ""))
            .Select(mark => Number(mark.Groups[1].Value))
            .ToList();
        var zero = marks.Max();

        Assert.Equal(Enumerable.Range(0, 231).Select(mm => zero - mm), marks);
        var numbers = Ruler
            .Descendants()
            .Where(node => node.Attribute("x")?.Value == "24")
            .Select(node => (Millimetres: Number(node.Value), Y: Number(node.Attribute("y")!.Value)));
        // Numbers stand a little below the line they name, as text is placed by its baseline.
        Assert.All(numbers, number => Assert.Equal(zero - number.Millimetres, number.Y, 1.5));
    }

    [Fact]
    public void The_bar_to_check_the_print_is_100_mm_long() =>
        Assert.Contains(
            Ruler.Descendants(),
            node => node.Attribute("d")?.Value.Contains("h100", StringComparison.Ordinal) == true
        );

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex("M10 ([0-9.]+)h[0-9]+")]
    private static partial Regex Mark();
}
