using Fretloom.Exercises;
using Fretloom.Exhibits;

namespace Fretloom.Tests.Exercises;

public class PerformanceTests
{
    private static readonly string[] Sentences =
    [
        "the seventh chords from I to IV, up and down, in eighths, at 72",
        "the scale, 3 notes a string, in G major, in triplets, in 3/4",
        "the triads, in A minor, in 6/8, at 60",
        "the scale, 3 notes a string, on a bass, in sixteenths, at 66",
    ];

    /// <summary>Exercises with passes, count-in, swing and touch at random.</summary>
    private static readonly Gen<Exercise> AnyExercise = Gen.Select(
        Gen.Int[0, Sentences.Length - 1].Select(at => Played(Sentences[at])),
        Gen.Int[20, 300].Select(beats => new Tempo(beats)).List[1, 5],
        Gen.Int[0, 4],
        Gen.Bool,
        Gen.Int[0, 2].Select(at => (Touching)at),
        (exercise, passes, countIn, isSwung, touch) =>
            exercise with
            {
                Passes = passes.ToValueList(),
                CountInBars = countIn,
                IsSwung = isSwung,
                Touch = touch,
            }
    );

    [Fact]
    public void It_is_as_long_as_the_count_in_and_all_passes() =>
        AnyExercise.Sample(exercise =>
        {
            var played = Performance.Of(exercise);

            var bar = exercise.Metre.Bar.Quarters;
            Assert.Equal((exercise.CountInBars + exercise.Passes.Count * exercise.Bars) * bar, played.Quarters, 9);
            Assert.Equal(exercise.CountInBars * bar, played.CountIn, 9);
            Assert.Equal(exercise.Seconds, played.Seconds, 9);
            var beats = exercise.Metre.BeatsPerBar;
            var minutes =
                (double)exercise.CountInBars * beats / exercise.Passes[0].BeatsPerMinute
                + exercise.Passes.Sum(tempo => (double)exercise.Bars * beats / tempo.BeatsPerMinute);
            Assert.Equal(60 * minutes, played.Seconds, 9);
        });

    [Fact]
    public void Every_pass_has_every_note_once_and_within_the_pass() =>
        AnyExercise.Sample(exercise =>
        {
            var played = Performance.Of(exercise);

            for (var pass = 0; pass < exercise.Passes.Count; pass++)
            {
                var begin = played.CountIn + pass * exercise.Length.Quarters;
                var end = begin + exercise.Length.Quarters;
                var inPass = played.Notes.Where(note => note.At >= begin - 1e-9 && note.At < end - 1e-9).ToList();
                Assert.Equal(Enumerable.Range(0, exercise.Notes.Count), inPass.Select(note => note.Note));
                Assert.All(inPass, note => Assert.True(note.At + note.Length <= end + 1e-9));
                Assert.All(inPass, note => Assert.Equal(exercise.Notes[note.Note].Note.Spot, note.Spot));
            }
        });

    [Fact]
    public void Notes_come_by_time_and_a_string_sounds_one_at_a_time() =>
        AnyExercise.Sample(exercise =>
        {
            var notes = Performance.Of(exercise).Notes;

            Assert.Equal(notes.Select(note => note.At).Order(), notes.Select(note => note.At));
            Assert.All(notes, note => Assert.True(note.Length > 0));
            foreach (var line in notes.GroupBy(note => note.Spot.String))
            {
                Assert.All(
                    line.Zip(line.Skip(1)),
                    pair => Assert.True(pair.First.At + pair.First.Length <= pair.Second.At + 1e-9)
                );
            }
        });

    [Fact]
    public void Sustained_rings_at_least_as_long_as_written_and_short_half_as_long() =>
        AnyExercise.Sample(exercise =>
        {
            var plain = Performance.Of(exercise with { Touch = Touching.Plain }).Notes;
            var sustained = Performance.Of(exercise with { Touch = Touching.Sustained }).Notes;
            var shortened = Performance.Of(exercise with { Touch = Touching.Short }).Notes;

            Assert.All(plain.Zip(sustained), pair => Assert.True(pair.Second.Length >= pair.First.Length - 1e-9));
            Assert.All(plain.Zip(shortened), pair => Assert.Equal(pair.First.Length / 2, pair.Second.Length, 9));
        });

    [Fact]
    public void Sustained_notes_stop_when_the_chord_changes()
    {
        var exercise = Played(Sentences[0]) with { Touch = Touching.Sustained };
        var changes = exercise.Chords.Select(chord => chord.At.Quarters).Append(exercise.Length.Quarters).ToList();

        Assert.All(
            Performance.Of(exercise).Notes,
            note => Assert.True(note.At + note.Length <= changes.First(change => change > note.At) + 1e-9)
        );
        Assert.Contains(Performance.Of(exercise).Notes, note => note.Length > 1);
    }

