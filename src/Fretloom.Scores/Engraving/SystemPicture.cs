using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Fretloom.Scores.Engraving;

/// <summary>Makes of the engraver's picture one that fits the page: its size in millimetres, our letters, its notes and bars named as data.</summary>
internal static partial class SystemPicture
{
    private const string Family = "'Source Sans 3', sans-serif";

    // The engraver draws in tenths of its units.
    private const double MmPerUnit = EngravedPage.StaffMm / 720;

    // Strokes, picking fingers and counts: their size, and half of the head under whose middle they stand.
    private const double UnderHead = 350;
    private const double HalfHead = 113;

    // From the middle of a finger's figure to a stem that reaches as high: half of the figure and what can be seen between them. Ours, without source.
    private const double FromStem = 150;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly XNamespace XLink = "http://www.w3.org/1999/xlink";

    // Signs of music that the engraver takes from its own font for text, by their places in SMuFL 1.4 (those of figured bass).
    private static readonly Dictionary<char, string> Signs = new()
    {
        ['\uEA63'] = "𝄫",
        ['\uEA64'] = "♭",
        ['\uEA65'] = "♮",
        ['\uEA66'] = "♯",
        ['\uEA67'] = "𝄪",
    };

    /// <summary>Reads one page of the engraver.</summary>
    /// <param name="page">The engraver's picture.</param>
    /// <param name="name">What the ids of its signs begin with, like no other picture's.</param>
    /// <param name="heads">What is added above it.</param>
    public static EngravedSystem Of(string page, string name, SystemHeads heads)
    {
        var source = XElement.Parse(page);
        var scale = source.Elements(Svg + "svg").Single();
        var size = scale.Attribute("viewBox")!.Value.Split(' ');
        var (width, height) = (Number(size[2]), Number(size[3]));
        var bars = scale.Descendants().Where(element => Class(element) == "measure").Select(BarOf).ToList();
        var starts = scale
            .Descendants()
            .Where(element => Class(element) == "measure")
            .ToDictionary(BarOf, measure => MeasuredBar.Of(measure).Start);
        var music = Cleaned(scale.Element(Svg + "g")!);
        var (drawn, more) = heads.Above(starts, -EngravedPage.TopMargin);
        music.Add(drawn);
        music.SetAttributeValue("transform", $"translate(0, {Rounded(EngravedPage.TopMargin + more)})");
        height += more;
        var signs = source.Element(Svg + "defs")!;
        Rename(signs, music, name);
        var picture = new XElement(
            Svg + "svg",
            new XAttribute(XNamespace.Xmlns + "xlink", XLink),
            new XAttribute("width", Mm(width)),
            new XAttribute("height", Mm(height)),
            new XAttribute("viewBox", $"0 0 {Rounded(width)} {Rounded(height)}"),
            new XAttribute("color", "#1B1A17"),
            new XAttribute("fill", "currentColor"),
            new XAttribute("stroke", "currentColor"),
            new XAttribute("font-family", Family),
            signs,
            music
        );
        return new(
            picture.ToString(SaveOptions.DisableFormatting),
            width * MmPerUnit,
            height * MmPerUnit,
            bars[0],
            bars[^1]
        );
    }

    /// <summary>The bars of a page of the engraver with their places.</summary>
    public static IEnumerable<MeasuredBar> Bars(string page) =>
        XElement.Parse(page).Descendants().Where(element => Class(element) == "measure").Select(MeasuredBar.Of);

    private static int BarOf(XElement measure) =>
        int.Parse(measure.Attribute("id")!.Value[1..], CultureInfo.InvariantCulture);

    /// <summary>A picture with other ids.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="name">What its ids begin with, like no other picture's.</param>
    public static string Renamed(string svg, string name) => SignName().Replace(svg, $"$1{name}-$2\"");

    private static void Rename(XElement signs, XElement music, string name)
    {
        var names = signs
            .Elements()
            .Index()
            .ToDictionary(sign => "#" + sign.Item.Attribute("id")!.Value, sign => $"{name}-{sign.Index}");
        foreach (var sign in signs.Elements())
        {
            sign.SetAttributeValue("id", names["#" + sign.Attribute("id")!.Value]);
        }

        foreach (var use in music.Descendants(Svg + "use"))
        {
            var link = use.Attribute(XLink + "href")!;
            link.Value = "#" + names[link.Value];
        }
    }

