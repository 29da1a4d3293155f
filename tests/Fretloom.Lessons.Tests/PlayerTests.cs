namespace Fretloom.Lessons.Tests;

public class PlayerTests
{
    [Theory]
    [InlineData("right-handed", false, false, false)]
    [InlineData("left-handed", true, false, false)]
    [InlineData("left-handed, turned over", true, true, false)]
    [InlineData("turned over", false, true, false)]
    [InlineData("right-handed, with the thumb", false, false, true)]
    public void The_player_is_said_in_words_of_the_sentences(string value, bool isLeft, bool isTurned, bool usesThumb)
    {
        var lesson = Lessons.WithFront($"title: T\nplayer: {value}");

        Assert.Equal("", lesson.Found());
        Assert.Equal(
            (isLeft, isTurned, usesThumb),
            (lesson.Front.Defaults.IsLeftHanded, lesson.Front.Defaults.IsTurnedOver, lesson.Front.Defaults.UsesThumb)
        );
    }

    [Theory]
    [InlineData("ambidextrous")]
    [InlineData("left-handed, in G major")]
    [InlineData("left-handed, right-handed")]
    [InlineData("the triads")]
    public void Nothing_else_is_a_player(string value) =>
        Assert.StartsWith(
            $"3:9: error: '{value}' is not a player",
            Lessons.WithFront($"title: T\nplayer: {value}").Found(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("hand: adult", true)]
    [InlineData("hand: small", true)]
    [InlineData("course: C", false)]
    public void A_lesson_that_names_a_hand_compares_for_it(string line, bool isNamed) =>
        Assert.Equal(isNamed, Lessons.WithFront($"title: T\n{line}").Front.Defaults.Hand is not null);
}
