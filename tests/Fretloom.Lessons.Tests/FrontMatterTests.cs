namespace Fretloom.Lessons.Tests;

public class FrontMatterTests
{
    [Fact]
    public void It_says_of_every_demo_lesson_what_the_lesson_says()
    {
        foreach (var path in Directory.GetFiles(Testing.Repository.PathTo("lessons"), "*.md"))
        {
            Assert.Equal(Lesson.Load(path).Front, FrontMatter.Of(File.ReadAllText(path)));
        }
    }

    [Fact]
    public void Words_that_follow_the_key_are_filled_in() =>
        Assert.Equal("Thirds in B♭ major", FrontMatter.Of("---\ntitle: Thirds in {key}\nkey: Bb major\n---\n").Title);

    [Theory]
    [InlineData("")]
    [InlineData("no front matter")]
    [InlineData("---\ntitle: x")]
    [InlineData("---\nkey: H major\n---\n")]
    public void What_cannot_be_read_is_as_if_it_were_not_said(string text) =>
        Assert.NotEmpty(FrontMatter.Of(text).Title);
}
