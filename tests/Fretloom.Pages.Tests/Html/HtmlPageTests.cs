using System.Text.RegularExpressions;
using System.Xml.Linq;
using Fretloom.Lessons;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Html;
using Fretloom.Pages.Pdf;
using Fretloom.Pages.Tests.Documents;
using Fretloom.Testing;

namespace Fretloom.Pages.Tests.Html;

public partial class HtmlPageTests
{
    private static readonly string[] Headings = ["h1", "h2", "h3", "h4", "h5", "h6"];
    private static readonly XDocument Sample = Parsed(Samples.EveryConstruct);

    // The page is written as XML too, so that an XML parser finds every tag that is not closed and every text not escaped.
    private static XDocument Parsed(Lesson lesson) =>
        XDocument.Parse(
            HtmlPage.Of(lesson, "sample.md").Replace("<!doctype html>", "", StringComparison.Ordinal),
            LoadOptions.PreserveWhitespace
        );

    private static IEnumerable<XElement> All(XContainer page, string name) =>
        page.Descendants().Where(element => element.Name.LocalName == name);

    private static string? Value(XElement element, string attribute) => element.Attribute(attribute)?.Value;

    [Fact]
    public void The_body_reads_as_approved()
    {
        var body = All(Sample, "body").Single().ToString(SaveOptions.DisableFormatting);

        Approved.Matches(
            Drawing().Replace(body, "<svg/>"),
            "Fretloom.Pages.Tests",
            "Html",
            "Expectations",
            "every-construct.html"
        );
    }

    [Fact]
    public void What_is_wide_for_a_hand_is_said_below_its_picture()
    {
        var figure = All(Parsed(Samples.Wide), "figure").First();

        Assert.Equal(
            ["Wide for a hand of 189 mm on this instrument: V7 at fret 1 (128 mm between fingers 1 and 4)."],
            All(figure, "p").Where(words => Value(words, "class") == "reach").Select(words => words.Value)
        );
        Assert.Contains("128 mm, wide 1–4", figure.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void For_a_hand_that_is_named_a_table_says_what_to_do_instead()
    {
        var figure = All(Parsed(Samples.Wide), "figure").ElementAt(2);
        var summary = All(figure, "p").Single(words => Value(words, "class") == "reach").Value;
        var cells = All(All(figure, "table").First(), "td").Select(cell => cell.Value).ToList();

        Assert.Equal("1 of 2 shapes is in reach of a hand of 165 mm, 1 is very wide.", summary);
        Assert.Equal("very wide, 128 mm between fingers 1 and 4", cells[0]);
        Assert.Contains("frets", cells[1], StringComparison.Ordinal);
    }

    [Fact]
    public void General_words_of_caution_stand_once_on_a_page_for_each_kind_of_hand()
    {
        var notes = All(Parsed(Samples.Wide), "div").Where(block => Value(block, "role") == "note").ToList();

        Assert.Equal(2, notes.Count);
        Assert.Contains("Warm up first", notes[0].Value, StringComparison.Ordinal);
        Assert.Contains("tell your teacher or a parent", notes[1].Value, StringComparison.Ordinal);
        Assert.All(notes, note => Assert.Equal(Value(All(note, "p").First(), "id"), Value(note, "aria-labelledby")));
    }

    [Fact]
    public void Where_nothing_is_wide_nothing_is_said() =>
        Assert.DoesNotContain(
            Parsed(Samples.InReach).Descendants(),
            element => Value(element, "class") is "reach" or "caution"
        );

    [Fact]
    public void Nothing_is_called_safe() =>
        Assert.DoesNotContain(
            "safe",
            All(Parsed(Samples.Wide), "body").Single().Value,
            StringComparison.OrdinalIgnoreCase
        );

    [Fact]
    public void A_page_forbids_itself_to_load_anything_and_has_no_script()
    {
        var policy = All(Sample, "meta").Single(meta => Value(meta, "http-equiv") == "Content-Security-Policy");

        Assert.StartsWith("default-src 'none';", Value(policy, "content"), StringComparison.Ordinal);
        Assert.Empty(All(Sample, "script"));
        Assert.DoesNotContain(
            Sample.Descendants().Attributes(),
            attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
        );
    }

    [Fact]
    public void A_page_needs_no_other_file()
    {
        var css = string.Concat(All(Sample, "style").Select(style => style.Value));

        Assert.All(
            Address().Matches(css),
            match => Assert.StartsWith("url(data:", match.Value, StringComparison.Ordinal)
        );
        Assert.DoesNotContain("@import", css, StringComparison.Ordinal);
        Assert.DoesNotContain(Sample.Descendants().Attributes(), attribute => attribute.Name.LocalName == "src");
        Assert.Equal(
            ["#lesson", "https://example.org/a?b=c&d"],
            Sample.Descendants().Attributes("href").Select(attribute => attribute.Value)
        );
    }

    [Fact]
    public void Headings_follow_each_other_without_a_gap()
    {
        var levels = Sample
            .Descendants()
            .Select(element => Array.IndexOf(Headings, element.Name.LocalName) + 1)
            .Where(level => level > 0)
            .ToList();

        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
    }

    [Fact]
    public void A_heading_in_a_quote_opens_no_section()
    {
        var page = Parsed(Samples.WithText("> # a\n\n## b\n\ntext\n\n# c"));

        Assert.Equal(
            ["h1", "h2", "h3", "h2"],
            page.Descendants().Select(element => element.Name.LocalName).Where(Headings.Contains)
        );
        Assert.Equal(2, All(page, "section").Count());
    }

    [Fact]
    public void Every_reference_inside_the_page_is_met_and_every_name_stands_once()
    {
        var ids = Sample.Descendants().Attributes("id").Select(attribute => attribute.Value).ToList();
        var references = Sample
            .Descendants()
            .Attributes()
            .Where(attribute => attribute.Name.LocalName is "aria-labelledby" or "aria-describedby")
            .SelectMany(attribute => attribute.Value.Split(' '));

        Assert.Equal(ids.Distinct(), ids);
        Assert.Empty(references.Except(ids));
        Assert.Contains("lesson", ids);
    }

    [Fact]
    public void Every_picture_is_described_and_has_its_content_as_a_table()
    {
        Assert.All(
            All(Sample, "figure"),
            figure =>
            {
                var drawing = figure.Descendants().First(element => element.Name.LocalName == "svg");
                Assert.Equal("img", Value(drawing, "role"));
                Assert.NotEmpty(drawing.Elements().First(element => element.Name.LocalName == "title").Value);
                Assert.NotEmpty(drawing.Elements().First(element => element.Name.LocalName == "desc").Value);
                Assert.Single(figure.Descendants("details").Descendants("table"));
            }
        );
        Assert.Equal(2, All(Sample, "figure").Count());
    }

    [Fact]
    public void The_author_s_description_stands_before_the_computed_one() =>
        Assert.Equal(
            "The dominant seventh runs from fret 5 of string 4 to fret 1 of string 1.",
            All(Sample, "figure").Last().Descendants().First(element => element.Name.LocalName == "desc").Value
        );

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\" onload=\"alert(1)")]
    [InlineData("a & b < c > d ' e \u0001 \uFFFF")]
    public void Whatever_the_author_writes_is_text(string hostile)
    {
        var yaml = "'" + hostile.Replace("'", "''", StringComparison.Ordinal) + "'";
        var text = $"""
            ---
            title: {yaml}
            subtitle: {yaml}
            course: {yaml}
            ---

            {hostile} [x](https://example.org/"onclick="x) `{hostile}`

            ```text
            {hostile}
            ```

            ```show
            the landmarks
            caption: {yaml}
            title: {yaml}
            alt: {yaml}
            ```
            """;
        if (hostile.Contains('\u0001', StringComparison.Ordinal))
        {
            // YAML itself refuses control characters.
            text = text.Replace(yaml, "T", StringComparison.Ordinal);
        }

        var page = Parsed(Lesson.Parse(text));

        Assert.Empty(All(page, "script"));
        Assert.DoesNotContain(
            page.Descendants().Attributes(),
            attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
        );
    }

