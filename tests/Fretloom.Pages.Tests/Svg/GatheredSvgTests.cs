using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using Fretloom.Pages.Tests.Pictures;
using Fretloom.Shapes;

namespace Fretloom.Pages.Tests.Svg;

/// <summary>A picture in fewer elements, beside the same picture element by element.</summary>
public partial class GatheredSvgTests
{
    [GeneratedRegex(@"M(\S+) (\S+)L(\S+) ([^M]+)")]
    private static partial Regex Lines { get; }

    private static (XElement Plain, XElement Gathered) Both(string sentence)
    {
        var exhibit = ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!;
        return Both(exhibit, exhibit.Shapes?.FirstOrDefault());
    }

    private static (XElement Plain, XElement Gathered) Both(Exhibit exhibit, Shape? focus)
    {
        var drawing = LiveNeck.Of(exhibit, focus, 900, hasLegend: true).Drawing;
        return (
            XElement.Parse(SvgWriter.Write(drawing, SvgTheme.Screen, "neck", isAlone: false)),
            XElement.Parse(SvgWriter.WriteGathered(drawing, SvgTheme.Screen, "neck"))
        );
    }

    [Theory]
    [MemberData(nameof(LiveNeckTests.Sentences), MemberType = typeof(LiveNeckTests))]
    public void Each_layer_draws_the_same_lines_letters_and_signs(string sentence)
    {
        var (plain, gathered) = Both(sentence);

        var layers = Layers(plain).ToList();
        Assert.Equal(layers.Select(Name), Layers(gathered).Select(Name));
        Assert.All(
            layers.Zip(Layers(gathered)),
            layer => Assert.Equal(Pieces(layer.First).Order(), Pieces(layer.Second).Order())
        );
    }

    [Theory]
    [MemberData(nameof(LiveNeckTests.Sentences), MemberType = typeof(LiveNeckTests))]
    public void No_ground_of_a_mark_is_drawn_over_a_letter(string sentence)
    {
        var marks = Layers(Both(sentence).Gathered).Where(layer => Name(layer) == "marks").Elements().ToList();
        foreach (var ground in marks.Where(one => one.Name.LocalName == "circle"))
        {
            var (x, y, radius) = (Number(ground, "cx"), Number(ground, "cy"), Number(ground, "r"));
            var before = marks.TakeWhile(one => one != ground).SelectMany(Letters);

            Assert.DoesNotContain(
                before,
                letter => Math.Pow(letter.X - x, 2) + Math.Pow(letter.Y - y, 2) < radius * radius
            );
        }
    }

    /// <summary>The rings, grounds and letters at one place are drawn in the order of the plain picture, whatever shape is brought out.</summary>
    [Theory]
    [InlineData("the scale, in fifth position, on a bass, in F# minor")]
    [InlineData("the seventh chords, on a guitar, in D major, in every inversion, as members")]
    [InlineData("the triads, on a ukulele, in Bb major, with fingers")]
    [InlineData("C, F and G7, on a banjo, strummed, as fingers")]
    [InlineData("the chord IV, on a mandolin, in Eb minor, in every inversion, for a left-handed player")]
    public void What_lies_at_one_place_keeps_its_order(string sentence)
    {
        var exhibit = ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!;
        foreach (var focus in exhibit.Shapes!.Value.Prepend(null))
        {
            var (plain, gathered) = Both(exhibit, focus);

            Assert.Equal(ByPlace(plain), ByPlace(gathered));
        }
    }

    // A line for each place of a mark: its circles, and the letters that stand on them, in the order drawn.
    private static IEnumerable<string> ByPlace(XElement svg)
    {
        var pieces = Layers(svg).Where(layer => Name(layer) == "marks").Descendants().SelectMany(Drawn).ToList();
        return pieces
            .Where(piece => piece.What[0] == 'r')
            .Select(piece => (piece.X, piece.Y))
            .Distinct()
            .Order()
            .Select(at => string.Join(" < ", pieces.Where(piece => IsAt(piece, at)).Select(piece => piece.What)));
    }

    private static bool IsAt((double X, double Y, string What) piece, (double X, double Y) at) =>
        Math.Abs(piece.X - at.X) < 0.1 && Math.Abs(piece.Y - at.Y) < 6;

    private static IEnumerable<(double X, double Y, string What)> Drawn(XElement one) =>
        one.Name.LocalName switch
        {
            "circle" =>
            [
                (Number(one, "cx"), Number(one, "cy"), $"r{one.Attribute("r")!.Value} {one.Attribute("class")}"),
            ],
            "text" => Letters(one)
                .Select(
                    (place, at) =>
                        (
                            place.X,
                            place.Y,
                            $"{(Places(one, "x").Count() == 1 ? one.Value : one.Value[at])} {one.Attribute("class")}"
                        )
                ),
            _ => [],
        };

    [Fact]
    public void A_neck_of_24_frets_takes_less_than_half_the_elements()
    {
        var (plain, gathered) = Both("the notes of the key, on a six-string bass, in D major, frets 0-24");

        Assert.InRange(gathered.Descendants().Count(), 1, plain.Descendants().Count() / 2);
    }

    private static IEnumerable<XElement> Layers(XElement svg) => svg.Elements().Where(one => one.Name.LocalName == "g");

    private static string Name(XElement layer) => (string)layer.Attribute("data-part")!;

    private static double Number(XElement element, string name) => (double)element.Attribute(name)!;

    private static IEnumerable<(double X, double Y)> Letters(XElement text) =>
        text.Name.LocalName != "text" ? [] : Places(text, "x").Zip(Places(text, "y"));

    private static IEnumerable<double> Places(XElement text, string name) =>
        ((string)text.Attribute(name)!)
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(place => double.Parse(place, CultureInfo.InvariantCulture));

    // Everything that is drawn, a line each.
    private static IEnumerable<string> Pieces(XElement layer) =>
        layer.Descendants().Where(one => one.Name.LocalName != "g").SelectMany(PiecesOf);

    private static IEnumerable<string> PiecesOf(XElement element)
    {
        var paint = string.Join(
            ' ',
            element
                .Attributes()
                .Where(one => one.Name.LocalName is not ("x" or "y" or "x1" or "y1" or "x2" or "y2" or "d"))
                .Where(one => (element.Name.LocalName, one.Value) != ("path", "none"))
        );
        return element.Name.LocalName switch
        {
            "line" =>
            [
                $"{paint} {string.Join(' ', new[] { "x1", "y1", "x2", "y2" }.Select(name => (string)element.Attribute(name)!))}",
            ],
            "path"
                when Lines.Matches((string)element.Attribute("d")!) is { Count: > 0 } lines
                    && string.Concat(lines) == (string)element.Attribute("d")! => lines.Select(line =>
                $"{paint} {string.Join(' ', line.Groups.Values.Skip(1).Select(number => number.Value))}"
            ),
            "text" when element.Value.Length == Places(element, "x").Count() => Letters(element)
                .Zip(
                    element.Value,
                    (place, letter) =>
                        string.Create(CultureInfo.InvariantCulture, $"{paint} {place.X} {place.Y} {letter}")
                ),
            _ => [element.ToString()],
        };
    }
}
