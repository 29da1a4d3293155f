using Fretloom.Neck;
using Fretloom.Sentences;

namespace Fretloom.Tests.Sentences.Claims;

/// <summary>What teachers say, and how it is written: the ways of saying a thing are common practice, no source.</summary>
public class ClaimWordingTests
{
    private static readonly ClaimDefaults Lesson = new(stringSets: [new NamedStrings("top", StringSet.Run(4, 1))]);

    [Theory]
    [InlineData(
        "every first-inversion seventh shape spans at most 7 frets",
        "every seventh shape in first inversion spans at most 7 frets"
    )]
    [InlineData(
        "every seventh chord in its first inversion spans at most 7 frets",
        "every seventh shape in first inversion spans at most 7 frets"
    )]
    [InlineData(
        "every drop 2 seventh chord spans at most 5 frets",
        "every seventh shape in drop 2 spans at most 5 frets"
    )]
    [InlineData(
        "every drop-2 voicing of the seventh chords spans at most 5 frets",
        "every seventh shape in drop 2 spans at most 5 frets"
    )]
    [InlineData(
        "the first inversion of the V7 chord spans at most 7 frets",
        "the V7 shape in first inversion spans at most 7 frets"
    )]
    [InlineData("every root position seventh spans at most 5 frets", "every seventh shape spans at most 5 frets")]
    [InlineData("every seventh shape spans no more than 5 frets", "every seventh shape spans at most 5 frets")]
    [InlineData("all the seventh chords span up to 5 frets", "every seventh shape spans at most 5 frets")]
    [InlineData("the seventh shapes fit within 5 frets", "every seventh shape spans at most 5 frets")]
    [InlineData("the span of every seventh shape is at most 5 frets", "every seventh shape spans at most 5 frets")]
    [InlineData("every seventh shape is at most 5 frets wide", "every seventh shape spans at most 5 frets")]
    [InlineData("every seventh shape covers at most 5 frets", "every seventh shape spans at most 5 frets")]
    [InlineData("the V7 spans at most 5 frets", "the V7 shape spans at most 5 frets")]
    [InlineData("V7 is the half-turn of viiø7", "the V7 shape is the half-turn of the viiø7 shape")]
    [InlineData(
        "the V7 chord on strings 4-1 spans at most 5 frets",
        "the V7 shape of strings 4-1 spans at most 5 frets"
    )]
    [InlineData(
        "the V7 shape turned upside down is the viiø7 shape",
        "the V7 shape is the half-turn of the viiø7 shape"
    )]
    [InlineData(
        "the dominant seventh is the half turn of the half-diminished seventh",
        "the dominant seventh shape is the half-turn of the half-diminished seventh shape"
    )]
    [InlineData(
        "the seventh shape on degree 1 is that of degree 4 moved 5 frets down",
        "the seventh shape on degree 1 is that of degree 4 moved down 5 frets"
    )]
    [InlineData(
        "the seventh shape on degree 1 is the seventh shape on degree 4 moved down 5 frets",
        "the seventh shape on degree 1 is that of degree 4 moved down 5 frets"
    )]
    [InlineData(
        "the seventh shape on degree 1 is the one on degree 4 shifted down 5 frets",
        "the seventh shape on degree 1 is that of degree 4 moved down 5 frets"
    )]
    [InlineData(
        "the seventh shape on degree 1 is that of degree 4, 5 frets lower",
        "the seventh shape on degree 1 is that of degree 4 moved down 5 frets"
    )]
    [InlineData(
        "the seventh shape on degree 1 lies 5 frets below that of degree 4",
        "the seventh shape on degree 1 is that of degree 4 moved down 5 frets"
    )]
    [InlineData(
        "the distance between the full frets and the empty frets is 1 fret",
        "the gap between the full frets and the empty frets is exactly 1 fret"
    )]
    [InlineData(
        "the full frets and the empty frets are 1 fret apart",
        "the gap between the full frets and the empty frets is exactly 1 fret"
    )]
    [InlineData(
        "adjacent full frets are no more than 5 frets apart",
        "neighbouring full frets lie at most 5 frets apart"
    )]
    [InlineData("full frets are at most 5 frets apart", "neighbouring full frets lie at most 5 frets apart")]
    [InlineData(
        "the gap between neighboring full frets is no less than 2 frets",
        "neighbouring full frets lie at least 2 frets apart"
    )]
    [InlineData(
        "every empty fret lies halfway between a full fret and a full fret",
        "every empty fret lies halfway between two full frets"
    )]
    [InlineData(
        "strings 4-2 have the same key pattern as strings 4-2",
        "the key pattern of strings 4-2 has the same form as the key pattern of strings 4-2"
    )]
    [InlineData(
        "the key pattern on strings 4-2 has the same form as the key pattern on strings 4-2",
        "the key pattern of strings 4-2 has the same form as the key pattern of strings 4-2"
    )]
    [InlineData(
        "the V7 shape has the same shape as the V7 shape on a low-G ukulele",
        "the V7 shape has the same form as the V7 shape of low-G ukulele"
    )]
    [InlineData(
        "the V7 shape looks like the V7 shape of the low-G ukulele",
        "the V7 shape has the same form as the V7 shape of low-G ukulele"
    )]
    [InlineData(
        "the sixths on strings 4 and 2 span at most 2 frets",
        "every two-note sixth shape of strings 4 and 2 spans at most 2 frets"
    )]
    [InlineData(
        "every sixth of strings 3 and 1 spans at most 2 frets",
        "every two-note sixth shape of strings 3 and 1 spans at most 2 frets"
    )]
    [InlineData(
        "the octaves on strings 4 and 2 span 4 frets",
        "every octave shape of strings 4 and 2 spans exactly 4 frets"
    )]
    [InlineData(
        "the tenth on degree 1 of strings 4 and 1 spans 3 frets",
        "the tenth shape on degree 1 of strings 4 and 1 spans exactly 3 frets"
    )]
    [InlineData("there are at least 3 full frets on my top strings", "there are at least 3 full frets of strings 4-1")]
    [InlineData(
        "there are at least 3 full frets of the top string set",
        "there are at least 3 full frets of strings 4-1"
    )]
    public void It_is_understood(string said, string written) =>
        AssertWritten("In every major key, on guitar strings 4-1, ", said, written);

