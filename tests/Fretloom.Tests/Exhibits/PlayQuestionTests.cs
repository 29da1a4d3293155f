using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Exhibits;

public class PlayQuestionTests
{
    private static readonly string[] Instruments =
    [
        "guitar",
        "ukulele",
        "bass",
        "mandolin",
        "banjo",
        "guitar in fourths",
    ];

    private static readonly string[] Played =
    [
        "the scale, up and down",
        "the scale, down and up, in groups of three, in triplets",
        "the scale, 2 notes a string, in broken thirds, in sixteenths",
        "A minor pentatonic, in fifth position, up and down, in swing eighths",
        "the triads, up and down",
        "the triads, on strings 3-1, as block chords, through the key by thirds, in 3/4",
        "the seventh chords from I to IV, on strings 4-1, in every inversion",
        "C, F and G7, strum down down-up up-down-up",
        "Am, F, C and G, picked p-i-m-a-m-i, in 6/8",
        "the thirds, on strings 2-1, down and up",
        "every D, up and down, at 40",
        "the open strings, for tuning",
        "the scale, up and down, two bars, then two bars' rest",
    ];

    public static TheoryData<string> Sentences =>
        [
            .. from instrument in Instruments
            from played in Played
            from key in new[] { "C major", "F# minor", "Eb major" }
            select $"play {played}, on {instrument}, in {key}",
        ];

    [Theory]
    [MemberData(nameof(Sentences))]
    public void An_exercise_keeps_the_laws(string sentence)
    {
        var answer = PlayQuestion.Answer(sentence, ShowDefaults.Standard);
        if (answer.Errors is [{ } error])
        {
            // What does not fit an instrument is told so; that much of it is played is the next test.
            Assert.Matches("no shape of|no hand|takes|strings|does not fit|position", error.Message);
            return;
        }

        var exercise = answer.Value!;
        Assert.Equal(0, exercise.Length.Ticks % exercise.Metre.Bar.Ticks);
        Assert.NotEmpty(exercise.Notes);
        Assert.Equal(
            exercise.Notes.OrderBy(note => note.At).ThenByDescending(note => note.Note.Spot.String),
            exercise.Notes
        );
        Assert.All(exercise.Notes, note => Assert.True(note.Length.Ticks > 0 && note.End <= exercise.Length));
        foreach (var line in exercise.Notes.GroupBy(note => note.Note.Spot.String))
        {
            Assert.All(line.Zip(line.Skip(1)), pair => Assert.True(pair.First.End <= pair.Second.At));
        }

        foreach (var note in exercise.Notes)
        {
            Assert.True(exercise.Instrument.Has(note.Note.Spot));
            Assert.Equal(exercise.Instrument.MidiAt(note.Note.Spot), note.Note.Pitch.MidiNumber);
            Assert.Equal(exercise.Instrument.IsOpen(note.Note.Spot), note.Finger == Finger.None);
        }

        Assert.Equal(exercise.Sentence, PlayQuestion.Answer(exercise.Sentence, ShowDefaults.Standard).Value?.Sentence);
    }

    [Fact]
    public void Most_of_what_is_asked_is_played() =>
        Assert.InRange(
            Sentences.Count(sentence => PlayQuestion.Answer(sentence.Data, ShowDefaults.Standard).IsRead),
            Sentences.Count * 3 / 4,
            Sentences.Count
        );

    [Theory]
    [InlineData("the scale, up and down")]
    [InlineData("the triads, up and down, in every key by fourths, on strings 3-1")]
    [InlineData("the thirds, on strings 3-2, in every key by half-steps")]
    public void Every_note_of_a_key_is_in_the_key_of_its_section(string sentence)
    {
        var exercise = Play(sentence);
        foreach (var note in exercise.Notes)
        {
            var key = exercise.Sections.Last(section => section.At <= note.At).Key;
            Assert.Contains(note.Note.Pitch.Name, key.Scale.Notes);
            Assert.True(note.Note.Degree.IsDiatonic);
        }
    }

    [Fact]
    public void Twelve_keys_are_twelve_sections_each_at_a_bar_line()
    {
        var exercise = Play("the triads, on strings 3-1, in every key by fourths");

        Assert.Equal(
            TwelveKeys.From(Key.Parse("C major"), KeyOrder.Fourths),
            exercise.Sections.Select(section => section.Key)
        );
        Assert.All(exercise.Sections, section => Assert.Equal(0, section.At.Ticks % exercise.Metre.Bar.Ticks));
    }

