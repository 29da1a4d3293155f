using Fretloom.Exhibits;
using Fretloom.Sentences;
using Fretloom.Testing;

namespace Fretloom.Tests.Sentences;

public class PlayErrorTests
{
    private static readonly SentenceLaws<PlaySentence> Laws = new(text => PlayParser.Parse(text));

    [Fact]
    public void Any_text_gives_a_sentence_or_an_error_that_can_be_pointed_at() =>
        Gen.OneOf(Gen.String, Gen.String[Gen.Char[' ', '~'], 0, 60], Words).SampleSame(Laws.IsAnswered, 10_000);

    [Fact]
    public void A_damaged_sentence_gives_a_sentence_or_an_error_that_can_be_pointed_at() =>
        PlayGen.Damaged.SampleSame(Laws.IsAnswered, 10_000);

    [Fact]
    public void A_suggested_repair_mends_the_words_it_touches() => PlayGen.Damaged.SampleSame(Laws.IsMended, 10_000);

    [Fact]
    public void A_damaged_sentence_gives_an_exercise_or_an_error_that_can_be_pointed_at() =>
        PlayGen.Damaged.SampleSame(
            text =>
            {
                var answer = PlayQuestion.Answer(text, ShowDefaults.Standard);
                Assert.Equal(answer.IsRead, answer.Value is not null);
                Assert.All(answer.Errors, error => Assert.InRange(error.Column, 1, text.Length + 1));
            },
            count: 500
        );

    [Fact]
    public void One_wrong_letter_in_a_word_is_mostly_mended() =>
        Laws.AreMostlyMended(
            "play the triads, on a mandolin, in D harmonic minor, as arpeggios, up and down, through the key by fourths, in triplets, twice, with a count-in, sustained",
            percent: 70
        );

