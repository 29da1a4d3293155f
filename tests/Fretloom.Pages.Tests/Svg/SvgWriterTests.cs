using System.Xml.Linq;
using Fretloom.Pages.Scene;
using Fretloom.Pages.Svg;
using Fretloom.Testing;

namespace Fretloom.Pages.Tests.Svg;

public class SvgWriterTests
{
    private static readonly Drawing Columns = new(
        100.004,
        50,
        "Full & empty",
        "Two columns: <full> and \"empty\".",
        [
            new Node.Rect(1.005, -0.0001, 10, 40, Tone.Full),
            new Node.Rect(20, 0, 10, 40, Tone.Empty, new Stroke(Tone.Ink, 1)),
            new Node.Label(5, 48, "B♭ < C", new TextStyle(Face.SerifBold, 9), Tone.Quiet, Anchor.Middle),
        ]
    );

    [Fact]
    public void Writing_is_escaped_and_named_for_those_who_do_not_see_it()
    {
        var svg = XDocument.Parse(SvgWriter.Write(Columns, SvgTheme.Print, "fig-1")).Root!;
        XNamespace ns = "http://www.w3.org/2000/svg";
        Assert.Equal("Full & empty", svg.Element(ns + "title")!.Value);
        Assert.Equal("Two columns: <full> and \"empty\".", svg.Element(ns + "desc")!.Value);
        Assert.Equal("img", (string?)svg.Attribute("role"));
        Assert.Equal("fig-1-title fig-1-desc", (string?)svg.Attribute("aria-labelledby"));
        Assert.Equal("B♭ < C", svg.Element(ns + "text")!.Value);
    }

    [Fact]
    public void Numbers_have_two_decimals_at_most_and_no_negative_zero()
    {
        var text = SvgWriter.Write(Columns, SvgTheme.Print);
        Assert.Contains("width=\"100pt\"", text, StringComparison.Ordinal);
        Assert.Contains("y=\"0\"", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"=""-?\d+\.\d{3,}""", text);
        Assert.DoesNotContain("\"-0\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Printed_files_use_no_style_sheet_and_nothing_from_elsewhere()
    {
        foreach (var theme in (SvgTheme[])[SvgTheme.Print, SvgTheme.BlackAndWhite])
        {
            var text = SvgWriter.Write(Columns, theme);
            Assert.DoesNotContain("<style", text, StringComparison.Ordinal);
            Assert.DoesNotContain("var(", text, StringComparison.Ordinal);
            Assert.DoesNotContain("class=\"fill", text, StringComparison.Ordinal);
            Assert.DoesNotContain("href", text, StringComparison.Ordinal);
            Assert.Contains("url(#picture-full)", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Black_and_white_has_no_other_colour() =>
        Assert.DoesNotMatch(
            "#(?!000000|FFFFFF|picture)[0-9A-Fa-f]{6}",
            SvgWriter.Write(Columns, SvgTheme.BlackAndWhite)
        );

    [Fact]
    public void On_screen_the_page_gives_the_colours()
    {
        var inPage = SvgWriter.Write(Columns, SvgTheme.Screen, "fig-1", isAlone: false);
        Assert.DoesNotContain("<style", inPage, StringComparison.Ordinal);
        Assert.DoesNotMatch("(fill|stroke)=\"#", inPage);
        Assert.Contains("<style>", SvgWriter.Write(Columns, SvgTheme.Screen), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_class_has_a_rule()
    {
        foreach (var tone in Enum.GetValues<Tone>().Except([Tone.None, Tone.Empty]))
        {
            Assert.Contains($".fill-{ScreenCss.Name(tone)} ", SvgTheme.ScreenStyles, StringComparison.Ordinal);
            Assert.Contains($".line-{ScreenCss.Name(tone)} ", SvgTheme.ScreenStyles, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_style_sheet_for_screens() =>
        Approved.Matches(SvgTheme.ScreenStyles, "Fretloom.Pages.Tests", "Svg", "Expectations", "screen.css");

    [Theory]
    [InlineData("")]
    [InlineData("1a")]
    [InlineData("a b")]
    [InlineData("a\"")]
    public void An_id_that_could_break_the_file_is_refused(string id) =>
        Assert.Throws<ArgumentException>(() => SvgWriter.Write(Columns, SvgTheme.Print, id));
}
