using System.Globalization;
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

    // Fingers as methods have them: C major in second position from G, A minor pentatonic in fifth, first position with open
    // strings. Common practice, no source.
    [Theory]
    [InlineData("the spots 6:3 6:5 5:2 5:3 5:5 4:2 4:4 4:5", "2 4 1 2 4 1 3 4")]
    [InlineData("A minor pentatonic, in fifth position", "1 4 1 3 1 3 1 3 1 4 1 4")]
    [InlineData("the scale, in C major, in first position", "3 0 2 3 0 2 0 1 0 1 3 0 1 3")]
    public void Fingers_of_a_line_are_those_that_are_taught(string sentence, string fingers)
    {
        var taught = fingers.Split(' ').ToList();
        var found = Play(sentence)
            .Notes.Select(note => ((int)note.Finger).ToString(CultureInfo.InvariantCulture))
            .ToList();
        Assert.Equal(taught.Take(found.Count), found);
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
        Assert.Equal("1 2 & & 4 &", string.Join(' ', exercise.Words.Select(words => words.Text)));
    }

    [Theory]
    [InlineData("the C major scale, on string 2, frets 0-13", "2:1 2:3 2:5 2:6 2:8 2:10 2:12 2:13")]
    [InlineData("the scale, in D major, on string 4", "4:0 4:2 4:4 4:5 4:7 4:9 4:11 4:12")]
    [InlineData("the scale, in G major, on string 4, on a bass", "4:3 4:5 4:7 4:8 4:10 4:12 4:14 4:15")]
    [InlineData("the A minor pentatonic scale, on strings 2-1", "1:5 1:8 1:10 1:12 1:15 1:17")]
    [InlineData("the scale, in C major, on strings 2-1", "2:1 2:3 1:0 1:1 1:3 1:5 1:7 1:8")]
    public void A_scale_on_few_strings_goes_along_them(string sentence, string spots) =>
        Assert.Equal(spots, string.Join(' ', Play(sentence).Notes.Select(note => note.Note.Spot)));

    [Theory]
    [InlineData("the scale, in G major, in first position", "G2 G4")]
    [InlineData("the scale, in E minor, in first position", "E2 E4")]
    [InlineData("A minor pentatonic, in fifth position", "A2 C5")]
    public void A_scale_in_a_position_runs_from_tonic_to_tonic_and_a_box_to_its_end(string sentence, string ends)
    {
        var notes = Play(sentence).Notes;
        Assert.Equal(ends, $"{notes[0].Note.Pitch} {notes[^1].Note.Pitch}");
    }

    [Theory]
    [InlineData("the triads, in G major, in first inversion, on strings 3-1, as block chords")]
    [InlineData("the triads, in C major, on strings 3-1")]
    [InlineData("the seventh chords, in G major, in drop 2, on strings 4-1, as block chords")]
    [InlineData("the triads, in F major, on strings 4-2")]
    [InlineData("the triads, on a banjo, in G major, on strings 3-1")]
    public void Chords_of_the_key_rise_from_each_to_the_next(string sentence)
    {
        var exercise = Play(sentence);
        var heights = exercise
            .Chords.Select((chord, at) => (chord.At, End: at == 6 ? exercise.Length : exercise.Chords[at + 1].At))
            .Select(chord => exercise.NotesIn(chord.At, chord.End).Average(note => note.Note.Pitch.MidiNumber))
            .ToList();
        Assert.Equal(7, heights.Count);
        Assert.All(heights.Zip(heights.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 0.5, 4));
    }

    [Fact]
    public void Inversions_follow_each_other_up_the_neck_and_are_named()
    {
        var exercise = Play("Cmaj7, in every inversion, in drop 2, on strings 4-1, as block chords");

        Assert.Equal(["Cmaj7/E", "Cmaj7/G", "Cmaj7/B", "Cmaj7"], exercise.Chords.Select(mark => mark.Chord.ToString()));
        Assert.Equal(
            [2, 5, 9, 10],
            exercise.Notes.Where(note => note.Note.Spot.String == 4).Select(note => note.Note.Spot.Fret)
        );
    }

    [Fact]
    public void Figures_tell_the_inversions_of_chords_of_the_key() =>
        Assert.Equal(
            ["I6", "ii6", "iii6"],
            Play("the triads from I to III, in first inversion, on strings 3-1").Chords.Select(mark => $"{mark.Roman}")
        );

    // Every row shorter than a group, and every other.
    [Fact]
    public void Groups_need_as_many_notes_as_they_have()
    {
        foreach (
            var (group, least) in new[] { ("in broken thirds", 3), ("in groups of three", 3), ("in groups of four", 4) }
        )
        {
            for (var count = 1; count <= 5; count++)
            {
                var answer = PlayQuestion.Answer(
                    $"every E, {group}, frets 0-{(count < 5 ? 0 : 5)}, on strings {(count switch { 1 => "1", 2 => "6, 1", _ => "6-1" })}",
                    ShowDefaults.Standard
                );
                if (answer.IsRead)
                {
                    Assert.True(answer.Value.Notes.Count >= least);
                }
                else
                {
                    Assert.StartsWith($"such groups need {least} notes", answer.Errors[0].Message);
                }
            }
        }
    }

    [Theory]
    [InlineData(
        "the spots 6:1 6:2 6:3 6:4 6:5 6:6 6:7 6:8 6:9 6:10 6:11 6:12 6:13 6:14 6:15 6:15, at 150, twice",
        "6:15 to 6:1"
    )]
    [InlineData("the spots 6:1 6:15 6:1, at 150", "6:1 to 6:15")]
    public void No_hand_leaps_too_far_in_too_short_a_time_nor_back_to_the_beginning(string sentence, string leap) =>
        Assert.Contains(leap, PlayQuestion.Answer(sentence, ShowDefaults.Standard).Errors[0].Message);

    [Theory]
    [InlineData("strum down down, in 6/8", "0 3")]
    [InlineData("strum down-up-down down-up, in 6/8", "0 1 2 3 4")]
    [InlineData("strum down down down down down down, in 6/8", "0 1 2 3 4 5")]
    [InlineData("strum down-up, in 12/8", "0 1 3 4 6 7 9 10")]
    [InlineData("strum down down-up", "0 2 3 4 6 7")]
    [InlineData("strum down down-up, in 3/4", "0 2 3")]
    [InlineData("strum down up, in 2/4", "0 1 2 3")]
    [InlineData("strum up down", "1 2 5 6")]
    public void Strokes_come_on_beats_or_between_them_and_fill_the_bar(string strum, string eighths) =>
        Assert.Equal(
            eighths,
            string.Join(' ', Play($"C, {strum}").Notes.Select(note => note.At / Beats.Of(1, 8)).Distinct())
        );

    [Fact]
    public void A_short_exercise_goes_round_until_it_fills_the_bars_before_an_answer()
    {
        var exercise = Play("the C major scale, on a ukulele, two bars, then two bars' rest");

        Assert.Equal([0, 1], exercise.Notes.Select(note => note.At / exercise.Metre.Bar).Distinct());
        Assert.Equal(4, exercise.Bars);
    }

    [Fact]
    public void Chords_that_are_strummed_sound_together() =>
        Assert.Equal(3, Play("G, C and D, strummed").Notes.Select(note => note.At).Distinct().Count());

    [Theory]
    [InlineData("in quarters", "strum down down down down")]
    [InlineData("in eighths", "strum down-up down-up down-up down-up")]
    [InlineData("in swing eighths", "in swing eighths, strum down-up down-up down-up down-up")]
    [InlineData("in quarters, in 3/4", "in 3/4, strum down down down")]
    [InlineData("in eighths, in 6/8", "in 6/8, strum down-up-down down-up-down")]
    public void Chords_that_are_strummed_in_a_rhythm_are_so_for_a_bar_each(string rhythm, string pattern)
    {
        var (said, meant) = (Play($"G, C and D, strummed, {rhythm}"), Play($"G, C and D, {pattern}"));
        Assert.Equal(3, said.Bars);
        Assert.Equal(meant.Notes, said.Notes);
    }

    [Fact]
    public void Single_notes_far_apart_warn_of_no_stretch() => Assert.Null(Play("every F#").Widest);

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

    // Two octaves of C major from the eighth fret, of G major from the third with open strings, of A minor pentatonic in fifth
    // position; the E chromatic scale on frets 0 to 4. Common practice, no source.
    [Theory]
    [InlineData("the C major scale, two octaves", "6:8 6:10 5:7 5:8 5:10 4:7 4:9 4:10 3:7 3:9 3:10 2:8 2:10 1:7 1:8")]
    [InlineData("the G major scale, two octaves", "6:3 5:0 5:2 5:3 4:0 4:2 4:4 3:0 3:2 2:0 2:1 2:3 1:0 1:2 1:3")]
    [InlineData("the G major scale, one octave", "6:3 5:0 5:2 5:3 4:0 4:2 4:4 3:0")]
    [InlineData("A minor pentatonic, two octaves", "6:5 6:8 5:5 5:7 4:5 4:7 3:5 3:7 2:5 2:8 1:5")]
    [InlineData(
        "the chromatic scale, in E major, two octaves",
        "6:0 6:1 6:2 6:3 6:4 5:0 5:1 5:2 5:3 5:4 4:0 4:1 4:2 4:3 4:4 3:0 3:1 3:2 3:3 2:0 2:1 2:2 2:3 2:4 1:0"
    )]
    public void A_scale_goes_over_the_octaves_that_are_asked_for(string sentence, string spots) =>
        Assert.Equal(spots, string.Join(' ', Play(sentence).Notes.Select(note => note.Note.Spot)));

    [Fact]
    public void Octaves_that_are_played_are_complete_on_every_instrument()
    {
        foreach (var instrument in Instruments)
        {
            foreach (var octaves in new[] { "one octave", "two octaves", "three octaves" })
            {
                var sentence = $"the scale, {octaves}, on {instrument}, in D major";
                var answer = PlayQuestion.Answer(sentence, ShowDefaults.Standard);
                if (!answer.IsRead)
                {
                    Assert.Equal(sentence.IndexOf(octaves, StringComparison.Ordinal) + 1, answer.Errors[0].Column);
                    continue;
                }

                var sounds = answer.Value.Notes.Select(note => note.Note.Pitch.MidiNumber).ToList();
                Assert.Equal(
                    12 * Array.IndexOf(["", "one", "two", "three"], octaves.Split(' ')[0]),
                    sounds[^1] - sounds[0]
                );
                Assert.All(sounds.Zip(sounds.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 1, 2));
            }
        }
    }

    // Each the nearest to the one before, from the lowest place that holds them all.
    [Theory]
    [InlineData("the notes C D E", "C3 D3 E3")]
    [InlineData("the notes E D C D E E E", "E3 D3 C3 D3 E3 E3 E3")]
    [InlineData("the notes C4 D E", "C4 D4 E4")]
    [InlineData("the notes G C D, on a bass", "G1 C2 D2")]
    [InlineData("the notes C F#", "C3 F#3")]
    [InlineData("the notes C D, on string 1", "C5 D5")]
    [InlineData("the notes C G E C, frets 0-3, on strings 5-3", "C3 G3 E3 C3")]
    public void Notes_that_are_named_lie_near_each_other(string sentence, string pitches) =>
        Assert.Equal(pitches, string.Join(' ', Play(sentence).Notes.Select(note => note.Note.Pitch)));

    [Theory]
    [InlineData("C, in third inversion", 4)]
    [InlineData("the triads, in C major, on string 1", 25)]
    [InlineData("the scale, in every key, 99 times", 26)]
    [InlineData("the scale, in every key, at 20, three times, 4 times", 46)]
    public void What_cannot_be_played_is_pointed_at(string sentence, int column) =>
        Assert.Equal(column, PlayQuestion.Answer(sentence, ShowDefaults.Standard).Errors[0].Column);

    [Fact]
    public void Shapes_behind_a_capo_are_held_as_without_it() =>
        Assert.Equal(
            Play("G, C and D").Notes.Select(note => note.Note.Spot),
            Play("the shapes G, C and D, with a capo at 2").Notes.Select(note => note.Note.Spot)
        );

    // The index finger begins each string, the little finger ends it. Common practice, no source.
    [Theory]
    [InlineData("the scale, 4 notes a string, in G major")]
    [InlineData("the scale, 4 notes a string, in F major, on a bass")]
    [InlineData("the chromatic scale, 4 notes a string")]
    [InlineData("the scale, 4 notes a string, in C major, on a guitar in fourths, up and down")]
    public void A_string_with_a_shift_goes_from_index_to_little_finger(string sentence)
    {
        foreach (var one in Play(sentence).Notes.GroupBy(note => note.Note.Spot.String))
        {
            var stopped = one.Where(note => note.Finger != Finger.None).OrderBy(note => note.Note.Spot.Fret).ToList();
            Assert.Equal((Finger.Index, Finger.Little), (stopped[0].Finger, stopped[^1].Finger));
        }
    }

    // Common practice, no source.
    [Theory]
    [InlineData("the scale, 4 notes a string, in G major", "1134 1134 1124 1124 1244 1244")]
    [InlineData("the scale, 4 notes a string, in F major, on a bass", "1134 1134 1124 1124")]
    [InlineData("the chromatic scale, 4 notes a string", "1234 1234 1234 1234 1234 1234")]
    [InlineData("the scale, 4 notes a string, in G major, on a mandolin", "0123 0123 0123 0123")]
    [InlineData("the scale, 3 notes a string, in G major", "124 124 124 124 134 134")]
    public void Of_four_notes_on_a_string_one_finger_plays_two(string sentence, string fingers) =>
        Assert.Equal(
            fingers,
            string.Join(
                ' ',
                Play(sentence)
                    .Notes.GroupBy(note => note.Note.Spot.String)
                    .Select(one => string.Concat(one.Select(note => $"{(int)note.Finger}")))
            )
        );

    [Fact]
    public void Octaves_with_notes_a_string_begin_with_as_many_on_the_first_string() =>
        Assert.Equal(
            "6:3 6:5 6:7 5:3 5:5 5:7 4:4 4:5 4:7 3:4 3:5 3:7 2:5 2:7 2:8",
            string.Join(
                ' ',
                Play("the scale, 3 notes a string, two octaves, in G major").Notes.Select(note => note.Note.Spot)
            )
        );

    // No melody goes along the short string of a banjo, nor back to string 4 of a ukulele. Common practice, no source.
    [Theory]
    [InlineData("the D major scale, two octaves, on a banjo")]
    [InlineData("the C major scale, two octaves, on a ukulele")]
    [InlineData("the notes C D E F G A B C, on a ukulele")]
    [InlineData("the notes G4 A4, on a banjo")]
    public void Strings_out_of_order_are_left_to_chords(string sentence)
    {
        var strings = Play(sentence).Notes.Select(note => note.Note.Spot.String).ToList();
        Assert.Equal(strings.OrderDescending(), strings);
    }

    private static Exercise Play(string text)
    {
        var answer = PlayQuestion.Answer(text, ShowDefaults.Standard);
        Assert.True(answer.IsRead, $"{text}\n{answer.Errors}");
        return answer.Value;
    }
}
