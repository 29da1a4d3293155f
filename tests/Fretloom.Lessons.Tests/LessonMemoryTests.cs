using Fretloom.Lessons;
using Fretloom.Lessons.Syntax;

namespace Fretloom.Lessons.Tests;

public class LessonMemoryTests
{
    private const string Text =
        "---\ntitle: T\nkey: D major\n---\n```show\nevery D\n```\n\n```play\nthe scale, in eighths\n```\n\n```claim\nIn every major key, on strings 4-1, there are exactly 3 full frets.\n```\n";

    [Fact]
    public void What_is_as_it_was_is_the_very_same()
    {
        var memory = new LessonMemory();
        var before = memory.Parse(Text);
        var after = memory.Parse(Text.Replace("```show", "Words.\n\n```show", StringComparison.Ordinal));

        Assert.Same(Of<Block.Figure>(before).Exhibit, Of<Block.Figure>(after).Exhibit);
        Assert.Same(Of<Block.Exercise>(before).Played, Of<Block.Exercise>(after).Played);
        Assert.Same(Of<Block.Statement>(before).Verdict, Of<Block.Statement>(after).Verdict);
        Assert.Equal(7, Of<Block.Figure>(after).Line);
    }

    [Fact]
    public void Another_key_or_instrument_is_worked_out_anew()
    {
        var memory = new LessonMemory();
        var before = Of<Block.Figure>(memory.Parse(Text)).Exhibit;

        Assert.NotEqual(
            before.Map.Key,
            Of<Block.Figure>(memory.Parse(Text.Replace("D major", "E major", StringComparison.Ordinal))).Exhibit.Map.Key
        );
        var ukulele = memory.Parse(Text.Replace("key:", "instrument: ukulele\nkey:", StringComparison.Ordinal));
        Assert.Equal("ukulele", Of<Block.Figure>(ukulele).Exhibit.Map.Instrument.Name);
        Assert.Same(before, Of<Block.Figure>(memory.Parse(Text)).Exhibit);
    }

    [Fact]
    public void What_was_not_asked_for_in_a_while_is_forgotten()
    {
        var memory = new LessonMemory();
        var before = Of<Block.Figure>(memory.Parse(Text)).Exhibit;
        for (var read = 0; read < 40; read++)
        {
            memory.Parse("---\ntitle: T\n---\n");
        }

        Assert.NotSame(before, Of<Block.Figure>(memory.Parse(Text)).Exhibit);
    }

    private static T Of<T>(Lesson lesson) => lesson.Blocks.OfType<T>().Single();
}