    [Theory]
    [InlineData("play the landmarks", 6, "can be shown, not played")]
    [InlineData("play the scale and the triads", 20, "one thing is played at a time")]
    [InlineData("play the scale, in triplets, G major", 30, "is G major the key?")]
    [InlineData("play the scale, strum down-up", 17, "a strum pattern goes with chords")]
    [InlineData("play C, as arpeggios, strum down-up", 23, "a strum pattern goes with chords that are held")]
    [InlineData("play C, strum down-up, picked p-i-m", 24, "a strum pattern has its own strokes")]
    [InlineData("play C, as block chords, picked p-i-m", 26, "fingers pick one string after another")]
    [InlineData("play C, picked p-down", 16, "do not go together")]
    [InlineData("play the triads, in broken thirds", 18, "broken thirds and groups are made of a scale")]
    [InlineData("play C and F, through the key by step", 15, "the order of the chords goes with 'the triads'")]
    [InlineData("play C and F, in every key", 15, "every key is gone through with what belongs to a key")]
    [InlineData("play the scale, as block chords", 17, "only chords and thirds")]
    [InlineData("play the scale, for tuning", 17, "'for tuning' goes with 'the open strings'")]
    [InlineData("play the scale, up, down", 21, "the direction was already chosen")]
    [InlineData("play the scale, at 0", 20, "a tempo is 20 to 300 beats a minute")]
    [InlineData("play the scale, at 10000", 20, "a tempo is 20 to 300 beats a minute")]
    [InlineData("play the scale, from 96 to 60 in steps of 6", 22, "a tempo ladder rises")]
    [InlineData("play the scale, from 62 to 300 in steps of 4", 44, "at most 60 rungs")]
    [InlineData("play the scale, in 7/13", 20, "a metre is 2/4, 3/4, 4/4, 5/4, 6/8, 9/8 or 12/8")]
    [InlineData("play the scale, 0 times", 17, "expected once to 99 times")]
    [InlineData("play the scale, with a count-in of 9 bars", 36, "a count-in is 1 to 4 bars")]
    [InlineData("play the scale, two bars, then three bars' rest", 32, "the rest is as long as what is played")]
    [InlineData("play the scale, as degrees", 20, "'arpeggios' or 'block chords'")]
    [InlineData("play the scale, one shape each", 17, "belongs to show sentences")]
    [InlineData("play the spots 5:3 4:x", 20, "a spot by string and fret")]
    [InlineData("play the triads from I to VIII", 27, "a degree of the key from I to VII")]
    [InlineData("play up and down", 17, "what to play")]
    [InlineData(
        "play the notes C4 D9, on a guitar",
        19,
        "D9 lies above the guitar, which goes from E2 to D6; did you mean 'D6'?"
    )]
    [InlineData(
        "play the notes C1, on a bass",
        16,
        "C1 lies below the bass, which goes from E1 to Eb4; did you mean 'C2'?"
    )]
    [InlineData("play the notes G D, in broken thirds", 21, "broken thirds and groups are made of a scale")]
    [InlineData("play the spots 5:3 6:30, on a guitar", 20, "the guitar has 22 frets; there is no spot 6:30")]
    [InlineData("play the spots 5:3, 7:1 and 2:1, on a guitar", 21, "the guitar has 6 strings; there is no spot 7:1")]
    [InlineData("play the spots 5:3 4:2, frets 3-9, on a guitar", 20, "spot 4:2 lies on none of the frets 3-9")]
    [InlineData("play the spots 5:3, 4:x", 21, "a spot by string and fret")]
    [InlineData("play G and C, with a roll", 26, "expected fingers such as 'p-i-m-a'")]
    [InlineData("play the scale, at 10,000", 20, "found '10,000'; did you mean '300'?")]
    [InlineData("play the scale, at 72.4", 20, "a whole number of beats a minute, found '72.4'; did you mean '72'?")]
    [InlineData("play the scale, at seventy", 20, "a tempo in figures")]
    [InlineData("play the scale, slowly", 17, "a tempo in beats a minute, such as 'at 72', found 'slowly'")]
    [InlineData("play the scale, for 10000 bars", 17, "say how often it is played, such as 'four times'")]
    [InlineData("play the scale, 16 bars", 17, "say how often it is played")]
    [InlineData("play the scale, for 5 minutes", 17, "say how often it is played")]
    [InlineData("play the scale, 10000 times", 17, "did you mean '99'?")]
    [InlineData("play the scale, repeat", 23, "how often, such as 'twice' or '4 times', after 'repeat'")]
    [InlineData("play the scale, in cut time", 20, "a metre is 2/4")]
    [InlineData("play the scale, in dotted quarters", 20, "found 'dotted quarters'; did you mean 'quarters'?")]
    [InlineData("play the scale, in thirty-seconds", 20, "did you mean 'sixteenths'?")]
    [InlineData("play C, picked p i x a", 20, "a finger of the picking hand, p, i, m or a")]
    [InlineData("play C, hybrid picking", 9, "'picked' and fingers such as 'p-i-m-a', or strokes")]
    [InlineData("play C, strum D - D U", 17, "rests are not written in a strum pattern")]
    [InlineData(
        "play the sixths, on strings 3-1",
        10,
        "expected 'thirds', the one interval that is asked for by its name"
    )]
    [InlineData("play the scale, in sixths", 20, "a scale is played in broken thirds")]
    [InlineData("play the scale, in broken sixths", 27, "a scale is played in broken thirds")]
    [InlineData("play shapes, at 72", 12, "chords such as 'G, C and D' after 'shapes'")]
    [InlineData("play the G shape", 12, "shapes are named as they look behind a capo")]
    [InlineData("play x32010", 6, "did you mean 'the spots 5:3 4:2 3:0 2:1 1:0'?")]
    [InlineData("play the triads, two octaves", 18, "octaves are counted of a scale")]
    [InlineData("play the scale, nine octaves", 17, "expected one to five octaves")]
    [InlineData("play the chromatic scale, in every key", 27, "every key is gone through with what belongs to a key")]
    public void A_sentence_that_does_not_fit_together_says_why(string text, int column, string reason)
    {
        var error = Assert.Single(PlayParser.Parse(text).Errors);

        Assert.Contains(reason, error.Message, StringComparison.Ordinal);
        Assert.Equal(column, error.Column);
    }

    [Theory]
    [InlineData(2000)]
    [InlineData(10_000_000)]
    public void A_long_text_is_answered(int length) => Laws.AreAnswered("( ,-aA4b:", length);

    // Words of the language in no order at all.
    private static Gen<string> Words =>
        Gen.OneOf([
                .. Phrases.All.SelectMany(kind => kind.Examples).SelectMany(example => example.Split(' ')),
                .. PlayPhrases.All.SelectMany(kind => kind.Examples).SelectMany(example => example.Split(' ')),
                ",",
                "and",
                "-",
                ".",
            ])
            .Array[0, 20]
            .Select(words => string.Join(' ', words));
}
