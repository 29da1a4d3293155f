using Fretloom.Exhibits;
using Fretloom.Sentences;
using Fretloom.Studio.Client.Ask;

namespace Fretloom.Studio.Client.Tests.Ask;

public class SentenceEditTests
{
    private static SentenceResult<Exhibit> Answer(string sentence) =>
        ShowQuestion.Answer(sentence, ShowDefaults.Standard);

    private static PhraseKind Kind(string name) => Phrases.All.First(kind => kind.Name == name);

    [Theory]
    [InlineData("show the thirds, in D major", "the key", "in F major", "show the thirds, in F major")]
    [InlineData("show the thirds", "the key", "in F major", "show the thirds, in F major")]
    [InlineData("show the thirds, in D major, frets 0-5", "the key", "", "show the thirds, frets 0-5")]
    [InlineData("show the thirds, frets 0-5", "the instrument", "on a bass", "show the thirds, on a bass, frets 0-5")]
    [InlineData(
        "show the thirds, on a guitar, on strings 6-3",
        "the instrument",
        "on a ukulele",
        "show the thirds, on a ukulele"
    )]
    [InlineData(
        "show the thirds, on a guitar, on strings 4-1, frets 0-20",
        "the instrument",
        "on a ukulele",
        "show the thirds, on a ukulele, on strings 4-1"
    )]
    public void The_new_phrase_stands_and_what_contradicts_it_goes(
        string before,
        string kind,
        string words,
        string after
    ) => Assert.Equal(after, SentenceEdit.With(before, Kind(kind), words, Answer));

    [Theory]
    [InlineData("the key", "in H major", "show the thirds, in H major")]
    [InlineData("what to show", "the triads, frets 0-24", "show the triads, frets 0-24")]
    [InlineData("the key", "in D major, on strings 8-1", "show the thirds, in D major, on strings 8-1")]
    public void What_cannot_be_read_is_said_all_the_same(string kind, string words, string said) =>
        Assert.Equal(said, SentenceEdit.With("show the thirds", Kind(kind), words, Answer));

    public static TheoryData<string, string> Offers
    {
        get
        {
            var offers = new TheoryData<string, string>();
            foreach (var sentence in Sentences)
            {
                foreach (var kind in Phrases.All)
                {
                    offers.Add(sentence, kind.Name);
                }
            }

            return offers;
        }
    }

    private static readonly string[] Sentences =
    [
        "show the notes of the key",
        "show the seventh chords, on a low-G ukulele, in Bb major, on strings 4-1",
        "show C and G, on a banjo, strummed",
    ];

    // What the chords themselves forbid is told when it is picked: seventh chords want four strings, drops four members.
    private static readonly string[] Impossible = ["on a balalaika", "in drop 2", "in drop 3"];

    /// <summary>Whatever a picker offers can be picked, and then stands in the sentence.</summary>
    [Theory]
    [MemberData(nameof(Offers))]
    public void Whatever_is_offered_reads_well(string sentence, string name)
    {
        var exhibit = ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!;

        Assert.All(
            Choices.For(Kind(name), exhibit).Except(Impossible),
            words =>
            {
                var changed = SentenceEdit.With(sentence, Kind(name), words, Answer);

                Assert.NotNull(ShowParser.Parse(changed).Value);
                Assert.Contains(words, changed, StringComparison.Ordinal);
            }
        );
    }

    [Fact]
    public void The_phrases_of_the_bar_tell_what_was_said_from_what_is_taken_for_granted()
    {
        const string Said = "show the thirds, in D major";
        var exhibit = ShowQuestion.Answer(Said, ShowDefaults.Standard).Value!;

        var chips = Chip.Of(exhibit, Said);

        Assert.Equal(exhibit.Sentence, "show " + string.Join(", ", chips.Select(chip => chip.Words)));
        Assert.Equal(["what to show", "the key"], chips.Where(chip => chip.IsSaid).Select(chip => chip.Kind.Name));
    }
}
