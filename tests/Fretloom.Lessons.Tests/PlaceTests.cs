using Fretloom.Lessons.Syntax;

namespace Fretloom.Lessons.Tests;

/// <summary>A finding inside a sentence points at the very character, wherever the block stands.</summary>
public class PlaceTests
{
    private const string Wrong = "frobnications";

    public static TheoryData<string> Around =>
        [
            "```show\nthe frobnications, frets 0-4\n```",
            "```show\nthe triads,\n  the frobnications\ncaption: C\n```",
            "   ```show\n   the frobnications\n   ```",
            "~~~show\nthe frobnications\n~~~",
            "- entry\n\n  ```show\n  the frobnications\n  ```",
            "1. entry\n   - inner\n\n     ```show\n     the triads,\n       the frobnications\n     ```",
            "> ```show\n> the frobnications\n> ```",
            "> - a\n>\n>   ```show\n>   the triads,\n>   the frobnications\n>   ```",
            "1.\t```show\n\tthe frobnications\n\t```",
            "```show\n\tthe frobnications\n```",
            "Grüße 𝄪\n\n```show\n\nthe frobnications\n```",
        ];

    [Theory]
    [MemberData(nameof(Around))]
    public void The_column_is_exact(string text)
    {
        foreach (var written in new[] { text, text.Replace("\n", "\r\n", StringComparison.Ordinal) })
        {
            var lesson = Lessons.WithText(written);

            var found = Assert.Single(lesson.Diagnostics);
            var line = ("---\ntitle: T\n---\n" + text).Split('\n')[found.Line - 1];
            Assert.Equal(line.IndexOf(Wrong, StringComparison.Ordinal) + 1, found.Column);
        }
    }

    [Fact]
    public void What_cannot_be_worked_out_points_at_its_phrase()
    {
        var found = Assert.Single(Lessons.WithText("```show\nthe landmarks,\n as fingers\n```").Diagnostics);

        Assert.Equal((6, 2), (found.Line, found.Column));
    }

    [Fact]
    public void A_byte_order_mark_and_other_line_ends_change_nothing()
    {
        const string Text = "---\ntitle: T\n---\n\nText.\n\n```show\nthe landmarks\n```\n";
        var plain = Lesson.Parse(Text);
        var odd = Lesson.Parse("\uFEFF" + Text.Replace("\n", "\r\n", StringComparison.Ordinal));

        Assert.Equal(plain.Blocks, odd.Blocks);
        Assert.Equal(7, plain.Single<Block.Figure>().Line);
    }

    [Fact]
    public void Options_may_be_indented_with_their_block()
    {
        var lesson = Lessons.WithText("- a\n\n  ```show\n  the landmarks\n  caption: Three\n  width: 50%\n  ```");

        Assert.Empty(lesson.Diagnostics);
        var options = lesson.Single<Block.Figure>().Options;
        Assert.Equal(("Three", 50), (options.Caption, options.WidthPercent));
    }
}
