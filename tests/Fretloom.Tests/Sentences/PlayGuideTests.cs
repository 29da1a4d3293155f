using Fretloom.Exhibits;
using Fretloom.Sentences;

namespace Fretloom.Tests.Sentences;

/// <summary>Runs the part of the guide for teachers that is about exercises: its examples, and its wrong sentences with their messages.</summary>
public class PlayGuideTests
{
    private static readonly Guide Guide = new("sentences.md", "exercises", "wrong-exercises");

    public static TheoryData<string> Examples => [.. Guide.Examples];

    public static TheoryData<string, string> Forms => [.. Guide.Forms];

    public static TheoryData<string, string> WrongSentences => [.. Guide.Wrong];

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_is_played(string sentence) =>
        Assert.Empty(PlayQuestion.Answer(sentence, ShowDefaults.Standard).Errors);

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_sentence_is_written_as_the_guide_says(string typed, string canonical) =>
        Assert.Equal(canonical, PlayParser.Parse(typed).Value?.ToString());

    [Theory]
    [MemberData(nameof(WrongSentences))]
    public void A_wrong_sentence_gets_the_message_of_the_guide(string sentence, string message) =>
        Assert.Equal(message, Assert.Single(PlayParser.Parse(sentence).Errors).ToString());

    [Fact]
    public void Every_wrong_sentence_has_a_message() => Assert.Equal(Guide.WrongLines, 2 * WrongSentences.Count);

    [Fact]
    public void The_guide_shows_every_example_of_every_phrase()
    {
        var sentences = Guide.Examples.ToList();
        var missing = PlayPhrases
            .All.SelectMany(kind => kind.Examples)
            .Where(example => !sentences.Exists(line => line.Contains(example, StringComparison.Ordinal)));

        Assert.Empty(missing);
    }
}
