using System.Text.RegularExpressions;
using Fretloom.Studio.Client.Words;

namespace Fretloom.Studio.Client.Tests.Words;

public partial class LabelsTests
{
    private static readonly Labels Labels = new();

    public static TheoryData<string> Keys => [.. Labels.Keys];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_label_is_said_in_every_language_with_the_same_blanks(string key)
    {
        var english = Labels.In("en", key);

        Assert.False(string.IsNullOrWhiteSpace(english));
        Assert.All(
            Labels.Languages,
            language =>
            {
                var words = Labels.In(language.Code, key);
                Assert.False(string.IsNullOrWhiteSpace(words));
                Assert.Equal(Blanks(english!), Blanks(words!));
            }
        );
    }

    [Fact]
    public void Another_language_is_spoken_by_its_code_and_an_unknown_one_changes_nothing()
    {
        var labels = new Labels();

        labels.Speak("de-AT");
        Assert.Equal("Rückgängig", labels["undo"]);
        labels.Speak("tlh");
        Assert.Equal("de", labels.Language);
    }

    [Fact]
    public void Blanks_are_filled() => Assert.Equal("Undo “strings 4-1”", Labels.Of("undo-step", "strings 4-1"));

    private static IEnumerable<string> Blanks(string words) => Blank().Matches(words).Select(one => one.Value).Order();

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Blank();
}
