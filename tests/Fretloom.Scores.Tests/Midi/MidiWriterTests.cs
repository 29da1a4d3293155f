using Fretloom.Exercises;
using Fretloom.Neck;
using Fretloom.Scores.Midi;
using Fretloom.Testing;

namespace Fretloom.Scores.Tests.Midi;

/// <summary>Files are read back by the npm package midi-file.</summary>
public class MidiWriterTests
{
    private const string Sevenths = "the seventh chords from I to IV, up and down, in eighths, at 72";

    private const int Conductor = 0;
    private const int Strings = 1;

    public static bool HasReader => Oracle.WhyNot is null;

    [Fact(Skip = "skipped: node is not installed", SkipUnless = nameof(HasReader))]
    public async Task It_is_of_type_1_with_480_ticks_to_the_quarter()
    {
        var file = await ReadBack.OfAsync(Played.Of(Sevenths));

        Assert.Equal((1, 480), (file.Type, file.TicksPerQuarter));
        Assert.Equal(2, file.Tracks.Count);
        Assert.All(file.Tracks, track => Assert.Equal("endOfTrack", track[^1].Event.GetProperty("type").GetString()));
    }

    [Theory(Skip = "skipped: node is not installed", SkipUnless = nameof(HasReader))]
    [InlineData(Touching.Plain)]
    [InlineData(Touching.Short)]
    public async Task It_carries_the_notes_of_every_pass(Touching touch)
    {
        var exercise = Played.Of(Sevenths) with { Touch = touch, Passes = [new(60), new(66)], CountInBars = 1 };

        var file = await ReadBack.OfAsync(exercise);

        var bar = exercise.Metre.Bar.Ticks;
        var wanted =
            from pass in Enumerable.Range(0, 2)
            from note in exercise.Notes
            let begin = bar + pass * exercise.Length.Ticks + note.At.Ticks
            let length = touch == Touching.Short ? note.Length.Ticks / 2 : note.Length.Ticks
            let velocity = note.At.Ticks % bar == 0 ? 96 : 80
            select (begin, begin + length, 0, note.Note.Pitch.MidiNumber, velocity);
        Assert.Equal(wanted, file.Notes(Strings));
    }

    [Fact(Skip = "skipped: node is not installed", SkipUnless = nameof(HasReader))]
    public async Task Swing_moves_the_second_eighth_to_the_last_third_of_the_beat()
    {
        var exercise = Played.Of(Sevenths);

        var file = await ReadBack.OfAsync(exercise with { IsSwung = true });

        Assert.Equal(
            exercise.Notes.Select(note => note.At.Ticks / 480 * 480 + (note.At.Ticks % 480 == 240 ? 320 : 0)),
            file.Notes(Strings).Select(note => note.Tick)
        );
    }

    [Theory(Skip = "skipped: node is not installed", SkipUnless = nameof(HasReader))]
    [InlineData("4/4", 4, 4, 24)]
    [InlineData("3/4", 3, 4, 24)]
    [InlineData("6/8", 6, 8, 36)]
    [InlineData("12/8", 12, 8, 36)]
    public async Task Metre_tempo_and_key_stand_in_the_first_track(string metre, int count, int unit, int clocks)
    {
        var exercise = Played.Of($"{Sevenths}, in {metre}, in D major") with { Passes = [new(60), new(72), new(300)] };

        var file = await ReadBack.OfAsync(exercise);

        var signature = Assert.Single(file.All(Conductor, "timeSignature")).Event;
        Assert.Equal(
            (count, unit, clocks),
            (
                ReadBack.Number(signature, "numerator"),
                ReadBack.Number(signature, "denominator"),
                ReadBack.Number(signature, "metronome")
            )
        );
        var quarters = exercise.Metre.IsCompound ? 1.5 : 1;
        Assert.Equal(
            new[] { 60, 72, 300 }.Select(
                (beats, at) => (at * exercise.Length.Ticks, Math.Round(60e6 / beats / quarters))
            ),
            file.All(Conductor, "setTempo")
                .Select(one => (one.Tick, (double)ReadBack.Number(one.Event, "microsecondsPerBeat")))
        );
        Assert.All(
            file.All(Conductor, "keySignature"),
            one => Assert.Equal((2, 0), (ReadBack.Number(one.Event, "key"), ReadBack.Number(one.Event, "scale")))
        );
        Assert.Equal(["1: 60", "2: 72", "3: 300"], file.Texts(Conductor, "marker"));
    }

    [Fact(Skip = "skipped: node is not installed", SkipUnless = nameof(HasReader))]
    public async Task Flat_minor_keys_are_signed_too()
    {
        var file = await ReadBack.OfAsync(Played.Of("the scale, 3 notes a string, in C minor"));

        var one = Assert.Single(file.All(Conductor, "keySignature")).Event;
        Assert.Equal((-3, 1), (ReadBack.Number(one, "key"), ReadBack.Number(one, "scale")));
    }

