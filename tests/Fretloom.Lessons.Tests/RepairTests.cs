using Fretloom.Lessons;

namespace Fretloom.Lessons.Tests;

/// <summary>A finding that offers a change: the change is made in the file, and the lesson then reads well.</summary>
public class RepairTests
{
    private const string Front = "---\ntitle: T\nkey: D major\n---\n";

    public static TheoryData<string> Mistakes =>
        [
            Front + "```show\nthe nots of the key\n```\n",
            Front + "> ```show\n> every D,\n> frest 0-5\n> ```\n",
            Front + "```play\nthe scale, in eigths\n```\n",
            Front + "```claim\nIn every major key, on strings 4-1, there are exactly 3 ful frets.\n```\n",
            Front + "```claim\n  In every major key,\n  on strings 4-1, there are exactly 2 full frets.\n```\n",
            Front + "```shwo\nevery D\n```\n",
            Front + "```show\nevery D\ncaptoin: Here\n```\n",
            "---\ntitle: T\nkeey: D major\n---\n",
        ];

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_change_that_is_offered_mends_the_lesson(string text)
    {
        var found = Assert.Single(Lesson.Parse(text).Diagnostics, one => one.Repair is not null);
        var repair = found.Repair!;
        var mended = text.Remove(repair.Start, repair.Length).Insert(repair.Start, repair.Text);

        Assert.Empty(Lesson.Parse(mended).Diagnostics);
    }

    [Fact]
    public void What_is_underlined_is_the_words_that_are_wrong()
    {
        var text = Front + "```show\nthe notes of the key, on strnigs 4-1\n```\n";
        var found = Assert.Single(Lesson.Parse(text).Diagnostics);
        var at = new SourceText(text).StartOf(found.Line) + found.Column - 1;

        Assert.StartsWith("strnigs", text[at..], StringComparison.Ordinal);
        Assert.InRange(found.Length, "strnigs".Length, "on strnigs 4-1".Length);
    }

    [Fact]
    public void What_has_no_remedy_offers_none()
    {
        var found = Assert.Single(Lesson.Parse(Front + "```show\nthe xylophone quartet\n```\n").Diagnostics);

        Assert.Null(found.Repair);
    }
}