    private static XElement Cleaned(XElement group)
    {
        foreach (var measure in group.Descendants(Svg + "g").Where(element => Class(element) == "measure"))
        {
            KeepFromStems(measure);
        }

        foreach (var text in group.Descendants(Svg + "text").ToList())
        {
            text.ReplaceWith(Letters(text).ToArray<object>());
        }

        foreach (var element in group.Descendants(Svg + "g").Reverse().ToList())
        {
            var id = element.Attribute("id")?.Value;
            element.Attribute("id")?.Remove();
            if (!element.HasElements)
            {
                element.Remove();
            }
            else if (Class(element) == "note")
            {
                element.SetAttributeValue("data-note", id![1..].Split('-')[0]);
            }
            else if (Class(element) == "measure")
            {
                element.SetAttributeValue("data-bar", id![1..]);
            }
        }

        return group;
    }

    // The engraver sees to it that fingers are clear of heads and beams, not of the end of a stem beside them.
    private static void KeepFromStems(XElement measure)
    {
        var stems = Of("stem")
            .Elements(Svg + "path")
            .Select(path => StemEnds().Match(path.Attribute("d")!.Value))
            .ToList();
        foreach (var text in Of("fing").Elements(Svg + "text").Where(text => text.Attribute("x") is not null))
        {
            var (x, y) = (Number(text.Attribute("x")!.Value), Number(text.Attribute("y")!.Value));
            var beside = stems.Find(stem =>
                Part(stem, 1) is var at && at > x && at < x + FromStem && Math.Min(Part(stem, 2), Part(stem, 3)) < y
            );
            if (beside is not null)
            {
                text.SetAttributeValue("x", Rounded(Part(beside, 1) - FromStem));
            }
        }

        IEnumerable<XElement> Of(string kind) =>
            measure.Descendants(Svg + "g").Where(element => Class(element) == kind);

        static double Part(Match stem, int number) => Number(stem.Groups[number].Value);
    }

    // A stem goes straight up or down.
    [GeneratedRegex(@"^M(\S+) (\S+) L\S+ (\S+)$")]
    private static partial Regex StemEnds();

    // The engraver nests spans, each with a size of its own.
    private static IEnumerable<XElement> Letters(XElement text)
    {
        var group = text.Ancestors(Svg + "g").First(group => Class(group) is not null);
        var kind = Class(group);
        var size = text.Descendants(Svg + "tspan")
            .Select(span => span.Attribute("font-size")?.Value)
            .OfType<string>()
            .Min(size => Number(size[..^2]));
        var words = string.Concat(text.Value.Select(sign => Signs.GetValueOrDefault(sign, sign.ToString())));
        var isUnderHead = kind == "dir";
        var x = Number(text.Attribute("x")?.Value ?? "0");
        yield return new XElement(
            Svg + "text",
            new XAttribute("x", Rounded(isUnderHead ? x + HalfHead : x)),
            text.Attribute("y"),
            isUnderHead ? new XAttribute("text-anchor", "middle")
                : text.Attribute("x") is null ? null
                : text.Attribute("text-anchor"),
            new XAttribute("font-size", Rounded(isUnderHead ? UnderHead : size)),
            IsBold(group) ? new XAttribute("font-weight", 600) : null,
            new XAttribute("stroke", "none"),
            words
        );
    }

    // The id of a sign, or a link to it: what it begins with, and its number.
    [GeneratedRegex("((?: id|:href)=\"#?)[^\"]*-([0-9]+)\"")]
    private static partial Regex SignName();

    private static bool IsBold(XElement group) =>
        Class(group) == "fing"
        || (
            Class(group) == "harm"
            && group.Attribute("id")?.Value.StartsWith(MeiBar.Roman, StringComparison.Ordinal) != true
        );

    private static string? Class(XElement element) => element.Attribute("class")?.Value;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Mm(double units) => Rounded(units * MmPerUnit) + "mm";

    private static string Rounded(double number) => Math.Round(number, 2).ToString(CultureInfo.InvariantCulture);
}
