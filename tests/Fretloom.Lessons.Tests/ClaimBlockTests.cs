using Fretloom.Claims;
using Fretloom.Lessons.Syntax;
using Fretloom.Theory;

namespace Fretloom.Lessons.Tests;

/// <summary>Verdicts that are not worked out here stand in the table of judged claims (references/claims.csv), computed by a separate program.</summary>
public class ClaimBlockTests
{
    private const string Front = "---\ntitle: T\ninstrument: guitar\nstrings: 4-1\nkey: F major\n---\n";

    private static Lesson WithClaim(string lines) => Lesson.Parse($"{Front}```claim\n{lines}\n```\n");

    [Fact]
    public void A_claim_takes_instrument_and_strings_of_the_lesson()
    {
        var statement = WithClaim("In every major key, there are exactly 3 full frets.").Single<Block.Statement>();

        Assert.Equal(
            "In every major key, on guitar strings 4-1, there are exactly 3 full frets.",
            statement.Verdict.Sentence.ToString()
        );
        Assert.Equal((Verdict.Holds, 12L), (statement.Verdict.Verdict, statement.Verdict.Cases));
    }

    [Fact]
    public void A_capo_of_the_lesson_goes_with_its_instrument()
    {
        var lesson = Lesson.Parse(
            "---\ntitle: T\ncapo: 2\n---\n```claim\nIn every major key, there is at least 1 full fret.\n```\n"
        );

        Assert.EndsWith(
            "with a capo at 2, there is at least 1 full fret.",
            lesson.Single<Block.Statement>().Verdict.Sentence.ToString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_claim_that_fails_is_an_error_at_its_line_with_reason_and_repair()
    {
        var lesson = WithClaim("In every major key, there are exactly 4 full frets.");

        var found = Assert.Single(lesson.Diagnostics);
        Assert.Equal((8, 1, Severity.Error), (found.Line, found.Column, found.Severity));
        Assert.StartsWith(
            "Fails in 12 of 12 keys. In C major, on guitar strings 4-1, ",
            found.Message,
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "It holds if you write \"there are exactly 3 full frets\".",
            found.Message,
            StringComparison.Ordinal
        );
        Assert.Equal(
            (found.Message, found.Line),
            (lesson.Single<Block.Problem>().Message, lesson.Single<Block.Problem>().At)
        );
        Assert.False(Assert.Single(lesson.Claims).IsAsExpected);
    }

    [Fact]
    public void A_claim_that_is_expected_to_fail_is_no_error()
    {
        var lesson = WithClaim("In every major key, on frets 0 to 12, there are exactly 3 full frets.\nexpect: fails");

        Assert.Empty(lesson.Diagnostics);
        Assert.Equal(3, lesson.Single<Block.Statement>().Verdict.Failing);
    }

    [Theory]
    [InlineData(
        "In every major key, there are exactly 3 full frets.\nexpect: fails",
        "9:9: error: This claim does not fail, as 'expect: fails' says it does. Holds in 12 of 12 keys."
    )]
    [InlineData(
        "In every key, there are exactly 3 full frets.\nexpect: maybe",
        "9:9: error: 'maybe' is not a verdict to expect; expected 'holds' or 'fails'."
    )]
    [InlineData(
        "In every major key, there are exactly 3 full frets.\nwidth: half",
        "9:1: error: 'width' is not known here; expected one of: caption, title, expect."
    )]
    [InlineData("In every major key,\nthere are exactly 3 ful frets.", "9:21: error: ")]
    [InlineData(
        "",
        "7:1: error: The block is empty; write a claim such as 'In every major key, there are exactly 3 full frets.'"
    )]
    [InlineData(
        "In every major key, on every listed string set, every third shape of strings 9-8 spans at most 5 frets.",
        "8:1: error: Does not apply: there is no string set that it can be asked of."
    )]
    [InlineData(
        "In C major, on frets 0 to 3, every empty fret lies next to a full fret.",
        "8:1: warning: Nothing to test in C major: what this claim speaks of is nowhere to be found."
    )]
    public void What_is_wrong_is_said_where_it_stands(string lines, string expected) =>
        Assert.Contains(expected, WithClaim(lines).Found(), StringComparison.Ordinal);

    [Fact]
    public void A_claim_that_would_take_too_long_is_an_error()
    {
        var many = string.Join(
            " and ",
            Enumerable.Repeat("every seventh shape of strings 4-1 spans at most 5 frets", 20)
        );

        var found = Assert.Single(
            WithClaim($"In every mode, on every 8 string tuning, on frets 0 to 12, {many}.").Diagnostics
        );

        Assert.Equal((8, Severity.Error), (found.Line, found.Severity));
        Assert.Contains("more than the 60 seconds allowed", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void In_another_key_a_claim_keeps_its_own_keys()
    {
        var lesson = WithClaim("In every major key, there are exactly 3 full frets.");
        var moved = lesson.InKey(Key.Parse("A major")).Single<Block.Statement>();

        Assert.Same(lesson.Single<Block.Statement>().Verdict, moved.Verdict);
        Assert.Equal("A major", moved.Key.ToString());
    }

    [Fact]
    public void Claims_stand_in_lists_too_and_are_numbered()
    {
        var lesson = Lesson.Parse(
            Front
                + "1. Look.\n\n   ```claim\n   In every major key, there are exactly 3 full frets.\n   ```\n\n"
                + "```claim\nIn every major key, there is exactly 1 empty fret.\ntitle: One\ncaption: \"in {key}\"\n```\n"
        );

        var statements = Lessons.All(lesson.Blocks).OfType<Block.Statement>().ToList();
        Assert.Equal([1, 2], statements.Select(statement => statement.Number));
        Assert.Equal(("One", "in F major"), (statements[1].Options.Title, statements[1].Options.Caption));
        Assert.Equal([9, 13], lesson.Claims.Select(claim => claim.Line));
    }

    [Fact]
    public void String_sets_have_names_of_the_authors_own()
    {
        var lesson = Lesson.Parse(
            "---\ntitle: T\nstring-sets:\n  thin: 4-1\n  low four: 6-3\n---\n```claim\nIn every major key, on the low four strings, there is at least 1 full fret.\n```\n"
        );

        Assert.Equal("", lesson.Found());
        Assert.Contains(
            "guitar strings 6-3",
            lesson.Single<Block.Statement>().Verdict.Sentence.ToString(),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("string-sets: 4-1", "3:14: error: 'string-sets' takes lines of its own below it")]
    [InlineData("string-sets:\n  top: 9-1", "4:8: error: ")]
    [InlineData("string-sets:\n  top: 3-1\n  top: 4-2", "5:3: error: 'top' stands twice")]
    [InlineData("string-sets:\n  top: 3-1\n  TOP: 4-2", "5:3: error: 'TOP' cannot name strings")]
    [InlineData("string-sets:\n  4 of: 3-1", "4:3: error: '4 of' cannot name strings")]
    [InlineData("string-sets:\n  all: 3-1", "4:3: error: 'all' cannot name strings")]
    [InlineData("string-sets:\n  top:\n    a: 3-1", "5:5: error: Expected a name, a colon and a value on one line.")]
    [InlineData("string-sets:\n  title: 3-1\nstring-sets:\n  a: 2-1", "5:1: error: 'string-sets' stands twice")]
    public void A_set_without_a_usable_name_is_pointed_at(string lines, string expected) =>
        Assert.Contains(expected, Lessons.WithFront("title: T\n" + lines).Found(), StringComparison.Ordinal);
}
