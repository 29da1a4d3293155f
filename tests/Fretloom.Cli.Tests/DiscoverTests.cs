using System.Xml.Linq;

namespace Fretloom.Cli.Tests;

public class DiscoverTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

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
        Assert.Contains("Laws\n6.  In every", call.Output, StringComparison.Ordinal);
        Assert.Contains("\n5.  ", call.Output, StringComparison.Ordinal);
        Assert.Contains("\n10. ", call.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("\n11. ", call.Output, StringComparison.Ordinal);
        Assert.All(call.Output.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    // A teacher reads how often it is true; scores and steps are for programs.
    [Fact]
    public void Plain_words_are_used_and_a_family_is_told_by_its_short_sentence()
    {
        var call = Call.Fretloom("discover", Scope);
        Assert.DoesNotContain("score", call.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Nearest failure: steps", call.Output, StringComparison.Ordinal);
        Assert.DoesNotContain(" %", call.Output, StringComparison.Ordinal);
        Assert.Contains(
            ".  In every major key, on guitar strings 4-1, at the full frets string 3 sounds\n    degrees 1, 4 and 5.\n    In full: ",
            call.Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_empty_list_of_laws_says_why()
    {
        var call = Call.Fretloom("discover", "on a ukulele, in every major key", "--count", "1");
        Assert.Contains(
            "\nLaws\nNone. Laws are looked for among tunings that ascend",
            call.Output,
            StringComparison.Ordinal
        );
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
            Assert.All(
                page.Descendants("ol").Elements("li"),
                line =>
                {
                    var necks = line.Elements("details")
                        .Where(one => one.Attribute("class")?.Value == "necks")
                        .ToList();
                    Assert.Equal(2, necks.Count);
                    Assert.StartsWith("On the neck, in ", necks[0].Element("summary")!.Value, StringComparison.Ordinal);
                    Assert.StartsWith(
                        "Nearest failure: ",
                        necks[1].Element("summary")!.Value,
                        StringComparison.Ordinal
                    );
                    Assert.EndsWith(".", necks[1].Element("p")!.Value, StringComparison.Ordinal);
                    Assert.All(necks, neck => Assert.NotEmpty(neck.Descendants(Svg + "svg")));
                    Assert.All(necks, neck => Assert.Null(neck.Attribute("open")));
                }
            );
            var ids = page.Descendants().Attributes("id").Select(id => id.Value).ToList();
            Assert.Equal(ids.Distinct(), ids);
            Assert.Equal(["1", "6"], page.Descendants("ol").Select(list => list.Attribute("start")!.Value));
            Assert.Empty(page.Descendants("script"));
            Assert.Empty(page.Descendants("link"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void A_line_can_be_seen_with_its_nearest_failure()
    {
        var call = Call.Fretloom("discover", Scope, "--count", "2", "--picture", "1");
        Assert.Equal((0, ""), (call.Code, call.Error));

        // C and E on strings 4-1, frets counted by hand.
        Assert.StartsWith(
            "1.  In every major key, on guitar strings 4-1, the half-turn swaps degree 1 and\n    degree 3.\n",
            call.Output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            """
            On the neck, in C major:

            1 E  3 ║───┼───┼───┼───┼───┼───┼───┼(1)┼───┼───┼───┼
            2 B    ║(1)┼───┼───┼───┼─3─┼───┼───┼───┼───┼───┼───┼
            3 G    ║───┼───┼───┼───┼(1)┼───┼───┼───┼─3─┼───┼───┼
            4 D    ║───┼─3─┼───┼───┼───┼───┼───┼───┼───┼(1)┼───┼
                 0   1   2   3   4   5   6   7   8   9  10  11
                                     ◆                       ◆
            """,
            call.Output,
            StringComparison.Ordinal
        );
        Assert.Contains("◆ half-turn", call.Output, StringComparison.Ordinal);
        Assert.Contains(
            "\nNearest failure: guitar tuned E2 A2 C♯3 G3 B3 E4 strings 4-1, in C major.\n",
            call.Output,
            StringComparison.Ordinal
        );
        Assert.Contains("\n4 C♯", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_law_has_a_number_too()
    {
        var call = Call.Fretloom("discover", Scope, "--count", "2", "--picture", "3");
        Assert.StartsWith("3.  In every", call.Output, StringComparison.Ordinal);
        Assert.Contains("on every 4 string tuning", call.Output, StringComparison.Ordinal);
        Assert.Contains("On the neck, in C major:", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_was_not_found_is_named_with_those_that_were()
    {
        var call = Call.Fretloom("discover", Scope, "--count", "2", "--picture", "5");
        Assert.Equal(
            (2, "", "There is no line 5: 2 landmarks and 2 laws were found, 1 to 4.\n"),
            (call.Code, call.Output, call.Error)
        );
    }

    [Theory]
    [InlineData("--json")]
    [InlineData("--out", "report.html")]
    public void A_picture_is_text_and_nothing_else(params string[] other)
    {
        var call = Call.Fretloom(["discover", Scope, "--picture", "1", .. other]);
        Assert.Equal(2, call.Code);
        Assert.Contains("--picture prints text", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void As_JSON_every_claim_has_sentences_that_show_it_and_the_reason_why_it_fails_elsewhere()
    {
        var call = Call.Fretloom("discover", Scope, "--count", "5", "--json");
        Assert.All(
            call.Json.GetProperty("claims").EnumerateArray(),
            claim =>
            {
                var pictures = claim.GetProperty("pictures").EnumerateArray().Select(one => one.GetString()!).ToList();
                Assert.NotEmpty(pictures);
                Assert.All(pictures, sentence => Assert.Equal(0, Call.Fretloom("show", sentence).Code));
                Assert.EndsWith(
                    ".",
                    claim.GetProperty("nearestFailure").GetProperty("why").GetString(),
                    StringComparison.Ordinal
                );
            }
        );
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
    [InlineData("--count", "x")]
    [InlineData("--picture", "0")]
    [InlineData("--picture", "-1")]
    [InlineData("--picture", "1.5")]
    [InlineData("--picture", "x")]
    [InlineData("--out", "report.txt")]
    public void A_wrong_option_is_refused(string option, string value)
    {
        var call = Call.Fretloom("discover", Scope, option, value);
        Assert.Equal((2, ""), (call.Code, call.Output));
        Assert.DoesNotContain("inside", call.Error, StringComparison.Ordinal);
    }
}
