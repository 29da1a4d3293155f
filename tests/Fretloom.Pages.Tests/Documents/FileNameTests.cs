using Fretloom.Pages.Documents;

namespace Fretloom.Pages.Tests.Documents;

public class FileNameTests
{
    [Theory]
    [InlineData("The triads in B♭ major", "the-triads-in-b-flat-major")]
    [InlineData("C, F and G7", "c-f-and-g7")]
    [InlineData("F♯m7♭5", "f-sharpm7-flat5")]
    [InlineData("  ../etc/passwd  ", "etc-passwd")]
    [InlineData("日本", "sheet")]
    [InlineData("", "sheet")]
    public void It_is_the_title_in_plain_letters(string title, string name) => Assert.Equal(name, FileName.Of(title));

    [Fact]
    public void It_is_never_long_and_never_ends_in_a_hyphen() =>
        Gen.String.Sample(title =>
        {
            var name = FileName.Of(title + string.Concat(Enumerable.Repeat(" word", 30)));
            Assert.InRange(name.Length, 1, 80);
            Assert.Matches("^[a-z0-9]([a-z0-9-]*[a-z0-9])?$", name);
        });
}
