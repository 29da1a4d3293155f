using Fretloom.Neck;
using Fretloom.Scores.Sound;

namespace Fretloom.Scores.Tests.Sound;

public class PluckedStringTests
{
    public static TheoryData<double> ScaleLengths =>
        [.. Catalogue.All.Select(instrument => instrument.ScaleLengthMm).Distinct().Order()];

    public static TheoryData<string> Banjos =>
        [.. Catalogue.All.Select(one => one.Name).Where(name => name.Contains("banjo", StringComparison.Ordinal))];

    /// <summary>Equal temperament with A4 at 440 Hz: ISO 16.</summary>
    [Theory]
    [MemberData(nameof(Banjos))]
    public void Every_note_of_a_banjo_is_in_tune_to_a_cent_and_rings_shorter_and_brighter(string name)
    {
        var banjo = Catalogue.All.Single(one => one.Name == name);
        var (skin, wood) = (StringVoice.For(banjo), StringVoice.For(banjo.ScaleLengthMm));
        Assert.True(skin.T60(200) < wood.T60(200) / 2);
        foreach (var midi in Played.Chromatic(banjo))
        {
            var wanted = SoundRenderer.Hz(midi);
            var seconds = Math.Max(0.11, 16 / wanted);
            var sound = Sound(wanted, 44_100, skin, seconds);
            var cents = Ear.Cents(Ear.Hz(sound, 44_100), wanted);
            Assert.True(Math.Abs(cents) < 1, $"{midi}: {cents:0.00} cents off");
            Assert.True(Edge(sound) > Edge(Sound(wanted, 44_100, wood, seconds)), $"{midi} is not brighter");
        }

        // How much of a sound is in its steps from sample to sample, which high partials make.
        static double Edge(double[] sound) =>
            sound.Zip(sound.Skip(1), (one, next) => (next - one) * (next - one)).Sum() / sound.Sum(one => one * one);
    }

    /// <summary>Equal temperament with A4 at 440 Hz: ISO 16.</summary>
    [Theory]
    [MemberData(nameof(ScaleLengths))]
    public void Every_note_of_every_instrument_is_in_tune_to_a_cent(double scaleLengthMm)
    {
        var voice = StringVoice.For(scaleLengthMm);
        var notes = Catalogue
            .All.Where(instrument => instrument.ScaleLengthMm == scaleLengthMm)
            .SelectMany(Played.Chromatic)
            .Distinct();
        foreach (var midi in notes)
        {
            var wanted = 440 * Math.Pow(2, (midi - 69) / 12.0);
            foreach (var rate in new[] { 44_100, 48_000 })
            {
                var sound = Sound(wanted, rate, voice, seconds: Math.Max(0.11, 16 / wanted));
                var cents = Ear.Cents(Ear.Hz(sound, rate), wanted);
                Assert.True(Math.Abs(cents) < 1, $"{midi} at {rate}: {cents:0.00} cents off");
            }
        }
    }

    [Theory]
    [InlineData(40)]
    [InlineData(52)]
    [InlineData(64)]
    [InlineData(76)]
    public void It_falls_by_60_dB_in_the_time_that_its_voice_says(int midi)
    {
        var voice = StringVoice.For(648);
        var hz = SoundRenderer.Hz(midi);

        var sound = Sound(hz, 44_100, voice, seconds: 3);

        // Between half a second, when high partials are gone, and two and a half.
        var fall = Decibels(sound, 22_050) - Decibels(sound, 110_250);
        Assert.Equal(2 * 60 / voice.T60(hz), fall, tolerance: 3.0);
    }

    [Theory]
    [InlineData(23)]
    [InlineData(40)]
    [InlineData(64)]
    [InlineData(88)]
    public void Damping_leaves_no_step_and_soon_no_sound(int midi)
    {
        var string_ = new PluckedString(SoundRenderer.Hz(midi), 44_100, StringVoice.For(648), seed: 1);
        var ringing = Enumerable.Range(0, 22_050).Select(_ => string_.Next()).ToArray();
        string_.IsDamped = true;
        var damped = Enumerable.Range(0, 11_025).Select(_ => string_.Next()).ToArray();

        var steps = ringing[^8192..].Zip(ringing[^8191..], (one, next) => Math.Abs(next - one)).Max();
        var dampedSteps = damped.Prepend(ringing[^1]).Zip(damped, (one, next) => Math.Abs(next - one)).Max();

        Assert.True(dampedSteps <= 1.1 * steps, $"a step of {dampedSteps} after {steps}");
        Assert.InRange(damped[^512..].Max(Math.Abs), 0, 0.001);
    }

    [Fact]
    public void It_has_no_steady_part()
    {
        var sound = Sound(SoundRenderer.Hz(40), 44_100, StringVoice.For(648), seconds: 2);

        Assert.Equal(0, sound.Average(), tolerance: 1e-4);
    }

    [Fact]
    public void Another_seed_is_another_pluck_of_the_same_loudness()
    {
        var voice = StringVoice.For(648);
        var one = Sound(110, 44_100, voice, 0.1, seed: 1);
        var other = Sound(110, 44_100, voice, 0.1, seed: 2);

        Assert.NotEqual(one, other);
        Assert.Equal(Decibels(one, 2000), Decibels(other, 2000), tolerance: 1.0);
    }

    private static double[] Sound(double hz, int rate, StringVoice voice, double seconds, ulong seed = 1)
    {
        var plucked = new PluckedString(hz, rate, voice, seed);
        return Enumerable.Range(0, (int)(seconds * rate)).Select(_ => plucked.Next()).ToArray();
    }

    // Of some 90 ms around a place.
    private static double Decibels(double[] sound, int around) =>
        10 * Math.Log10(sound[Math.Max(0, around - 2048)..(around + 2048)].Average(sample => sample * sample));
}