    [Fact]
    public void Swing_moves_offbeats_to_the_last_third_and_leaves_beats_and_compound_metres_alone()
    {
        foreach (var sentence in Sentences)
        {
            var straight = Played(sentence) with { IsSwung = false };
            var swung = straight with { IsSwung = true };
            for (var tick = 0; tick < 4 * Beats.TicksPerQuarter; tick++)
            {
                var at = Beats.FromTicks(tick);
                Assert.Equal(at.Quarters, straight.SoundsAt(at), 9);
                if (straight.Metre.IsCompound || tick % 480 == 0)
                {
                    Assert.Equal(at.Quarters, swung.SoundsAt(at), 9);
                }
                else if (tick % 480 == 240)
                {
                    Assert.Equal(tick / 480 + 2.0 / 3, swung.SoundsAt(at), 9);
                }

                Assert.True(swung.SoundsAt(at) < swung.SoundsAt(Beats.FromTicks(tick + 1)));
            }
        }
    }

    [Fact]
    public void A_click_falls_on_every_beat_and_the_first_of_each_bar_differs() =>
        AnyExercise.Sample(exercise =>
        {
            var played = Performance.Of(exercise);
            var beats = exercise.Metre.BeatsPerBar * (exercise.CountInBars + exercise.Bars * exercise.Passes.Count);

            Assert.Equal(
                Enumerable.Range(0, beats).Select(beat => beat * exercise.Metre.Beat.Quarters),
                played.Clicks.Select(click => click.At)
            );
            Assert.Equal(
                Enumerable.Range(0, beats).Select(beat => beat % exercise.Metre.BeatsPerBar == 0),
                played.Clicks.Select(click => click.IsFirst)
            );
        });

    /// <summary>A slow, obvious clock: it walks by ticks.</summary>
    [Fact]
    public void Seconds_are_those_of_a_clock_that_walks_tick_by_tick()
    {
        var exercise = Played(Sentences[2]) with { Passes = [new(60), new(90), new(300)], CountInBars = 1 };
        var played = Performance.Of(exercise);
        var seconds = 0.0;
        for (var tick = 0; tick < (int)(played.Quarters * 480); tick++)
        {
            Assert.Equal(seconds, played.SecondsAt(tick / 480.0), 6);
            var pass = Math.Max(0, (tick - exercise.Metre.Bar.Ticks) / exercise.Length.Ticks);
            seconds += 60.0 / exercise.Passes[pass].BeatsPerMinute / exercise.Metre.Beat.Ticks;
        }
    }

    [Fact]
    public void Both_strings_of_a_pair_sound()
    {
        var notes = Performance.Of(Played("the scale, 3 notes a string, on a twelve-string guitar, in E minor")).Notes;

        Assert.Equal(notes.Count, 2 * notes.Count(note => note.IsPartner));
        Assert.Equal([0, 12], notes.Where(note => note.Note == 0).Select(note => note.Midi - notes[0].Midi));
    }

    [Theory]
    [InlineData(Picked.Down, 6)]
    [InlineData(Picked.Up, 1)]
    public void A_stroke_begins_with_the_string_it_meets_first_and_passes_one_each_hundredth_of_a_second(
        Picked picked,
        int firstString
    )
    {
        var chords = Played("the triads from I to ii, on a guitar, as block chords");
        var exercise = chords with
        {
            Notes = chords.Notes.Select(note => note with { Picked = picked }).ToValueList(),
            Passes = [new(60)],
        };

        var notes = Performance.Of(exercise).Notes.Where(note => note.At < 1).ToList();

        var ordered = notes.Select(note => note.Spot.String).ToList();
        Assert.Equal(firstString == 6 ? ordered.OrderDescending() : ordered.Order(), ordered);
        Assert.True(notes.Count > 1);
        Assert.Equal(
            Enumerable.Range(0, notes.Count).Select(at => at * 0.01),
            notes.Select(note => Math.Round(note.At, 9))
        );
    }

    [Fact]
    public void More_than_an_hour_is_refused_with_a_place()
    {
        var answer = PlayQuestion.Answer("the seventh chords, at 20, 99 times", ShowDefaults.Standard);

        Assert.False(answer.IsRead);
        Assert.Contains("minutes, and at most an hour is played", answer.Errors[0].Message, StringComparison.Ordinal);
    }

    private static Exercise Played(string sentence) => PlayQuestion.Answer(sentence, ShowDefaults.Standard).Value!;
}
