using Fretloom.Exercises;
using Fretloom.Neck;
using Fretloom.Scores.Sound;
using Fretloom.Theory;

namespace Fretloom.Scores.Tests.Sound;

public class SoundRendererTests
{
    private const string Sevenths = "the seventh chords from I to IV, up and down, in eighths, at 120";

    public static TheoryData<string> Instruments => [.. Catalogue.All.Select(instrument => instrument.Name)];

    [Fact]
    public void The_same_seed_gives_the_same_bytes_and_another_seed_others()
    {
        var exercise = Played.Of(Sevenths);

        Assert.Equal(Bytes(exercise, seed: 1), Bytes(exercise, seed: 1));
        Assert.NotEqual(Bytes(exercise, seed: 1), Bytes(exercise, seed: 2));
    }

    [Theory]
    [InlineData(15, true)]
    [InlineData(16, false)]
    public void A_quarter_of_an_hour_is_the_longest_sound(int minutes, bool isRendered)
    {
        // A bar of four beats at 20 beats a minute, five times a minute.
        var bar = Played.AtOnce(Catalogue.Default, [new Spot(1, 0)], 20);
        var exercise = bar with { Passes = [.. Enumerable.Repeat(new Tempo(20), 5 * minutes)] };
        var options = new SoundOptions { HasStrings = false };

        if (isRendered)
        {
            Assert.Null(SoundRenderer.WhyTooLong(exercise));
            Assert.InRange(
                Render(exercise, options).Length,
                2 * 44_100 * 60 * minutes,
                2 * 44_100 * (60 * minutes + 2)
            );
        }
        else
        {
            Assert.Contains("16 minutes", SoundRenderer.WhyTooLong(exercise), StringComparison.Ordinal);
            Assert.Throws<ArgumentException>(() => Render(exercise, options));
        }
    }

    /// <summary>A ten-note chord and more: the instruments of the catalogue have up to twelve strings.</summary>
    [Theory]
    [MemberData(nameof(Instruments))]
    public void All_strings_at_once_do_not_clip(string name)
    {
        Catalogue.TryFind(name, out var instrument);
        var spots = instrument!.Strings.Select((course, at) => new Spot(at + 1, course.StartsAtFret));

        var sound = Render(Played.AtOnce(instrument, spots, 120), new SoundOptions { HasClick = true });

        Assert.InRange(sound.Max(Math.Abs), 0.1, 0.91);
    }

    [Fact]
    public void A_chord_of_ten_notes_does_not_clip()
    {
        var instrument = TenStrings;
        var spots = Enumerable.Range(1, 10).Select(number => new Spot(number, 0));
        foreach (var seed in Enumerable.Range(0, 20))
        {
            var options = new SoundOptions { Seed = seed, HasClick = true };
            Assert.InRange(Render(Played.AtOnce(instrument, spots, 60), options).Max(Math.Abs), 0.1, 0.91);
        }
    }

    /// <summary>The softest note is one alone; the click is compared with each, in peak and over the length of a click.</summary>
    [Theory]
    [MemberData(nameof(Instruments))]
    public void A_click_is_never_louder_than_the_music(string name)
    {
        Catalogue.TryFind(name, out var instrument);
        var exercise = Played.ChromaticRun(instrument!, 240);
        var notes = Render(exercise, new SoundOptions());
        var clicks = Render(exercise, new SoundOptions { HasClick = true, HasStrings = false });
        var beat = 2 * 44_100 / 4;

        for (var at = 0; at < exercise.Notes.Count; at++)
        {
            var note = notes.AsSpan(at * beat, beat);
            var click = clicks.AsSpan(at * beat, beat);
            Assert.True(Peak(click) > 0.05, "there is no click");
            Assert.True(Peak(click) <= Peak(note), $"{exercise.Notes[at].Note.Pitch}: {Peak(click)} over {Peak(note)}");
            Assert.True(Energy(click[..2646]) <= Energy(note[..2646]), $"{exercise.Notes[at].Note.Pitch}");
        }
    }

