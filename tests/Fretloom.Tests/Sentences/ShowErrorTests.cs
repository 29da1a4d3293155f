using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Testing;

namespace Fretloom.Tests.Sentences;

public class ShowErrorTests
{
    private static readonly SentenceLaws<ShowSentence> Laws = new(text => ShowParser.Parse(text));

    [Fact]
    public void Any_text_gives_a_sentence_or_an_error_that_can_be_pointed_at() =>
        Gen.OneOf(Gen.String, Gen.String[Gen.Char[' ', '~'], 0, 60], Words).SampleSame(AssertAnswered, 5_000);

    [Fact]
    public void A_damaged_sentence_gives_a_sentence_or_an_error_that_can_be_pointed_at() =>
        SentenceGen.Damaged.SampleSame(AssertAnswered, 5_000);

    [Fact]
    public void A_suggested_repair_mends_the_words_it_touches() => SentenceGen.Damaged.SampleSame(Laws.IsMended, 5_000);

    [Fact]
    public void One_wrong_letter_in_a_word_is_mostly_mended() =>
        Laws.AreMostlyMended(
            "show the landmarks, on a mandolin, in D harmonic minor, on strings 4-1, in close position, as degrees",
            percent: 70
        );

    // Found by the tests above.
    [Theory]
    [InlineData("the thirds, on string 3, string 3")]
    [InlineData("the Bx## phrygian scale")]
    [InlineData("the thirds, on a guitar tuned B####################4")]
    public void What_once_ended_badly_is_an_error(string text) => Assert.Single(ShowParser.Parse(text).Errors);

    [Theory]
    [InlineData("Gmaj scale on guitar", "the G major scale on guitar")]
    [InlineData("C scale", "the C major scale")]
    [InlineData("the C scale", "the C major scale")]
    [InlineData("Em and Am scale", "Em and the A minor scale")]
    [InlineData("Bb maj7 scale", "the Bb major scale")]
    [InlineData("G7 scale", "the G mixolydian scale")]
    [InlineData("Bm7b5 scale", "the B locrian scale")]
    [InlineData("the Gm pentatonic scale", "the G minor pentatonic scale")]
    public void A_chord_called_a_scale_gets_the_scale_that_holds_it(string text, string mended)
    {
        var error = Assert.Single(ShowParser.Parse(text).Errors);

        Assert.Equal(mended, error.Repair?.ApplyTo(text));
        Assert.True(ShowParser.Parse(mended).IsRead);
    }

    // What a wording is near to is common sense, no source.
    [Theory]
    [InlineData("drop D tuning", "the notes of the key, on a drop D guitar")]
    [InlineData("the drop D tuning", "the notes of the key, on a drop D guitar")]
    [InlineData("open G tuning", "the notes of the key, on an open G guitar")]
    [InlineData("DADGAD", "the notes of the key, on a DADGAD guitar")]
    [InlineData("low-G ukulele", "the notes of the key, on a low-G ukulele")]
    [InlineData("on a low-G ukulele", "on a low-G ukulele, the notes of the key")]
    [InlineData("the triads, in drop D", "the triads, on a drop D guitar")]
    [InlineData("the triads in a drop D", "the triads on a drop D guitar")]
    [InlineData("the triads, with drop D tuning", "the triads, on a drop D guitar")]
    [InlineData("the triads, strummed, with a DADGAD tuning", "the triads, strummed, on a DADGAD guitar")]
    [InlineData("the triads, my mandolin, in D major", "the triads, on a mandolin, in D major")]
    [InlineData("barre chords in F", "the triads, in F major, strummed")]
    [InlineData("the barre chords", "the triads, strummed")]
    [InlineData("power chords in E minor", "the triads, in E minor, strummed")]
    [InlineData("open chords of the key of G", "the triads, in G major, strummed")]
    [InlineData("the key of H", "the notes of the key, in B major")]
    [InlineData("the key of H minor", "the notes of the key, in B minor")]
    [InlineData("key of G", "the notes of the key, in G major")]
    [InlineData("notes in B flat", "the notes of the key, in Bb major")]
    [InlineData("the triads, in Bb maj", "the triads, in Bb major")]
    [InlineData("the triads, in Am", "the triads, in A minor")]
    [InlineData("the triads, in F#min", "the triads, in F# minor")]
    [InlineData("the triads in d moll", "the triads in D minor")]
    [InlineData("the triads, in B-Dur", "the triads, in Bb major")]
    [InlineData("the triads, in h-moll", "the triads, in B minor")]
    [InlineData("the triads, in Es-Dur", "the triads, in Eb major")]
    [InlineData("the triads, in fis-Moll", "the triads, in F# minor")]
    [InlineData("the notes in Gm", "the notes of the key, in G minor")]
    [InlineData("the seventh chords of Bb", "the seventh chords, in Bb major")]
    [InlineData("the triads of the key of Em, strummed", "the triads of the key, in E minor, strummed")]
    [InlineData("all seventh chords, in Bb major", "the seventh chords, in Bb major")]
    [InlineData("all the triads", "the triads")]
    [InlineData("all chords in C", "the triads, in C major, strummed")]
    [InlineData("all barre chords in F", "the triads, in F major, strummed")]
    [InlineData("the chords of G", "the triads, in G major")]
    [InlineData("barre chords in a", "the triads, in A major, strummed")]
    [InlineData("the triads, in Hm", "the triads, in B minor")]
    [InlineData("the triads, in B flat min", "the triads, in Bb minor")]
    [InlineData("the chord of C7", "the chord C7")]
    public void A_plain_wording_gets_the_nearest_phrases(string text, string mended)
    {
        var error = Assert.Single(ShowParser.Parse(text).Errors);

        Assert.Equal(mended, error.Repair?.ApplyTo(text));
        Assert.Empty(ShowParser.Parse(mended).Errors);
    }

