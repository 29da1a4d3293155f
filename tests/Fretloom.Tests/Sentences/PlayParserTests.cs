using Fretloom.Exercises;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Testing;
using Fretloom.Tests.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Sentences;

public class PlayParserTests
{
    private static readonly SentenceLaws<PlaySentence> Laws = new(text => PlayParser.Parse(text));

    [Fact]
    public void What_is_printed_reads_back_as_the_same_sentence() => PlayGen.Play.SampleSame(Laws.ReadsBack, 5_000);

    [Fact]
    public void Shapes_sound_as_the_capo_of_a_lessons_own_instrument_makes_them() =>
        Assert.Equal(
            "play A, D and E",
            PlayParser.Parse("the shapes G, C and D", Necks.Find("guitar").WithCapo(2)).Value?.ToString()
        );

    // Each line: what is typed, and the canonical sentence, whose meaning the next test and the round trip pin down.
    [Theory]
    [InlineData("PLAY THE TRIADS , UP AND DOWN.", "play the triads, up and down")]
    [InlineData(
        "play the seventh chords from I to IV, up and down, in eighths, at 72",
        "play the seventh chords from I to IV, up and down, in eighths, at 72"
    )]
    [InlineData("the seventh chords from degree 2 up to degree 5", "play the seventh chords from II to V")]
    [InlineData(
        "in quavers the scale ascending and descending on a ukulele",
        "play the notes of the key, on a ukulele, up and down, in eighths"
    )]
    [InlineData("the scale in crotchets, four times", "play the notes of the key, in quarters, four times")]
    [InlineData("the scale in semiquavers in common time", "play the notes of the key, in sixteenths, in 4/4")]
    [InlineData("the scale, in swung quavers, in 3/4 time", "play the notes of the key, in swing eighths, in 3/4")]
    [InlineData("the scale at 96 bpm played twice", "play the notes of the key, at 96, twice")]
    [InlineData("the scale at a tempo of 60 beats per minute", "play the notes of the key, at 60")]
    [InlineData(
        "the scale from 60 to 96 by 6, with two bars' count-in",
        "play the notes of the key, from 60 to 96 in steps of 6, with a count-in of two bars"
    )]
    [InlineData(
        "the scale with a count-in of 2 measures, one measure, then one measure's rest",
        "play the notes of the key, with a count-in of two bars, one bar, then one bar's rest"
    )]
    [InlineData(
        "the scale, 2 bars and then 2 bars of rest",
        "play the notes of the key, two bars, then two bars' rest"
    )]
    [InlineData(
        "the scale in threes, no count-in",
        "play the notes of the key, in groups of three, without a count-in"
    )]
    [InlineData("C, F and G7, down down-up up-down-up", "play C, F and G7, strum down down-up up-down-up")]
    [InlineData("C, F and G7, strum pattern down up down up", "play C, F and G7, strum down up down up")]
    [InlineData("Am and E, picked p i m a m i", "play Am and E, picked p-i-m-a-m-i")]
    [InlineData("the scale with alternate picking", "play the notes of the key, picked down-up")]
    [InlineData(
        "the triads through the key in fourths as chords",
        "play the triads, as block chords, through the key by fourths"
    )]
    [InlineData("the triads in all twelve keys", "play the triads, in every key by fourths")]
    [InlineData(
        "the triads through every key, by half steps, let ring",
        "play the triads, in every key by half-steps, sustained"
    )]
    [InlineData("every D from high to low, staccato", "play every D, down, short")]
    [InlineData("the spots 5:3, 4:2 and 3:0", "play the spots 5:3 4:2 3:0")]
    [InlineData("open strings for tuning up", "play the open strings, for tuning")]
    [InlineData("the chord C, in every inversion", "play C, in every inversion")]
    [InlineData(
        "Play a C major scale, 3/4, quarter notes, 60 bpm, repeat 4 times, count in",
        "play the C major scale, in quarters, in 3/4, at 60, four times, with a count-in"
    )]
    [InlineData("the scale, triplets", "play the notes of the key, in triplets")]
    [InlineData("the scale with swing", "play the notes of the key, in swing eighths")]
    [InlineData("the scale in thirds", "play the notes of the key, in broken thirds")]
    [InlineData("the Cmaj7 arpeggio, up and down", "play Cmaj7, as arpeggios, up and down")]
    [InlineData("C major arpeggio", "play C, as arpeggios")]
    [InlineData("arpeggios of C, F and G7", "play C, F and G7, as arpeggios")]
    [InlineData("C as an arpeggio", "play C, as arpeggios")]
    [InlineData("the shapes G, C and D, with a capo at fret 2", "play A, D and E, with a capo at 2")]
    [InlineData("G, Em and C shapes, capo 1", "play Ab, Fm and Db, with a capo at 1")]
    [InlineData("with a capo at 4 the D shape", "play F#, with a capo at 4")]
    [InlineData("C and F, broken chords", "play C and F, as arpeggios")]
    [InlineData("the triads as broken chords", "play the triads, as arpeggios")]
    [InlineData("the triads, in block chords", "play the triads, as block chords")]
    [InlineData("the arpeggios of C, Am and F", "play C, Am and F, as arpeggios")]
    [InlineData("the chord progression I IV V", "play the chords I IV V")]
    [InlineData("the I IV V progression", "play the chords I IV V")]
    [InlineData("I-IV-V7-I", "play the chords I IV V7 I")]
    [InlineData("the V7 chord", "play the chord V7")]
    [InlineData("the triads of G major", "play the triads, in G major")]
    [InlineData("the scale of Bb major in 8ths", "play the notes of the key, in Bb major, in eighths")]
    [InlineData("the scale in 1/16 notes", "play the notes of the key, in sixteenths")]
    [InlineData("5:3 4:2, in quarters", "play the spots 5:3 4:2, in quarters")]
    [InlineData("the scale in three-four time", "play the notes of the key, in 3/4")]
    [InlineData("the scale in six eight time", "play the notes of the key, in 6/8")]
    [InlineData("the scale, 60 to 96 in steps of 6", "play the notes of the key, from 60 to 96 in steps of 6")]
    [InlineData("the scale, 60-96 by 6", "play the notes of the key, from 60 to 96 in steps of 6")]
    [InlineData("the scale, count in 2 bars", "play the notes of the key, with a count-in of two bars")]
    [InlineData("the scale backwards", "play the notes of the key, down")]
    [InlineData("the chromatic scale", "play the chromatic scale")]
    [InlineData("a chromatic scale on string 1", "play the chromatic scale, on string 1")]
    [InlineData("the chromatic scale from E", "play the E chromatic scale")]
    [InlineData("the chromatic scale, four notes per string", "play the chromatic scale, 4 notes a string")]
    [InlineData("the A chromatic scale, up", "play the A chromatic scale, up")]
    [InlineData("the notes C D E", "play the notes C D E")]
    [InlineData("notes C, D, E and B flat, up and down", "play the notes C D E Bb, up and down")]
    [InlineData("the notes c4, Bb3 and a3", "play the notes C4 Bb3 A3")]
    [InlineData("the note C, in G major", "play the note C, in G major")]
    [InlineData("C, F and G7, strum D DU UDU", "play C, F and G7, strum down down-up up-down-up")]
    [InlineData("C, F and G7, D DU UDU", "play C, F and G7, strum down down-up up-down-up")]
    [InlineData("C and D up and down, in eighths", "play C and D, up and down, in eighths")]
    [InlineData("C, F and D down, in eighths", "play C, F and D, down, in eighths")]
    [InlineData("G, D down and up", "play G and D, down and up")]
    [InlineData("Em and D down-up", "play Em and D, strum down-up")]
    [InlineData("D up and down", "play D, up and down")]
    [InlineData("Am rolls T I M T", "play Am, picked p-i-m-p")]
    [InlineData("the scale, with a count-in 4 times", "play the notes of the key, four times, with a count-in")]
    [InlineData("the scale, at 72,two octaves", "play the notes of the key, two octaves, at 72")]
    [InlineData("D, D DU UDU", "play D, strum down down-up up-down-up")]
    [InlineData("C and D, strum d d u u d u", "play C and D, strum down down up up down up")]
    [InlineData("C and D, strum D-DU-UDU", "play C and D, strum down down-up up-down-up")]
    [InlineData("C and D, strum D-U D-U", "play C and D, strum down-up down-up")]
    [InlineData("C and D, strum DDUUDU", "play C and D, strum down-down-up-up-down-up")]
    [InlineData("C and D", "play C and D")]
    [InlineData("G, C and D7, on a banjo, picked T I M", "play G, C and D7, on a banjo, picked p-i-m")]
    [InlineData("G and C, rolls T-I-M-T", "play G and C, picked p-i-m-p")]
    [InlineData("G and C, TIMT rolls, at 90", "play G and C, at 90, picked p-i-m-p")]
    [InlineData("G and C, with thumb-index-middle rolls", "play G and C, picked p-i-m")]
    [InlineData("G and C in a T I M roll", "play G and C, picked p-i-m")]
    [InlineData("Am, picked pimami at 60", "play Am, at 60, picked p-i-m-a-m-i")]
    [InlineData("the G major scale, two octaves", "play the G major scale, two octaves")]
    [InlineData("the scale over 2 octaves, up and down", "play the notes of the key, two octaves, up and down")]
    [InlineData("two octaves of the G major scale", "play the G major scale, two octaves")]
    [InlineData("the two-octave G major scale", "play the G major scale, two octaves")]
    [InlineData("the scale, with a click", "play the notes of the key, with a click")]
    [InlineData("the scale to the metronome", "play the notes of the key, with a click")]
    [InlineData("the scale, click off", "play the notes of the key")]
    [InlineData("the scale, with a two-bar count-in", "play the notes of the key, with a count-in of two bars")]
    [InlineData("the scale, one-measure count-in", "play the notes of the key, with a count-in")]
    public void A_sentence_has_one_canonical_form(string typed, string canonical) => Laws.HasForm(canonical, typed);

