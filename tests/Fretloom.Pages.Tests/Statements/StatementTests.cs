using System.Xml.Linq;
using Fretloom.Claims;
using Fretloom.Lessons;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Html;
using Fretloom.Pages.Statements;
using Fretloom.Pages.Tests.Pdf;
using Fretloom.Pages.Text;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Pages.Tests.Statements;

/// <summary>Verdicts stand in the table of judged claims (references/claims.csv), computed by a separate program.</summary>
public class StatementTests(TypstFixture typst)
{
    private const string Failing =
        "In every major key, on guitar strings 4-1, on frets 0 to 12, there are exactly 3 full frets.";

    private static ClaimVerdict Checked(string claim) => ClaimChecker.Check(ClaimParser.Parse(claim).Value!);

    private static Lesson WithClaim(string claim, string key = "F major") =>
        Lesson.Parse($"---\ntitle: T\nkey: {key}\n---\n```claim\n{claim}\ncaption: Look\n```\n");

    [Fact]
    public void Ticks_go_up_in_fifths_from_the_key_of_the_lesson()
    {
        var row = Assert.Single(KeyRow.Of(Checked(Failing), Key.Parse("F major")));

        Assert.Equal("F C G D A E B G♭ D♭ A♭ E♭ B♭", string.Join(' ', row.Ticks.Select(tick => tick.Tonic)));
        Assert.Equal(
            ["C", "G", "D"],
            row.Ticks.Where(tick => tick.Verdict == Verdict.Fails).Select(tick => tick.Tonic)
        );
    }

    [Fact]
    public void Each_kind_of_key_has_a_row_and_a_single_key_none()
    {
        var rows = KeyRow.Of(Checked("In every key, on bass, there is at least 1 full fret."), Key.Parse("C major"));

        Assert.Equal(["major", "natural minor", "harmonic minor", "melodic minor"], rows.Select(row => row.Kind));
        Assert.All(rows, row => Assert.Equal(12, row.Ticks.Count));
        Assert.Empty(KeyRow.Of(Checked("In C major, on bass, there is at least 1 full fret."), Key.Parse("C major")));
    }

    [Fact]
    public void A_web_page_says_the_verdict_without_colour_and_pictures()
    {
        var html = HtmlPage.Of(WithClaim(Failing + "\nexpect: fails"));

        var statement = Assert.Single(
            XDocument.Parse(html[html.IndexOf("<html", StringComparison.Ordinal)..]).Descendants("div"),
            div => ((string?)div.Attribute("class"))?.StartsWith("statement", StringComparison.Ordinal) == true
        );
        Assert.Contains(Failing, statement.Value, StringComparison.Ordinal);
        Assert.Contains("Fails in 3 of 12 keys", statement.Value, StringComparison.Ordinal);
        Assert.Contains("It fails in C, D and G major.", statement.Value, StringComparison.Ordinal);
        Assert.Contains("C fails", statement.Value, StringComparison.Ordinal);
        Assert.Contains("F holds", statement.Value, StringComparison.Ordinal);
        Assert.Contains(
            "Ringed, where it fails: fret 0, fret 5, fret 10 and fret 12.",
            statement.Value,
            StringComparison.Ordinal
        );
        Assert.Contains("Look", statement.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_PDF_holds_the_strip_and_its_neck()
    {
        var lesson = WithClaim(Failing + "\nexpect: fails");

        var text = TypstFixture.TextOf(PdfDocument.Of(lesson, new PrintOptions(), typst.Compiler));

        Assert.Contains("Fails in 3 of 12 keys", text, StringComparison.Ordinal);
        Assert.Contains("It fails in C, D and G major.", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("In every major key, on guitar strings 2-1, the third shape on degree 1 spans exactly 5 frets.", true)]
    [InlineData(Failing, false)]
    public void A_neck_stands_beside_the_claim_where_it_is_short(string claim, bool isAside)
    {
        var neck = StatementPicture.Of(Checked(claim), 482, new());

        Assert.Equal(isAside, neck?.IsAside);
        Assert.InRange(neck!.Value.Picture.Drawing.Width, 60, isAside ? 482 * StatementPicture.AsideShare + 1 : 483);
    }

    [Fact]
    public void No_neck_is_drawn_where_no_place_on_it_is_to_blame() =>
        Assert.Null(
            StatementPicture.ExhibitOf(Checked("In every major key, on guitar, the string set is palindromic."))
        );

    [Theory]
    [InlineData(30)]
    [InlineData(80)]
    public void Text_keeps_to_its_width(int width) =>
        Assert.All(ClaimText.Write(Checked(Failing), width).Split('\n'), line => Assert.InRange(line.Length, 0, width));
}
