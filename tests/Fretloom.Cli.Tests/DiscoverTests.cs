using System.Xml.Linq;

namespace Fretloom.Cli.Tests;

public class DiscoverTests
{
    private const string Scope = "on a guitar, on strings 4-1, in every major key";

    [Fact]
    public void Both_lists_are_printed()
    {
        var call = Call.Fretloom("discover", Scope, "--count", "5");
        Assert.Equal((0, ""), (call.Code, call.Error));
        Assert.Contains(
            "Landmarks here\n1.  In every major key, on guitar strings 4-1,",
            call.Output,
            StringComparison.Ordinal
        );
        Assert.Contains("Laws\n1.  In every", call.Output, StringComparison.Ordinal);
        Assert.Contains("\n5.  ", call.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("\n6.  ", call.Output, StringComparison.Ordinal);
        Assert.All(call.Output.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void As_JSON_every_claim_has_its_cases_and_score_and_can_be_checked()
    {
        var call = Call.Fretloom("discover", Scope, "--count", "5", "--json");
        var claims = call.Json.GetProperty("claims").EnumerateArray().ToList();
        Assert.Equal(10, claims.Count);
        Assert.Equal(5, claims.Count(claim => claim.GetProperty("list").GetString() == "laws"));
        Assert.All(claims, claim => Assert.InRange(claim.GetProperty("cases").GetInt64(), 12, 63_888));
        Assert.All(claims, claim => Assert.InRange(claim.GetProperty("score").GetDouble(), -5, 15));
        Assert.Equal(call.Output, Call.Fretloom("discover", Scope, "--count", "5", "--json").Output);
    }

    [Fact]
    public void A_report_needs_no_other_file()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var path = Path.Combine(folder.FullName, "report.html");
            var call = Call.Fretloom("discover", Scope, "--count", "5", "--out", path);
            Assert.Equal((0, path + "\n"), (call.Code, call.Output));
            var page = XDocument.Parse(
                File.ReadAllText(path).Replace("<!doctype html>\n", "", StringComparison.Ordinal)
            );
            Assert.Equal(2, page.Descendants("ol").Count());
            Assert.Equal(10, page.Descendants("ol").Elements("li").Count());
            Assert.Empty(page.Descendants("script"));
            Assert.Empty(page.Descendants("link"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData("on a guitar, on strings 4-1")]
    [InlineData("on a guitar, in evry major key")]
    public void A_wrong_scope_is_an_error_with_its_place(string scope)
    {
        var call = Call.Fretloom("discover", scope, "--json");
        Assert.Equal(2, call.Code);
        Assert.True(call.Json.GetProperty("error").GetProperty("column").GetInt32() > 1);
    }

    [Theory]
    [InlineData("--count", "0")]
    [InlineData("--count", "101")]
    [InlineData("--out", "report.txt")]
    public void A_wrong_option_is_refused(string option, string value) =>
        Assert.Equal(2, Call.Fretloom("discover", Scope, option, value).Code);
}