    [Fact]
    public void Any_lesson_gives_a_page_that_is_well_formed() =>
        Gen.OneOf(Scraps)
            .Array[0, 40]
            .Sample(
                scraps => Assert.NotNull(XDocument.Parse(BodyOf(Samples.WithText(string.Concat(scraps)))).Root),
                iter: 2000
            );

    // Without the head: half a megabyte of fonts that is the same on every page.
    private static string BodyOf(Lesson lesson)
    {
        var html = new HtmlText().Open("body");
        new BlockHtml(html, new PicturedLesson(lesson)).WriteSections(lesson.Blocks);
        return html.Close().ToString();
    }

    [Fact]
    public void Paper_can_be_chosen()
    {
        Assert.Contains("size: A4", HtmlPage.Of(Samples.EveryConstruct), StringComparison.Ordinal);
        Assert.Contains(
            "size: letter",
            HtmlPage.Of(Samples.EveryConstruct, paper: Paper.Letter),
            StringComparison.Ordinal
        );
    }

    private static readonly string[] Scraps =
    [
        "\n",
        "\n\n",
        "# ",
        "### ",
        "- ",
        "1. ",
        "> ",
        "    ",
        "*",
        "**",
        "`",
        "```\n",
        "<b>",
        "&",
        "\"",
        "'",
        "|a|b|\n|-|-|\n|c|\n",
        "- [ ] a\n",
        "[x](https://example.org/?a&b)",
        "text ",
        "\u0001",
        "\uD834",
        "---\n",
        "a\\\nb",
    ];

    [GeneratedRegex("<svg.*?</svg>", RegexOptions.Singleline)]
    private static partial Regex Drawing();

    [GeneratedRegex(@"url\([^)]{0,20}")]
    private static partial Regex Address();
}
