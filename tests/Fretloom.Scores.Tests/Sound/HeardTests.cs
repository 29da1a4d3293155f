using Fretloom.Exercises;
using Fretloom.Neck;
using Fretloom.Scores.Midi;
using Fretloom.Scores.Sound;
using Fretloom.Testing;

namespace Fretloom.Scores.Tests.Sound;

/// <summary>Programs that know nothing of Fretloom hear the notes that were asked for.</summary>
public class HeardTests
{
    private const string SoundFont = "/usr/share/sounds/sf2/TimGM6mb.sf2";

    public static bool HasEar => Aubio.WhyNot is null;

    public static bool HasPlayer => HasEar && Run.IsInstalled("fluidsynth") && File.Exists(SoundFont);

    /// <summary>Equal temperament with A4 at 440 Hz: ISO 16.</summary>
    [Theory(Skip = "skipped: aubiopitch is not installed", SkipUnless = nameof(HasEar))]
    [InlineData("guitar", 44_100)]
    [InlineData("ukulele", 48_000)]
    [InlineData("bass", 44_100)]
    [InlineData("mandolin", 48_000)]
    [InlineData("banjo", 44_100)]
    public async Task Every_note_of_a_chromatic_run_is_heard_within_5_cents(string name, int rate)
    {
        Catalogue.TryFind(name, out var instrument);
        var exercise = Played.ChromaticRun(instrument!, 100);
        using var folder = new TemporaryFolder();
        var file = folder.PathTo("run.wav");
        var options = new SoundOptions { Rate = rate };
        var sound = SoundRenderer.Render(exercise, options, cancellation: TestContext.Current.CancellationToken);
        await using (var output = File.Create(file))
        {
            WavFile.Write(output, sound, rate);
        }

        var heard = await Aubio.MidiAsync(file, rate, Middles(exercise));

        Assert.Equal(exercise.Notes.Count, heard.Count);
        var off = heard.Zip(exercise.Notes, (midi, note) => 100 * (midi - note.Note.Pitch.MidiNumber)).ToList();
        TestContext.Current.SendDiagnosticMessage($"{name}: at most {off.Max(Math.Abs):0.0} cents off");
        Assert.All(off, cents => Assert.InRange(cents, -5, 5));
    }

    [Theory(
        Skip = "skipped: aubiopitch, fluidsynth or timgm6mb-soundfont is not installed",
        SkipUnless = nameof(HasPlayer)
    )]
    [InlineData("guitar", false)]
    [InlineData("guitar", true)]
    [InlineData("ukulele", true)]
    [InlineData("bass", false)]
    [InlineData("mandolin", false)]
    [InlineData("banjo", true)]
    public async Task A_player_of_MIDI_files_plays_the_same_notes(string name, bool hasChannelPerString)
    {
        const int Rate = 44_100;
        Catalogue.TryFind(name, out var instrument);
        var exercise = Played.ChromaticRun(instrument!, 80);
        using var folder = new TemporaryFolder();
        var (midi, wav) = (folder.PathTo("run.mid"), folder.PathTo("run.wav"));
        var options = new MidiOptions { HasChannelPerString = hasChannelPerString };
        await File.WriteAllBytesAsync(midi, MidiWriter.Write(exercise, options), TestContext.Current.CancellationToken);

        var played = await Run.ProgramAsync(
            "fluidsynth",
            ["-ni", "-R", "0", "-C", "0", "-r", $"{Rate}", "-F", wav, SoundFont, midi]
        );
        Assert.True(played.ExitCode == 0, played.Error);
        var heard = await Aubio.MidiAsync(wav, Rate, Middles(exercise));

        // Sound fonts are tuned to some cents; a wrong note is 100 off.
        Assert.Equal(
            exercise.Notes.Select(note => note.Note.Pitch.MidiNumber),
            heard.Select(one => (int)Math.Round(one))
        );
    }

    private static List<(double Begin, double End)> Middles(Exercise exercise)
    {
        var performance = Performance.Of(exercise);
        return
        [
            .. exercise.Notes.Select(note =>
                (performance.SecondsAt(note.At.Quarters) + 0.02, performance.SecondsAt(note.End.Quarters) - 0.02)
            ),
        ];
    }
}
