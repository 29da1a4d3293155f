using Fretloom.Exhibits;
using Fretloom.Sentences;
using Fretloom.Studio.Client.Ask;

namespace Fretloom.Studio.Client.Tests.Ask;

public class ChoicesTests
{
    private static readonly Exhibit Exhibit = ShowQuestion
        .Answer("show the seventh chords, on strings 4-1", ShowDefaults.Standard)
        .Value!;

    private static ValueList<ChoiceGroup> More() =>
        Choices.More(
            Exhibit,
            ShowParser.PhrasesOf(Exhibit.Sentence).Select(phrase => phrase.Kind).ToHashSet(),
            group => group.ToString()
        );

    [Fact]
    public void What_can_be_said_more_stands_under_headings_and_nothing_stands_twice()
    {
        var groups = More();

        Assert.Equal(["Place", "Chords", "Marks", "Hand"], groups.Select(group => group.Name));
        var words = groups.SelectMany(group => group.Words).ToList();
        Assert.Distinct(words);
        Assert.Contains("in drop 2", words);
        Assert.Contains("with fingers", words);
        Assert.DoesNotContain("with fingering", words);
        Assert.DoesNotContain("as degrees", words);
    }

    [Fact]
    public void Each_offer_is_in_the_words_that_a_sentence_is_printed_with() =>
        Assert.All(
            More().SelectMany(group => group.Words),
            words => Assert.Contains(words, ShowParser.Parse($"show the seventh chords, {words}").Value!.ToString())
        );
}
