using Fretloom.Exhibits;

namespace Fretloom.Tests.Exhibits;

public class PlayerTests
{
    [Theory]
    [InlineData("C", false, false)]
    [InlineData("C", true, true)]
    [InlineData("C, on a left-handed ukulele", false, true)]
    [InlineData("C, lefty", false, true)]
    [InlineData("C, for a right-handed player", true, false)]
    [InlineData("C, on a right-handed guitar", true, false)]
    [InlineData("C, for a left-handed player, turned over", true, false)]
    public void The_sentence_has_the_last_word_on_who_plays(string sentence, bool isLesson, bool isLeft)
    {
        var answer = ShowQuestion.Answer(sentence, ShowDefaults.Standard with { IsLeftHanded = isLesson });

        Assert.Equal(isLeft, answer.Value?.IsLeftHanded);
    }

    [Theory]
    [InlineData("C", false, false)]
    [InlineData("C", true, true)]
    [InlineData("C, turned over", false, true)]
    [InlineData("C, for a left-handed player with the guitar turned over", false, true)]
    [InlineData("C, for a left-handed player", true, false)]
    [InlineData("C, for a right-handed player", true, false)]
    public void An_instrument_is_turned_over_until_another_player_is_named(
        string sentence,
        bool isLesson,
        bool isTurned
    )
    {
        var lesson = ShowDefaults.Standard with { IsLeftHanded = isLesson, IsTurnedOver = isLesson };
        var exhibit = ShowQuestion.Answer(sentence, lesson).Value!;

        Assert.Equal(isTurned, exhibit.Player.IsTurnedOver);
        Assert.False(isTurned && exhibit.IsLeftHanded);
    }

    [Theory]
    [InlineData("C", false, false)]
    [InlineData("C", true, true)]
    [InlineData("C, with the thumb", false, true)]
    [InlineData("C, thumb allowed", false, true)]
    [InlineData("C, without the thumb", true, false)]
    public void The_thumb_is_used_where_it_is_allowed(string sentence, bool isLesson, bool isUsed) =>
        Assert.Equal(
            isUsed,
            ShowQuestion.Answer(sentence, ShowDefaults.Standard with { UsesThumb = isLesson }).Value?.Player.UsesThumb
        );

    [Theory]
    [InlineData("C", false, 189)]
    [InlineData("C, for an adult hand", true, 189)]
    [InlineData("C, for a small hand", true, 165)]
    public void A_hand_that_is_named_is_one_to_compare_for(string sentence, bool isCompared, double lengthMm)
    {
        var exhibit = ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!;

        Assert.Equal((isCompared, lengthMm), (exhibit.ComparesReach, exhibit.Player.Hand.LengthMm));
    }
}
