using Fretloom.Exhibits;
using Fretloom.Studio.Client.Know;

namespace Fretloom.Studio.Client.Tests.Know;

public class RelatedSubjectsTests
{
    [Theory]
    [InlineData("the notes of the key, on a guitar, in E minor")]
    [InlineData("the triads, on a guitar, on strings 3-1")]
    [InlineData("the thirds, on a bass, on strings 2-1")]
    [InlineData("every G, on a ukulele")]
    public void Each_can_be_shown_in_its_place(string sentence)
    {
        var exhibit = ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!;
        var where = exhibit.Sentence[exhibit.Sentence.IndexOf(", on ", StringComparison.Ordinal)..].Split(", as ")[0];

        var related = RelatedSubjects.Of(exhibit).ToList();

        Assert.InRange(related.Count, 3, 6);
        Assert.DoesNotContain(
            related,
            subject => exhibit.Sentence.StartsWith($"show {subject},", StringComparison.Ordinal)
        );
        Assert.All(
            related,
            subject => Assert.Empty(ShowQuestion.Answer($"show {subject}{where}", ShowDefaults.Standard).Errors)
        );
    }
}
