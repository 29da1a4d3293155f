using Fretloom.Lessons;
using Fretloom.Studio.Client.Write;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;

namespace Fretloom.Studio.Client.Tests.Write;

public class BlockPlaceTests
{
    private const string Block = "```show\nevery D\n```";

    // The bar is the cursor, the caret where it stands afterwards.
    [Theory]
    [InlineData("|", "B^")]
    [InlineData("First.|\n", "First.\n\nB^")]
    [InlineData("Fi|rst.\nstill.\n\nSecond.\n", "First.\nstill.\n\nB^\n\nSecond.\n")]
    [InlineData("First.\n|\nSecond.\n", "First.\n\nB^\n\nSecond.\n")]
    [InlineData("First.\n\n|Second.\n", "First.\n\nSecond.\n\nB^")]
    [InlineData("---\ntitle|: T\n\nkey: C major\n---\nFirst.\n", "---\ntitle: T\n\nkey: C major\n---\nFirst.\n\nB^")]
    [InlineData("---\ntitle: T\n---\n|\nFirst.\n", "---\ntitle: T\n---\n\nB^\n\nFirst.\n")]
    [InlineData(
        "```play\nthe scale|\n\nbpm: 60\n```\n\nSecond.\n",
        "```play\nthe scale\n\nbpm: 60\n```\n\nB^\n\nSecond.\n"
    )]
    [InlineData("````text\n```\n|\n```\n````\n\nSecond.", "````text\n```\n\n```\n````\n\nB^\n\nSecond.")]
    [InlineData("~~~\n|\n```\n~~~\n\nSecond.", "~~~\n\n```\n~~~\n\nB^\n\nSecond.")]
    [InlineData("```show\n|the thirds", "```show\nthe thirds\n```\n\nB^")]
    [InlineData("First.|\n\n~~~~\n```\n", "First.\n\nB^\n\n~~~~\n```\n")]
    public void A_block_stands_alone_between_paragraphs_and_blocks(string text, string expected)
    {
        var (found, cursor) = BlockPlace.Put(text.Replace("|", "", StringComparison.Ordinal), text.IndexOf('|'), Block);

        Assert.Equal(expected.Replace("B", Block + "\n", StringComparison.Ordinal), found.Insert(cursor, "^"));
    }

    [Fact]
    public void Without_a_cursor_a_block_goes_to_the_end() =>
        Assert.Equal("First.\n\n" + Block + "\n", BlockPlace.Put("First.\n\n\n", null, Block).Text);

    [Fact]
    public void A_block_that_is_still_written_is_closed_before_another_goes_to_the_end()
    {
        var (text, _) = BlockPlace.Put("---\ntitle: T\n---\n\n```show\nthe thirds\n", null, Block);

        var lesson = Lesson.Parse(text);
        Assert.Empty(lesson.Diagnostics);
        Assert.Equal(2, lesson.Blocks.Count);
    }

    /// <summary>Wherever the cursor stands, every line that was there is there still, in its order.</summary>
    [Fact]
    public void Nothing_is_lost_at_any_place()
    {
        const string Text =
            "---\ntitle: T\n---\n\nFirst.\nstill.\n\n```play\nthe scale\n```\n\n- one\n- two\n\nLast.\n";
        for (var at = 0; at <= Text.Length; at++)
        {
            var (found, cursor) = BlockPlace.Put(Text, at, Block);
            var begin = cursor - Block.Length - 1;
            Assert.Equal(Block + "\n", found[begin..cursor]);
            Assert.Equal(Lines(Text), Lines(found[..begin] + found[cursor..]));
            Assert.EndsWith("\n\n", found[..begin], StringComparison.Ordinal);
            Assert.True(cursor == found.Length || found[cursor..].StartsWith("\n\n", StringComparison.Ordinal));
        }
    }

    private static IEnumerable<string> Lines(string text) => text.Split('\n').Where(line => line.Length > 0);
}
