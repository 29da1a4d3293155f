using Fretloom.Sentences;

namespace Fretloom.Tests.Sentences;

/// <summary>Runs the guide for teachers: its examples, and its wrong sentences with their messages.</summary>
public class GuideTests
{
    private static readonly Guide Guide = new("sentences.md", "sentences", "wrong");

    public static TheoryData<string> Examples => [.. Guide.Examples];

    public static TheoryData<string, string> Forms => [.. Guide.Forms];

    public static TheoryData<string, string> WrongSentences => [.. Guide.Wrong];

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_reads(string sentence) => Assert.Empty(ShowParser.Parse(sentence).Errors);

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_sentence_is_written_as_the_guide_says(string typed, string canonical) =>
        Assert.Equal(canonical, ShowParser.Parse(typed).Value?.ToString());

    [Theory]
    [MemberData(nameof(WrongSentences))]
    public void A_wrong_sentence_gets_the_message_of_the_guide(string sentence, string message) =>
        Assert.Equal(message, Assert.Single(ShowParser.Parse(sentence).Errors).ToString());

    [Fact]
    public void Every_wrong_sentence_has_a_message() => Assert.Equal(Guide.WrongLines, 2 * WrongSentences.Count);

    [Fact]
    public void The_guide_shows_every_example_of_every_phrase()
    {
        var sentences = Guide.Examples.ToList();
        var missing = Phrases
            .All.SelectMany(kind => kind.Examples)
            .Where(example => !sentences.Exists(line => line.Contains(example, StringComparison.Ordinal)));

        Assert.Empty(missing);
    }
}