    [Theory]
    [InlineData(
        "every seventh shape stretches less than 130 millimetres",
        "every seventh shape stretches less than 130 mm"
    )]
    [InlineData("the stretch of every seventh shape is at most 130 mm", "every seventh shape stretches at most 130 mm")]
    [InlineData("no seventh shape stretches further than 130 mm", "no seventh shape stretches more than 130 mm")]
    [InlineData("every seventh shape is no wider than 130 mm", "every seventh shape stretches at most 130 mm")]
    [InlineData("every seventh shape stretches over at most 130 mm", "every seventh shape stretches at most 130 mm")]
    [InlineData(
        "every seventh shape can be played with one finger per note",
        "every seventh shape can be played with one finger a note"
    )]
    [InlineData(
        "every seventh shape can be fingered with one finger for each note by a child",
        "every seventh shape can be played with one finger a note by a child's hand"
    )]
    [InlineData(
        "every seventh shape is playable with a finger for every note by a small hand",
        "every seventh shape can be played with one finger a note by a small hand"
    )]
    [InlineData(
        "every seventh shape can be played one finger a note",
        "every seventh shape can be played with one finger a note"
    )]
    [InlineData(
        "every seventh shape can be held with one finger to a note by small hands",
        "every seventh shape can be played with one finger a note by a small hand"
    )]
    [InlineData(
        "the V7 shape is fingered like the I7 shape of low-G ukulele",
        "the V7 shape is fingered as the I7 shape of low-G ukulele"
    )]
    [InlineData(
        "the V7 shape has the same fingering as the I7 shape of low-G ukulele",
        "the V7 shape is fingered as the I7 shape of low-G ukulele"
    )]
    [InlineData(
        "the V7 shape uses the same fingers as the I7 chord on the low-G ukulele",
        "the V7 shape is fingered as the I7 shape of low-G ukulele"
    )]
    [InlineData(
        "the V7 chord is played with the same fingers as the I7 chord of low-G ukulele",
        "the V7 shape is fingered as the I7 shape of low-G ukulele"
    )]
    [InlineData(
        "the V7 shape is fingered the same as the I7 shape of low-G ukulele",
        "the V7 shape is fingered as the I7 shape of low-G ukulele"
    )]
    public void It_is_understood_where_the_frets_are_named(string said, string written) =>
        AssertWritten("In every major key, on guitar strings 4-1, on frets 3 to 12, ", said, written);