    [Fact(Skip = "skipped: node is not installed", SkipUnless = nameof(HasReader))]
    public async Task Text_is_UTF_8()
    {
        const string Name = "B♭ – zwölf Töne, 音階";
        var plain = Played.Of(Sevenths);
        var exercise = plain with { Name = Name, Sections = [plain.Sections[0] with { Heading = "F♯ major" }] };

        var file = await ReadBack.OfAsync(exercise);

        Assert.Equal([Name], file.Texts(Conductor, "trackName"));
        Assert.Equal([exercise.Sentence], file.Texts(Conductor, "text"));
        Assert.Equal(["F♯ major"], file.Texts(Conductor, "marker"));
    }

    [Fact(Skip = "skipped: node is not installed", SkipUnless = nameof(HasReader))]
    public async Task Count_in_and_click_are_tracks_of_their_own()
    {
        var exercise = Played.Of(Sevenths) with { CountInBars = 1 };

        var counted = await ReadBack.OfAsync(exercise);
        var clicked = await ReadBack.OfAsync(exercise, new MidiOptions { HasClick = true });

        Assert.Equal(["count-in"], counted.Texts(2, "trackName"));
        Assert.Equal(3, counted.Tracks.Count);
        Assert.Equal(["count-in"], clicked.Texts(2, "trackName"));
        Assert.Equal(["click"], clicked.Texts(3, "trackName"));
        Assert.Equal([0, 480, 960, 1440], clicked.Notes(2).Select(note => note.Tick));
        Assert.Equal(
            Enumerable.Range(4, 4 * exercise.Bars).Select(beat => 480 * beat),
            clicked.Notes(3).Select(note => note.Tick)
        );
        Assert.All(clicked.Notes(2).Concat(clicked.Notes(3)), note => Assert.Equal(9, note.Channel));
        var softest = clicked.Notes(Strings).Min(note => note.Velocity);
        Assert.All(clicked.Notes(3), note => Assert.True(note.Velocity < softest));
    }

    [Fact(Skip = "skipped: node is not installed", SkipUnless = nameof(HasReader))]
    public async Task Each_string_has_its_channel_on_request_and_none_is_that_of_drums()
    {
        Catalogue.TryFind("twelve-string guitar", out var instrument);
        var spots = Enumerable.Range(1, 6).Select(number => new Spot(7 - number, 2)).ToList();
        var exercise = Played.InTurn(instrument!, spots, 60);

        var together = await ReadBack.OfAsync(exercise);
        var apart = await ReadBack.OfAsync(exercise, new MidiOptions { HasChannelPerString = true });

        Assert.All(together.Notes(Strings), note => Assert.Equal(0, note.Channel));
        // Four courses are an octave apart, two in unison.
        Assert.Equal([6, 6, 5, 5, 4, 4, 3, 3, 2, 1], apart.Notes(Strings).Select(note => note.Channel + 1));
        Assert.DoesNotContain(9, apart.Notes(Strings).Select(note => note.Channel));
    }

    [Fact(Skip = "skipped: node is not installed", SkipUnless = nameof(HasReader))]
    public async Task A_stroke_spreads_its_strings_and_ends_before_it_begins_again()
    {
        var down = Played.AtOnce(Catalogue.Default, Enumerable.Range(1, 6).Reverse().Select(at => new Spot(at, 0)), 60);
        var exercise = down with
        {
            Notes = down.Notes.Select(note => note with { Picked = Picked.Up }).ToValueList(),
            Passes = [new(60), new(60)],
        };

        var notes = (await ReadBack.OfAsync(exercise)).Notes(Strings);

        // A hundredth of a second at 60 is 4.8 ticks. String 1 is first.
        Assert.Equal([64, 59, 55, 50, 45, 40], notes.Take(6).Select(note => note.Midi));
        Assert.Equal([0, 5, 10, 14, 19, 24], notes.Take(6).Select(note => note.Tick));
        Assert.All(notes.Take(6), note => Assert.True(note.End <= 1920));
    }

    [Fact(Skip = "skipped: node is not installed", SkipUnless = nameof(HasReader))]
    public async Task Every_event_is_the_approved_one()
    {
        var exercise = Played.Of("the triads from I to ii, in swing eighths, in G major, at 72") with
        {
            CountInBars = 1,
            Passes = [new(72), new(80)],
        };

        var file = await ReadBack.OfAsync(exercise, new MidiOptions { HasClick = true, HasChannelPerString = true });

        Approved.Matches(file.ToString(), "Fretloom.Scores.Tests", "Midi", "triads.txt");
    }

    [Fact]
    public void The_same_exercise_gives_the_same_bytes() =>
        Assert.Equal(
            MidiWriter.Write(Played.Of(Sevenths), new MidiOptions()),
            MidiWriter.Write(Played.Of(Sevenths), new MidiOptions())
        );
}