    [Theory]
    [InlineData("the seventh chords from I to IV, up and down")]
    [InlineData("the scale, 3 notes a string, up and down, in G major")]
    public void The_same_spot_has_the_same_finger_up_and_down(string sentence)
    {
        var exercise = Play(sentence);
        var parts = exercise.Chords.Select(chord => chord.At).DefaultIfEmpty().ToList();
        foreach (var spot in exercise.Notes.GroupBy(note => (parts.Last(part => part <= note.At), note.Note.Spot)))
        {
            Assert.Single(spot.Select(note => note.Finger).Distinct());
        }
    }

    [Fact]
    public void Fingers_of_a_line_are_those_of_the_fingering_of_lines()
    {
        var exercise = Play("the spots 6:3 6:5 5:2 5:3 5:5 4:2 4:4 4:5");
        var spots = exercise.Notes.Select(note => note.Note.Spot).ToValueList();

        Assert.Equal(
            LineFingering.FindBothWays(exercise.Player, spots).Best!.Notes.Select(note => note.Finger),
            exercise.Notes.Select(note => note.Finger)
        );
    }

    [Theory]
    [InlineData("the triads, on strings 3-1", "0 2 4 6 8 10 12")]
    [InlineData("the triads, on strings 3-1, in 3/4", "0 3 6 9 12 15 18")]
    [InlineData("the triads, on strings 3-1, in 12/8", "0 1.5 3 4.5 6 7.5 9")]
    [InlineData("the triads, on strings 3-1, in triplets", "0 1 2 3 4 5 6")]
    [InlineData("the seventh chords from I to IV, on strings 4-1, up and down", "0 4 8 12")]
    [InlineData("C, F and G7, strum down down-up up-down-up", "0 4 8")]
    [InlineData("Am, F, C and G, picked p-i-m-a", "0 4 8 12")]
    [InlineData("the triads from I to IV, as block chords, in halves, on strings 3-1", "0 2 4 6")]
    public void Chords_begin_at_sensible_places_of_the_bar(string sentence, string places) =>
        Assert.Equal(places, string.Join(' ', Play(sentence).Chords.Select(chord => chord.At)));

    // Common practice, no source: 1, 2 and, and, 4 and.
    [Fact]
    public void Strokes_fall_where_the_arm_swings()
    {
        var exercise = Play("C, strum down down-up up-down-up");

        Assert.Equal(
            ["0 Down", "1 Down", "1.5 Up", "2.5 Up", "3 Down", "3.5 Up"],
            exercise.Notes.Select(note => $"{note.At} {note.Picked}").Distinct()
        );
        Assert.Equal("1 2 & & 4 &", string.Join(' ', exercise.Directions.Select(words => words.Text)));
    }

    [Fact]
    public void Rests_for_an_answer_are_as_long_as_what_is_played()
    {
        var exercise = Play("the scale, up and down, one bar, then one bar's rest");

        Assert.Equal([0, 2], exercise.Notes.Select(note => note.At / exercise.Metre.Bar).Distinct());
        Assert.Equal(4, exercise.Bars);
    }

    [Fact]
    public void A_ladder_has_a_pass_for_each_rung_and_time() =>
        Assert.Equal(
            [60, 60, 66, 66, 70, 70],
            Play("the scale, from 60 to 70 in steps of 6, twice").Passes.Select(pass => pass.BeatsPerMinute)
        );

    [Fact]
    public void What_is_unsaid_comes_from_the_lesson()
    {
        var lesson = new ShowDefaults(
            Catalogue.Default,
            Key.Parse("G major"),
            StringSet.Run(4, 1),
            new FretRange(5, 9),
            HandSize.Small
        );

        Assert.Equal(
            "play the thirds, on a guitar, in G major, on strings 2-1, frets 5-9, for a small hand, as block chords, in quarters, in 4/4, at 72",
            PlayQuestion.Answer("the thirds, on strings 2-1", lesson).Value?.Sentence
        );
    }

    private static Exercise Play(string text)
    {
        var answer = PlayQuestion.Answer(text, ShowDefaults.Standard);
        Assert.True(answer.IsRead, $"{text}\n{answer.Errors}");
        return answer.Value;
    }
}