    [Fact]
    public void The_count_in_clicks_and_the_passes_click_when_asked()
    {
        var exercise = Played.Of(Sevenths) with { CountInBars = 1 };
        var quiet = Render(exercise, new SoundOptions { HasStrings = false });
        var clicking = Render(exercise, new SoundOptions { HasStrings = false, HasClick = true });
        var countIn = 2 * 44_100 * 2;

        Assert.Equal([0, 1, 2, 3], Beats(quiet));
        Assert.Equal(Enumerable.Range(0, 4 + 4 * exercise.Bars), Beats(clicking));
        Assert.All(quiet[countIn..], sample => Assert.Equal(0, sample));
        Assert.All(
            Render(Played.Of(Sevenths), new SoundOptions { HasStrings = false }),
            sample => Assert.Equal(0, sample)
        );

        static IEnumerable<int> Beats(float[] sound) =>
            sound
                .Chunk(2 * 22_050)
                .Select((beat, at) => (beat, at))
                .Where(one => Peak(one.beat) > 0.05)
                .Select(one => one.at);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1.01)]
    [InlineData(1, double.NaN)]
    public void A_string_stands_nowhere_beyond_the_sides(int number, double place) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new StringPlace(number, place));

    [Fact]
    public void Options_name_strings_that_can_be_there()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new SoundOptions { Muted = [0] });
        Assert.Throws<ArgumentException>(() => new SoundOptions { Pan = [new(1, 0), new(1, 0.5)] });
        Assert.Null(new SoundOptions { Muted = [6], Pan = [new(6, 1)] }.WhyNotOn(Catalogue.Default));
        Assert.Contains(
            "no string 7",
            new SoundOptions { Muted = [7] }.WhyNotOn(Catalogue.Default),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Strings_stand_where_they_are_put_and_are_silent_when_muted()
    {
        var guitar = Catalogue.Default;
        var exercise = Played.InTurn(guitar, [new(6, 3), new(1, 3)], 60);
        var options = new SoundOptions { Pan = [new(1, 1), new(6, -1)] };

        var apart = Render(exercise, options);
        var muted = Render(exercise, options with { Muted = [6] });
        var silent = Render(exercise, options with { Muted = [1, 6] });

        var second = 2 * 44_100;
        var (left, right) = (Side(apart, 0), Side(apart, 1));
        Assert.True(Peak(left.AsSpan(0, 44_100)) > 0.05);
        Assert.InRange(Peak(right.AsSpan(0, 44_100)), 0, 1e-6f);
        Assert.True(Peak(right.AsSpan(44_100, 44_100)) > 0.05);
        Assert.All(muted[..second], sample => Assert.Equal(0, sample));
        Assert.True(Peak(muted.AsSpan(second, second)) > 0.05);
        Assert.All(silent, sample => Assert.Equal(0, sample));
    }

    [Theory]
    [InlineData("guitar")]
    [InlineData("ukulele")]
    [InlineData("bass")]
    public void It_has_no_steady_part_and_ends_in_silence(string name)
    {
        Catalogue.TryFind(name, out var instrument);

        var sound = Render(Played.ChromaticRun(instrument!, 120), new SoundOptions());

        Assert.Equal(0, sound.Average(), tolerance: 5e-4);
        Assert.InRange(Peak(sound.AsSpan()[^4410..]), 0, 1e-4f);
    }

    /// <summary>At the end of a note the sound bends no more sharply than a moment before.</summary>
    [Theory]
    [InlineData("guitar")]
    [InlineData("ukulele")]
    [InlineData("bass")]
    public void Notes_end_without_a_click(string name)
    {
        Catalogue.TryFind(name, out var instrument);
        foreach (var midi in Played.Chromatic(instrument!))
        {
            var spot = instrument!.SpotsOf(midi).First();
            var exercise = Played.InTurn(instrument, [spot], 60) with { Touch = Touching.Short };
            var sound = Side(Render(exercise, new SoundOptions()), 0);

            var before = Bend(sound.AsSpan(22_050 - 2000, 2000));
            var after = Bend(sound.AsSpan(22_050, 8000));

            Assert.True(after <= 1.2 * before, $"{midi}: {after} after {before}");
        }

        static float Bend(ReadOnlySpan<float> sound)
        {
            var most = 0f;
            for (var at = 2; at < sound.Length; at++)
            {
                most = Math.Max(most, Math.Abs(sound[at] - 2 * sound[at - 1] + sound[at - 2]));
            }

            return most;
        }
    }

    [Fact]
    public void It_is_as_long_as_its_passes_and_a_second_more()
    {
        var exercise = Played.Of(Sevenths) with { Passes = [new(60), new(90)], CountInBars = 2 };

        var sound = Render(exercise, new SoundOptions { Rate = 48_000 });

        Assert.Equal(exercise.Seconds + 1, sound.Length / 2 / 48_000.0, tolerance: 0.001);
    }

    [Fact]
    public void Progress_rises_to_all()
    {
        var told = new List<double>();

        SoundRenderer.Render(
            Played.Of(Sevenths),
            new SoundOptions(),
            new Told(told.Add),
            TestContext.Current.CancellationToken
        );

        Assert.Equal(told.Order(), told);
        Assert.True(told.Count > 10);
        Assert.Equal(1, told[^1]);
    }

    [Fact]
    public void It_can_be_stopped_on_the_way()
    {
        using var stop = new CancellationTokenSource();
        var told = 0;

        Assert.Throws<OperationCanceledException>(() =>
            SoundRenderer.Render(
                Played.Of(Sevenths),
                new SoundOptions(),
                new Told(_ =>
                {
                    told++;
                    stop.Cancel();
                }),
                stop.Token
            )
        );
        Assert.Equal(1, told);
    }

    [Fact]
    public void An_exercise_of_more_than_an_hour_is_refused()
    {
        var exercise = Played.Of(Sevenths) with { Passes = Enumerable.Repeat(new Tempo(20), 500).ToValueList() };

        Assert.Throws<ArgumentException>(() => Render(exercise, new SoundOptions()));
    }

    private static Instrument TenStrings { get; } =
        new(
            "ten strings",
            from pitch in new[] { "A4", "E4", "C4", "A3", "E3", "C3", "A2", "E2", "C2", "A1" }
            select new Course(Pitch.Parse(pitch)),
            648,
            12,
            Catalogue.Default.Spacing
        );

    private static byte[] Bytes(Exercise exercise, int seed)
    {
        using var bytes = new MemoryStream();
        WavFile.Write(bytes, Render(exercise, new SoundOptions { Seed = seed }), 44_100);
        return bytes.ToArray();
    }

    private static float[] Render(Exercise exercise, SoundOptions options) =>
        SoundRenderer.Render(exercise, options, cancellation: TestContext.Current.CancellationToken);

    private static float Peak(ReadOnlySpan<float> sound)
    {
        var peak = 0f;
        foreach (var sample in sound)
        {
            peak = Math.Max(peak, Math.Abs(sample));
        }

        return peak;
    }

    private static double Energy(ReadOnlySpan<float> sound)
    {
        var sum = 0.0;
        foreach (var sample in sound)
        {
            sum += sample * sample;
        }

        return sum;
    }

    private static float[] Side(float[] sound, int side) => sound.Where((_, at) => at % 2 == side).ToArray();

    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
