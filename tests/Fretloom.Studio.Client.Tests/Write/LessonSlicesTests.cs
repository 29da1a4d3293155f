using Fretloom.Studio.Client.Write;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;

namespace Fretloom.Studio.Client.Tests.Write;

public class LessonSlicesTests
{
    private const string Front = "---\ntitle: T\nkey: D major\n---\n\n";
    private const string One = "```show\nevery D\n```";
    private const string Two =
        "```claim\nIn every major key, on guitar strings 4-1, there are exactly 3 full frets.\n```";
    private const string Three = "```play\nthe scale\n```";

    private static IEnumerable<string> Beginnings(string? before, string text) =>
        LessonSlices.Between(before, text).Select(length => text[..length]);

    [Fact]
    public void A_new_lesson_is_cut_behind_each_block() =>
        Assert.Equal(
            [$"{Front}{One}", $"{Front}{One}\n\nWords.\n\n{Two}"],
            Beginnings(null, $"{Front}{One}\n\nWords.\n\n{Two}\n\nMore words.\n")
        );

    [Fact]
    public void What_was_there_before_is_not_cut() =>
        Assert.Equal(
            [$"{Front}{One}\n\n{Three}"],
            Beginnings($"{Front}{Two}\n\n{One}\n", $"{Front}{One}\n\n{Three}\n\n{Two}\n")
        );

    [Fact]
    public void Another_key_makes_every_block_new() =>
        Assert.Equal(
            2,
            LessonSlices
                .Between(
                    Front + One + "\n\n" + Two,
                    Front.Replace("D m", "E m", StringComparison.Ordinal) + One + "\n\n" + Two
                )
                .Count
        );

    [Theory]
    [InlineData("")]
    [InlineData("Nothing but words.\n")]
    [InlineData("```\nshow\n```\n")]
    public void A_lesson_without_our_blocks_is_not_cut(string text) => Assert.Empty(Beginnings(null, text));

    [Fact]
    public void A_block_that_never_ends_goes_to_the_end() =>
        Assert.Equal([Front + "```show\nevery D\n"], Beginnings(null, Front + "```show\nevery D\n"));
}