    /// <summary>Every instrument, and its name with <c>tuning</c>, said without its phrase.</summary>
    [Fact]
    public void Every_instrument_named_alone_is_put_into_its_phrase() =>
        Assert.All(
            Catalogue.All.SelectMany(one => new[] { one.Name, $"the {one.Name} tuning" }),
            text =>
            {
                var mended = ShowParser.Parse(text).Errors[0].Repair?.ApplyTo(text);

                Assert.Equal(Find(text), mended is null ? null : ShowParser.Parse(mended).Value?.Instrument?.Name);
            }
        );

    private static string Find(string text) =>
        text.StartsWith("the ", StringComparison.Ordinal) ? text[4..^" tuning".Length] : text;

    [Theory]
    [InlineData("In every major key, on guitar strings 4-1, there are exactly 3 full frets.", "every major")]
    [InlineData("the triads, in every key", "every key")]
    public void A_claim_that_is_to_be_shown_is_told_where_it_belongs(string text, string words)
    {
        var error = ShowParser.Parse(text).Errors[0];

        Assert.StartsWith(
            $"a picture shows one key: '{words}' is said in claims, which are checked",
            error.Message,
            StringComparison.Ordinal
        );
        Assert.Equal(words, text.Substring(error.Column - 1, error.Length));
    }

    [Fact]
    public void A_word_that_is_only_out_of_place_gets_no_suggestion() =>
        Assert.Null(ShowParser.Parse("show the chord, in D major").Errors[0].Repair);

    [Theory]
    [InlineData(2000)]
    [InlineData(2001)]
    [InlineData(10_000_000)]
    public void A_long_text_is_answered(int length)
    {
        foreach (var sign in "( ,-aA4b")
        {
            var error = Assert.Single(ShowParser.Parse(new string(sign, length)).Errors);
            Assert.Equal(length > ShowParser.MaxLength, error.Column == ShowParser.MaxLength + 1);
        }
    }

    [Fact]
    public void The_instrument_that_a_lesson_speaks_of_is_checked_when_the_sentence_names_none()
    {
        Catalogue.TryFind("ukulele", out var ukulele);

        Assert.True(ShowParser.Parse("the thirds, on strings 6-1").IsRead);
        var error = Assert.Single(ShowParser.Parse("the thirds, on strings 6-1", ukulele).Errors);
        Assert.Equal(
            (24, 1, "the ukulele has 4 strings; there is no string 6"),
            (error.Column, error.Length, error.Message)
        );
        Assert.True(ShowParser.Parse("the thirds, on a guitar, on strings 6-1", ukulele).IsRead);
    }

    [Fact]
    public void Every_word_of_every_example_is_in_the_vocabulary()
    {
        foreach (
            var word in Phrases.All.SelectMany(kind => kind.Examples).SelectMany(example => example.Split(' ', ','))
        )
        {
            var error = Assert.Single(
                ShowParser.Parse($"the thirds, with {word}").Errors.DefaultIfEmpty(new SentenceError(1, 0, ""))
            );
            Assert.Null(error.Repair);
        }
    }

    // Words of the language in no order at all.
    private static Gen<string> Words =>
        Gen.OneOf([
                .. Phrases.All.SelectMany(kind => kind.Examples).SelectMany(example => example.Split(' ')),
                ",",
                "and",
                "-",
                ".",
            ])
            .Array[0, 20]
            .Select(words => string.Join(' ', words));

    private static void AssertAnswered(string text)
    {
        Laws.IsAnswered(text);
        foreach (var error in ShowParser.Parse(text).Errors)
        {
            Assert.Matches(
                "expected|already|lies (below|above)|there is no|named twice|runs backwards|far string|seven notes|not a note name|which chords|goes? with|counted|takes the|tuned to|fret 1 to|mm long|no chord has|than",
                error.Message
            );
        }
    }
}
