using System.Text.RegularExpressions;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Lessons.Tests;

/// <summary>The guide to lesson files: each lesson in it gives the messages below it, or none.</summary>
public partial class GuideTests
{
    private static readonly string Guide = File.ReadAllText(Repository.PathTo("docs", "lesson-files.md"));

    public static TheoryData<int> Every => [.. Enumerable.Range(0, Examples().Count(Guide))];

    [Theory]
    [MemberData(nameof(Every))]
    public void A_lesson_of_the_guide_gives_the_messages_shown(int index)
    {
        var example = Examples().Matches(Guide)[index];
        var lesson = Lesson.Parse(example.Groups["lesson"].Value);
        var shown = example.Groups["key"] is { Success: true } key ? lesson.InKey(Key.Parse(key.Value)) : lesson;

        Assert.Equal(example.Groups["messages"].Value.TrimEnd('\n'), shown.Found());
    }

    [Fact]
    public void The_guide_has_lessons() => Assert.InRange(Examples().Count(Guide), 5, 50);

    [Theory]
    [InlineData("{key}")]
    [InlineData("{degree 5}")]
    [InlineData("{degree b7}")]
    [InlineData("{chord V7}")]
    [InlineData("{chord ii7}")]
    public void Words_that_follow_the_key_are_as_the_guide_shows_them(string words) =>
        Assert.Contains(
            $"| `{words}` | {In(words, "F major")} | {In(words, "E minor")} |",
            Guide,
            StringComparison.Ordinal
        );

    private static string In(string words, string key) =>
        Lesson.Parse($"---\ntitle: \"{words}\"\nkey: {key}\n---\n").Front.Title;

    [GeneratedRegex(
        "^````lesson(?: in (?<key>[^\n]+))?\n(?<lesson>.*?)^````\n(?:\n````messages\n(?<messages>.*?)^````\n)?",
        RegexOptions.Multiline | RegexOptions.Singleline
    )]
    private static partial Regex Examples();
}
