using Fretloom.Sentences;
using Fretloom.Testing;

namespace Fretloom.Tests.Sentences;

/// <summary>Runs the guide for teachers: its examples, and its wrong sentences with their messages.</summary>
public class GuideTests
{
    private static readonly string[] Guide = File.ReadAllLines(Repository.PathTo("docs", "sentences.md"));

    public static TheoryData<string> Examples => [.. Blocks("sentences").Where(line => !line.StartsWith('='))];

    public static TheoryData<string, string> Forms =>
        [
            .. Pairs(Blocks("sentences"))
                .Where(pair => pair.Item2.StartsWith('='))
                .Select(pair => (pair.Item1, pair.Item2[2..])),
        ];

    public static TheoryData<string, string> WrongSentences =>
        [.. Pairs(Blocks("wrong")).Where(pair => pair.Item2.StartsWith("column ", StringComparison.Ordinal))];

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
    public void Every_wrong_sentence_has_a_message() => Assert.Equal(2 * WrongSentences.Count, Blocks("wrong").Count());

    [Fact]
    public void The_guide_shows_every_example_of_every_phrase()
    {
        var sentences = Blocks("sentences").ToList();
        var missing = Phrases
            .All.SelectMany(kind => kind.Examples)
            .Where(example => !sentences.Exists(line => line.Contains(example, StringComparison.Ordinal)));

        Assert.Empty(missing);
    }

    private static IEnumerable<(string, string)> Pairs(IEnumerable<string> lines) => lines.Zip(lines.Skip(1));

    private static IEnumerable<string> Blocks(string marker)
    {
        var isInside = false;
        foreach (var line in Guide)
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                isInside = line == $"```{marker}";
            }
            else if (isInside && line.Length > 0)
            {
                yield return line;
            }
        }
    }
}
