using Fretloom.Sentences;
using Fretloom.Testing;

namespace Fretloom.Tests.Sentences;

public class PlacedPhraseTests
{
    /// <summary>The phrases of a canonical sentence, joined again, are the sentence.</summary>
    [Fact]
    public void Joined_again_they_are_the_sentence() =>
        SentenceGen.Show.Sample(sentence =>
        {
            var text = sentence.ToString();

            var words = ShowParser.PhrasesOf(text).Select(phrase => phrase.In(text));

            Assert.Equal(text, "show " + string.Join(", ", words));
        });

    /// <summary>What is printed knows of each phrase what reading finds.</summary>
    [Fact]
    public void They_are_those_that_were_printed() =>
        SentenceGen.Show.Sample(sentence =>
        {
            var text = sentence.ToString();

            var read = ShowParser.PhrasesOf(text).Select(phrase => new SaidPhrase(phrase.Kind, phrase.In(text)));

            Assert.Equal(read, sentence.Phrases.AsEnumerable());
        });

    [Fact]
    public void Each_names_its_kind_as_far_as_the_sentence_reads_well()
    {
        var phrases = ShowParser.PhrasesOf("show the thirds and every D, on a guitar, in H major");

        Assert.Equal(["what to show", "the instrument"], phrases.Select(phrase => phrase.Kind.Name));
        Assert.Equal((6, 22), (phrases[0].Column, phrases[0].Length));
    }

    [Fact]
    public void A_text_that_is_too_long_has_none() =>
        Assert.Empty(ShowParser.PhrasesOf(new string('x', ShowParser.MaxLength + 1)));
}
