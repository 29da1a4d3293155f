using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Lessons;
using Fretloom.Sentences;
using Fretloom.Studio.Client.Write;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;

namespace Fretloom.Studio.Client.Tests.Write;

public class FileNamesTests
{
    [Theory]
    [InlineData("The cloth of a key", "the-cloth-of-a-key.md")]
    [InlineData("  What’s next? C#, or D♭!  ", "whats-next-c-or-d.md")]
    [InlineData("Größe", "größe.md")]
    [InlineData("../../etc/passwd", "etc-passwd.md")]
    [InlineData("???", "lesson.md")]
    [InlineData("Con", "con-lesson.md")]
    [InlineData("NUL", "nul-lesson.md")]
    [InlineData("LPT1", "lpt1-lesson.md")]
    [InlineData("Com 1", "com-1.md")]
    [InlineData("Con brio", "con-brio.md")]
    public void A_title_gives_a_name(string title, string name) => Assert.Equal(name, FileNames.From(title));

    [Theory]
    [InlineData("one.md", 2, "one-2.md")]
    [InlineData("one.md", 3, "one-3.md")]
    [InlineData("week-3.md", 2, "week-3-2.md")]
    public void Another_file_of_a_title_has_a_number(string name, int number, string numbered) =>
        Assert.Equal(numbered, FileNames.Numbered(name, number));
}

public class VocabularyTests
{
    [Fact]
    public void Every_instrument_and_key_that_is_offered_is_understood()
    {
        var front = Vocabulary.All.Front.ToDictionary(word => word.Name, word => word.Values);
        foreach (var (name, values) in front)
        {
            Assert.All(
                values,
                value =>
                    Assert.Empty(
                        Lesson
                            .Parse($"---\ntitle: T\n{name}: {value}\n---\n")
                            .Diagnostics.Select(found => $"{name}: {value}: {found.Message}")
                    )
            );
        }
    }

    [Fact]
    public void Every_sentence_with_an_instrument_or_key_that_is_offered_is_read() =>
        Assert.All(
            Vocabulary
                .All.Show.SelectMany(group => group.Words)
                .Where(phrase => phrase.StartsWith("on a", StringComparison.Ordinal)),
            phrase => Assert.Empty(ShowParser.Parse($"the notes of the key, {phrase}").Errors)
        );

    public static TheoryData<string> Claims =>
        [
            .. from begin in ClaimWords.Groups[0].Words
            from said in ClaimWords.Groups[2].Words
            select $"{begin} on guitar strings 4-1, on frets 0 to 12, {said}",
            .. from place in ClaimWords.Groups[1].Words
            select $"In every major key, {place} {ClaimWords.Groups[2].Words[0]}",
        ];

    [Theory]
    [MemberData(nameof(Claims))]
    public void The_parts_of_claims_make_claims(string claim) =>
        Assert.Empty(ClaimParser.Parse(claim, new FrontMatter().ClaimDefaults).Errors.Select(error => error.Message));
}
