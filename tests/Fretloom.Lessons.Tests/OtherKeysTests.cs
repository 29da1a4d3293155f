using Fretloom.Lessons.Syntax;
using Fretloom.Theory;

namespace Fretloom.Lessons.Tests;

/// <summary>One lesson in other keys.</summary>
public class OtherKeysTests
{
    private static Lesson InG(string sentence) =>
        Lesson.Parse(
            $"---\ntitle: All of {{key}}\nkey: G major\n---\n\n```show\n{sentence}\ncaption: \"{{degree 5}} and {{chord V7}}\"\n```\n"
        );

    private static string Sentence(string sentence, string key) =>
        InG(sentence).InKey(Key.Parse(key)).Single<Block.Figure>().Exhibit.Sentence;

    [Theory]
    [InlineData("the notes of the key, frets 0-12", "Bb major", "in Bb major", "frets 0-12")]
    [InlineData("the notes of the key, in E minor", "A major", "in F# minor", "frets 0-12")]
    [InlineData("every D, frets 5-9", "A major", "every E", "frets 7-11")]
    [InlineData("Am7 and D7", "Bb major", "Cm7 and F7", "frets 0-12")]
    [InlineData("the chord V7, frets 3-7", "C major", "V7", "frets 8-12")]
    [InlineData("the chord V7, frets 3-7", "F major", "V7", "frets 1-5")]
    [InlineData("the chord V7, frets 1-5", "F major", "V7", "frets 11-15")]
    public void Names_move_with_the_key_and_ranges_with_their_notes(string said, string key, string part, string frets)
    {
        var sentence = Sentence(said, key);

        Assert.Contains(part, sentence, StringComparison.Ordinal);
        Assert.Contains(frets, sentence, StringComparison.Ordinal);
    }

    // From G, F sharp is a half-step down and C sharp a tritone up; no sentence names a position above the twentieth.
    [Theory]
    [InlineData("the scale, in fifteenth position, frets 0-22", "F# major", "frets 0-22, in fourteenth position")]
    [InlineData("the scale, in fifteenth position, frets 0-22", "C# major", "frets 0-22, in ninth position")]
    [InlineData("the triads, in twelfth position", "A major", "frets 0-17, in fourteenth position")]
    [InlineData("the triads, in twelfth position", "F major", "frets 0-13, in tenth position")]
    public void Positions_move_with_their_notes_as_far_as_positions_go(string said, string key, string part) =>
        Assert.Contains(part, Sentence(said, key), StringComparison.Ordinal);

    [Fact]
    public void Title_and_caption_follow_the_key()
    {
        var lesson = InG("the notes of the key").InKey(Key.Parse("Bb major"));

        Assert.Equal("All of B♭ major", lesson.Front.Title);
        Assert.Equal("F and F7", lesson.Single<Block.Figure>().Options.Caption);
    }

    [Fact]
    public void Prose_follows_the_key_but_not_in_code()
    {
        var lesson = Lesson.Parse(
            "---\ntitle: T\nkey: A minor\n---\n\n{key}: *{degree 3}* {chord ii7} `{key}` \\{key}"
        );

        Assert.Equal(
            "E♭ minor: G♭ Fm7 {key} {key}",
            Inline.PlainText(lesson.InKey(Key.Parse("Eb minor")).Single<Block.Paragraph>().Content)
        );
    }

    [Theory]
    [InlineData("Play F# now.", "6:6", "F#")]
    [InlineData("The key of Bb major.", "6:12", "Bb")]
    [InlineData("A chord: Am7 is nice.", "6:10", "Am7")]
    [InlineData("So D is next.", "6:4", "D")]
    [InlineData("Twelve bars in A.", "6:16", "A")]
    [InlineData("Twelve bars in A", "6:16", "A")]
    [InlineData("Look at fret 5.", "6:9", "fret 5")]
    [InlineData("It lies at 10-9-8-7.", "6:12", "10-9-8-7")]
    public void Prose_that_stays_behind_is_a_warning_in_other_keys_only(string prose, string place, string name)
    {
        var lesson = Lesson.Parse($"---\ntitle: T\nkey: G major\n---\n\n{prose}");

        Assert.Empty(lesson.Diagnostics);
        Assert.Equal(
            $"{place}: warning: '{name}' stays as it is in every key; {{key}}, {{degree 5}} and {{chord V7}} follow the key.",
            lesson.InKey(Key.Parse("A major")).Found()
        );
    }

    [Fact]
    public void Titles_and_captions_that_stay_behind_are_warnings_too()
    {
        var lesson = Lesson.Parse(
            "---\ntitle: All of G major\nkey: G major\n---\n\n```show\nthe landmarks\ncaption: From D7 home\n```\n"
        );

        Assert.Equal(
            [(2, 15), (8, 15)],
            lesson.InKey(Key.Parse("A major")).Diagnostics.Select(found => (found.Line, found.Column))
        );
    }

    [Theory]
    [InlineData("A good day, and I play. Be calm, Dear Fred: {chord V7}, {degree 5}.")]
    [InlineData("Go to <https://example.org/A/B7> on string 4, with finger 2.")]
    public void Plain_prose_is_no_warning(string prose) =>
        Assert.Empty(
            Lesson.Parse($"---\ntitle: T\nkey: G major\n---\n\n{prose}").InKey(Key.Parse("A major")).Diagnostics
        );

    [Fact]
    public void There_and_back_is_the_same_lesson()
    {
        var keys = TwelveKeys.From(Key.Parse("G major"), KeyOrder.HalfSteps);
        var home = InG("the chords I IV V7, on strings 4-1, every B, Am7b5");

        foreach (var key in keys)
        {
            Assert.Equal(home.Blocks, home.InKey(key).InKey(home.HomeKey).Blocks);
        }
    }

    [Fact]
    public void A_moved_figure_sounds_the_same_degrees()
    {
        foreach (var key in TwelveKeys.From(Key.Parse("G major"), KeyOrder.Fourths))
        {
            var figure = InG("every B, frets 0-12").InKey(key).Single<Block.Figure>();

            Assert.All(figure.Exhibit.Notes!.Value, note => Assert.Equal(new Degree(3), note.Degree));
        }
    }
}
