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
    public void The_sentence_has_the_last_word_on_who_plays(string sentence, bool isLesson, bool isLeft)
    {
        var answer = ShowQuestion.Answer(sentence, ShowDefaults.Standard with { IsLeftHanded = isLesson });

        Assert.Equal(isLeft, answer.Value?.IsLeftHanded);
    }
}
