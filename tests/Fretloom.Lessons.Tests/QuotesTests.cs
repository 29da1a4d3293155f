using Fretloom.Lessons.Syntax;

namespace Fretloom.Lessons.Tests;

/// <summary>Quotation marks and apostrophes. The marks of each language: from memory.</summary>
public class QuotesTests
{
    [Theory]
    [InlineData("en", "It isn't Monday's.", "It isn’t Monday’s.")]
    [InlineData("en", "Say \"one, two\".", "Say “one, two”.")]
    [InlineData("en", "Say \"*one*, two\".", "Say “one, two”.")]
    [InlineData("en", "Call it 'home' since '98.", "Call it ‘home’ since ’98.")]
    [InlineData("en-GB", "\"{key}\" isn't it.", "“C major” isn’t it.")]
    [InlineData("en", "The players' `isn't` stays.", "The players’ isn't stays.")]
    [InlineData("de", "Das \"Tor\" geht's an.", "Das „Tor“ geht’s an.")]
    [InlineData("fr", "L'accord \"juste\".", "L’accord «\u00A0juste\u00A0».")]
    [InlineData("eu", "Ez \"da\".", "Ez \"da\".")]
    public void Straight_marks_curl_by_language_but_not_in_code(string language, string typed, string expected)
    {
        var lesson = Lesson.Parse($"---\ntitle: T\nlanguage: {language}\n---\n{typed}");

        Assert.Equal(expected, Inline.PlainText(lesson.Single<Block.Paragraph>().Content));
    }

    [Fact]
    public void Titles_and_captions_curl_too()
    {
        var lesson = Lesson.Parse(
            "---\ntitle: Two up, until it isn't\n---\n```show\nthe notes of the key\ncaption: Monday's \"{key}\"\n```"
        );

        Assert.Equal("Two up, until it isn’t", lesson.Front.Title);
        Assert.Equal("Monday’s “C major”", lesson.Single<Block.Figure>().Options.Caption);
    }
}
