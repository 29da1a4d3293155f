using System.Globalization;
using System.Text.Json;
using Fretloom.Scores.Sound;
using Fretloom.Testing;

namespace Fretloom.Scores.Tests.Sound;

/// <summary>The page's own string and click beside those of the sound files: two programs, one sound.</summary>
public class PlayerSoundTests
{
    // The script writes samples as single-precision numbers of about 0.3 at most.
    private const double Rounding = 1e-6;

    [Theory]
    [InlineData(863.6, 28)]
    [InlineData(863.6, 40)]
    [InlineData(648, 40)]
    [InlineData(648, 64)]
    [InlineData(648, 86)]
    [InlineData(345, 69)]
    [InlineData(350, 76)]
    public async Task A_string_sounds_the_same_sample_by_sample(double scaleLengthMm, int midi)
    {
        const int Rate = 48_000;
        // Noise is drawn otherwise in the page; without it both are the same.
        var voice = StringVoice.For(scaleLengthMm) with
        {
            Roughness = 0,
        };
        var script = await AskAsync($"samplesOf({midi}, {Json(SoundFigures.For(voice))}, {Rate}).slice(0, {Rate})");

        var plucked = new PluckedString(SoundRenderer.Hz(midi), Rate, voice, 1);
        var body = new Body(voice, Rate);
        for (var frame = 0; frame < Rate; frame++)
        {
            var wanted = body.Next(plucked.Next());
            Assert.True(Math.Abs(wanted - script[frame]) < Rounding, $"frame {frame}: {script[frame]}, not {wanted}");
        }

        Assert.Contains(script, sample => Math.Abs(sample) > 0.1);
    }

    [Theory]
    [InlineData(true, 44_100)]
    [InlineData(false, 44_100)]
    [InlineData(true, 48_000)]
    public async Task A_click_sounds_the_same(bool isFirst, int rate)
    {
        var script = await AskAsync(
            $"clickOf({(isFirst ? "true" : "false")}, {Json(SoundFigures.For(StringVoice.For(648)))}, {rate})"
        );

        var wanted = ClickSound.Of(isFirst, rate);
        Assert.Equal(wanted.Length, script.Length);
        Assert.All(wanted, (sample, frame) => Assert.Equal(sample, script[frame], Rounding));
    }

    /// <summary>The lowest strings ring longest: B0 of a five-string bass, E1 of a bass, E2 of a guitar.</summary>
    [Theory]
    [InlineData(863.6, 23)]
    [InlineData(863.6, 28)]
    [InlineData(648, 40)]
    public async Task A_string_ends_in_silence_and_not_with_a_click(double scaleLengthMm, int midi)
    {
        const int Rate = 48_000;
        var sound = await AskAsync(
            $"samplesOf({midi}, {Json(SoundFigures.For(StringVoice.For(scaleLengthMm)))}, {Rate}).slice(-{Rate / 10})"
        );

        var before = sound.Take(Rate / 20).Max(Math.Abs);
        Assert.Equal(0, sound[^1]);
        Assert.True(Math.Abs(sound[^2]) <= before / 1000);
        // It fades evenly over the last 50 ms: half way through it is no louder than half of what it was.
        Assert.True(sound.Skip(3 * Rate / 40).Max(Math.Abs) <= 0.55 * before);
    }

    private static string Json(SoundFigures figures) => JsonSerializer.Serialize(figures, JsonSerializerOptions.Web);

    private static async Task<double[]> AskAsync(string expression)
    {
        Assert.SkipWhen(!Run.IsInstalled("node"), "skipped: node is not installed");
        var script = File.ReadAllText(
            Repository.PathTo("src", "Fretloom.Pages", "Html", "Player", "plucked-string.js")
        );
        var result = await Run.ProgramAsync(
            "node",
            ["-"],
            input: string.Create(
                CultureInfo.InvariantCulture,
                $"{script}\nprocess.stdout.write(JSON.stringify(Array.from({expression})));"
            )
        );
        Assert.True(result.ExitCode == 0, result.Error);
        return JsonSerializer.Deserialize<double[]>(result.Output)!;
    }
}