    [Fact]
    public void Every_part_of_a_sentence_is_understood()
    {
        var sentence = Laws.Read(
            "play the triads, on a bass, in D major, frets 0-9, as arpeggios, down and up, through the key by thirds, in every key by fewest moves, "
                + "in triplets, in 3/4, from 60 to 90 in steps of 10, twice, with a count-in, short, picked down-up, four bars, then four bars' rest"
        );

        Assert.Equal(Catalogue.All.Single(one => one.Name == "bass"), sentence.Material.Instrument);
        Assert.Equal(Key.Parse("D major"), sentence.Material.Key);
        Assert.Equal(new FretRange(0, 9), sentence.Material.Frets);
        Assert.False(sentence.IsBlock);
        Assert.Equal(Direction.DownAndUp, sentence.Direction);
        Assert.Equal(ChordWay.ByThirds, sentence.Through);
        Assert.Equal(KeyOrder.FewestMoves, sentence.EveryKey);
        Assert.Equal(NoteValue.Triplets, sentence.Value);
        Assert.Equal(Metre.Parse("3/4"), sentence.Metre);
        Assert.Equal([60, 70, 80, 90], sentence.Tempo!.Rungs.Select(rung => rung.BeatsPerMinute));
        Assert.Equal(2, sentence.Times);
        Assert.Equal(1, sentence.CountInBars);
        Assert.Equal(Touching.Short, sentence.Touch);
        Assert.Equal([Picked.Down, Picked.Up], sentence.Picking);
        Assert.Equal(4, sentence.EchoBars);
    }

    [Fact]
    public void A_part_of_a_sentence_is_found_where_it_stands()
    {
        const string text = "play the scale, up and down, at 72, on a bass";

        Assert.Equal((17, 11), PlayParser.PlaceOf(text, PlayPhrase.Direction));
        Assert.Equal((30, 5), PlayParser.PlaceOf(text, PlayPhrase.Tempo));
        Assert.Equal((6, 9), PlayParser.PlaceOf(text, ShowPhrase.Subject));
        Assert.Null(PlayParser.PlaceOf(text, PlayPhrase.Strum));
    }

    [Fact]
    public void Every_example_of_a_phrase_reads_with_something_that_it_goes_with()
    {
        string[] subjects = ["the scale", "the triads", "C and F", "the open strings"];
        foreach (var example in PlayPhrases.All.SelectMany(kind => kind.Examples))
        {
            Assert.Contains(subjects, subject => PlayParser.Parse($"{subject}, {example}").IsRead);
        }
    }
}