    // To be a full fret is to be one of them; to be the full frets is to be all of them.
    [Theory]
    [InlineData("fret 5 is a full fret", "fret 5 lies on a full fret")]
    [InlineData("fret 5 is full", "fret 5 lies on a full fret")]
    [InlineData("frets 5 and 10 are full frets", "frets 5 and 10 lie on a full fret")]
    [InlineData("fret 5 and fret 10 are full frets", "frets 5 and 10 lie on a full fret")]
    [InlineData("fret 5 is one of the full frets", "fret 5 lies on a full fret")]
    [InlineData("fret 7 is not a full fret", "fret 7 avoids the full frets")]
    [InlineData("frets 6 and 7 are not full frets", "frets 6 and 7 avoid the full frets")]
    [InlineData("fret 7 is not full", "fret 7 avoids the full frets")]
    [InlineData("fret 7 is never full", "fret 7 avoids the full frets")]
    [InlineData("fret 7 is always full", "fret 7 lies on a full fret")]
    [InlineData("fret 5 is not fret 7", "fret 5 avoids fret 7")]
    [InlineData(
        "the root fret of the V7 shape is not the first fret of the V7 shape",
        "the root fret of the V7 shape avoids the first fret of the V7 shape"
    )]
    [InlineData(
        "fret 5 is a full fret or fret 7 is an empty fret",
        "fret 5 lies on a full fret or fret 7 lies on an empty fret"
    )]
    [InlineData("every empty fret is a half-turn centre", "every empty fret lies on a half-turn centre")]
    [InlineData("no full fret is an empty fret", "no full fret lies on an empty fret")]
    [InlineData("the full frets are frets 0, 5 and 10", "the full frets are frets 0, 5 and 10")]
    [InlineData("the full frets are the half-turn centres", "the full frets are the half-turn centres")]
    [InlineData("the root of the V7 shape is a full fret", "the root fret of the V7 shape lies on a full fret")]
    [InlineData("fret 5 and fret 10 lie 5 frets apart", "the gap between fret 5 and fret 10 is exactly 5 frets")]
    [InlineData("the I7 chord spans 5 frets or less", "the I7 shape spans at most 5 frets")]
    [InlineData("there are 3 full frets or more", "there are at least 3 full frets")]
    [InlineData("there are always three full frets", "there are exactly 3 full frets")]
    [InlineData(
        "the full frets are never more than 5 frets apart",
        "neighbouring full frets lie at most 5 frets apart"
    )]
    [InlineData(
        "all triads in root position of strings 3-1 span at most 5 frets",
        "every triad shape of strings 3-1 spans at most 5 frets"
    )]
    [InlineData("V7 and IV7 have the same shape", "the V7 shape has the same form as the IV7 shape")]
    [InlineData(
        "the V chord of strings 3-1 is the IV chord of strings 3-1 moved up two frets",
        "the triad shape on degree 5 of strings 3-1 is that of degree 4 moved up 2 frets"
    )]
    [InlineData("the G7 chord looks like the Dm7 chord", "the V7 shape has the same form as the ii7 shape")]
    public void It_is_understood_in_one_key(string said, string written) =>
        AssertWritten("In the key of C major, on guitar strings 4-1, ", said, written);

    // Where and in which keys may stand at the end; a place is that of the whole sentence unless it compares two instruments.
    [Theory]
    [InlineData(
        "There are 3 full frets in every major key on guitar strings 4-1.",
        "In every major key, on guitar strings 4-1, there are exactly 3 full frets."
    )]
    [InlineData(
        "On guitar strings 4-1, there are 3 full frets, in every major key.",
        "In every major key, on guitar strings 4-1, there are exactly 3 full frets."
    )]
    [InlineData(
        "For every major key, every seventh shape spans at most 5 frets on strings 4-1.",
        "In every major key, on guitar strings 4-1, every seventh shape spans at most 5 frets."
    )]
    [InlineData(
        "Every empty fret lies next to a full fret on guitar strings 4-1 in every key.",
        "In every key, on guitar strings 4-1, every empty fret lies next to a full fret."
    )]
    [InlineData(
        "The full frets lie on frets 0, 5, 7 and 10 on bass in C major.",
        "In the key of C major, on bass, the full frets lie on frets 0, 5, 7 and 10."
    )]
    [InlineData(
        "The V7 shape has the same form as the V7 shape on the low-G ukulele in every key, on strings 4-1.",
        "In every key, on guitar strings 4-1, the V7 shape has the same form as the V7 shape of low-G ukulele."
    )]
    [InlineData(
        "In every key, on strings 4-1, the V7 shape has the same form as the V7 shape on guitar strings 5-2.",
        "In every key, on guitar strings 4-1, the V7 shape has the same form as the V7 shape of guitar strings 5-2."
    )]
    [InlineData(
        "There is at least 1 full fret on guitar in drop D in every major key.",
        "In every major key, on drop D guitar, there is at least 1 full fret."
    )]
    [InlineData(
        "In every major key, on guitar in DADGAD, there is at least 1 full fret.",
        "In every major key, on DADGAD guitar, there is at least 1 full fret."
    )]
    [InlineData(
        "In every major key, on banjo in open G, there is at least 1 full fret.",
        "In every major key, on banjo, there is at least 1 full fret."
    )]
    public void A_whole_sentence_is_understood(string said, string written)
    {
        var result = ClaimParser.Parse(said);

        Assert.Empty(result.Errors);
        Assert.Equal(written, result.Value?.ToString());
    }

    [Theory]
    [InlineData("on my top strings", "on guitar strings 4-1")]
    [InlineData("on the top string set", "on guitar strings 4-1")]
    [InlineData("on top strings", "on guitar strings 4-1")]
    [InlineData("on the top strings of the ukulele", "on ukulele strings 4-1")]
    [InlineData("on the ukulele, on the top strings", "on ukulele strings 4-1")]
    public void Strings_go_by_a_name_of_the_teachers_own(string said, string written) =>
        Assert.Equal(
            $"In every major key, {written}, there is at least 1 full fret.",
            ClaimParser.Parse($"In every major key, {said}, there is at least 1 full fret.", Lesson).Value?.ToString()
        );

    private static void AssertWritten(string where, string said, string written)
    {
        var result = ClaimParser.Parse($"{where}{said}.", Lesson);

        Assert.Empty(result.Errors);
        Assert.Equal($"{where}{written}.", result.Value?.ToString());
        Assert.Equal(result.Value, ClaimParser.Parse(result.Value!.ToString()).Value);
    }
}
