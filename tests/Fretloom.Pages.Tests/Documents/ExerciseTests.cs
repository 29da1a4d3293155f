using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Fretloom.Hand;
using Fretloom.Lessons;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Html;
using Fretloom.Pages.Pictures;
using Fretloom.Scores.Engraving;
using Fretloom.Theory;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;
using PdfDocument = UglyToad.PdfPig.PdfDocument;

namespace Fretloom.Pages.Tests.Documents;

public sealed partial class ExerciseTests : IDisposable
{
    private static readonly HandoutBuilder Builder = new();
    private static readonly Engraver Engraver = new();

    private readonly string _folder = Directory.CreateTempSubdirectory("fretloom-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static Lesson WithPlay(string lines, string front = "") =>
        Lesson.Parse($"---\ntitle: T\nkey: F major\n{front}---\n\n```play\n{lines}\n```\n");

    private string Write(string lines)
    {
        var path = Path.Combine(_folder, "lesson.md");
        File.WriteAllText(path, $"---\ntitle: T\nkey: F major\n---\n\n```play\n{lines}\n```\n");
        return path;
    }

    private BuildResult Build(string lines, params ReadOnlySpan<HandoutFormat> formats)
    {
        var path = Write(lines);
        var options = new BuildOptions(Path.Combine(_folder, "out"));
        return Builder.Build(path, formats.Length == 0 ? options : options with { Formats = [.. formats] });
    }

    private const string Chords = "the seventh chords from I to IV, on strings 4-1, frets 0-10, in eighths, at 60";

    // Forty beats or so at 20 beats a minute, thirty times.
    private const string TooLong = "the scale, up and down, in quarters, at 20, 30 times";

    [Fact]
    public void Beside_the_handout_lie_a_musicxml_and_a_midi_file()
    {
        var result = Build(Chords);

        Assert.Equal(["pdf", "html", "svg", "musicxml", "midi"], result.Files.Select(file => file.Kind));
        Assert.Equal(
            [
                "lesson-exercise-1.mid",
                "lesson-exercise-1.musicxml",
                "lesson-exercise-1.svg",
                "lesson.html",
                "lesson.pdf",
            ],
            result.Files.Select(file => Path.GetFileName(file.Path)).Order(StringComparer.Ordinal)
        );
        Assert.Empty(result.Diagnostics);
        // Standard MIDI Files 1.0: a header chunk comes first.
        Assert.Equal("MThd"u8.ToArray(), File.ReadAllBytes(result.Files[4].Path)[..4]);
        Assert.Contains("<score-partwise", File.ReadAllText(result.Files[3].Path), StringComparison.Ordinal);
    }

    [Fact]
    public void Sound_is_written_when_it_is_asked_for()
    {
        var file = Assert.Single(Build(Chords, HandoutFormat.Wav).Files);

        Assert.Equal(("wav", "lesson-exercise-1.wav"), (file.Kind, Path.GetFileName(file.Path)));
        Assert.Equal("RIFF"u8.ToArray(), File.ReadAllBytes(file.Path)[..4]);
    }

    [Fact]
    public void An_exercise_too_long_to_sound_is_told_at_its_block_and_nothing_is_written()
    {
        var result = Build(TooLong, HandoutFormat.Html, HandoutFormat.Wav);

        var found = Assert.Single(result.Diagnostics);
        Assert.Equal((6, 1, Severity.Error), (found.Line, found.Column, found.Severity));
        Assert.Contains("minutes, and a sound file holds at most 15;", found.Message, StringComparison.Ordinal);
        Assert.Empty(result.Files);
        Assert.False(Directory.Exists(Path.Combine(_folder, "out")));
    }

    [Fact]
    public void An_exercise_too_long_to_sound_is_told_once_for_all_keys()
    {
        var path = Write(TooLong);
        var options = new BuildOptions(Path.Combine(_folder, "out"))
        {
            Formats = [HandoutFormat.Wav],
            Keys = KeyChoice.All(KeyOrder.Fourths),
        };

        Assert.Single(Builder.Build(path, options, cancellation: TestContext.Current.CancellationToken).Diagnostics);
    }

    [Fact]
    public void An_exercise_too_long_to_sound_is_made_without_its_sound_when_errors_are_to_be_passed_over()
    {
        var path = Write(TooLong + "\n```\n\n```play\nthe spot 5:3");
        var options = new BuildOptions(Path.Combine(_folder, "out"))
        {
            Formats = [HandoutFormat.Midi, HandoutFormat.Wav],
            IsKeepGoing = true,
        };

        var result = Builder.Build(path, options, cancellation: TestContext.Current.CancellationToken);

        Assert.Single(result.Diagnostics);
        Assert.Equal(
            ["lesson-exercise-1.mid", "lesson-exercise-2.mid", "lesson-exercise-2.wav"],
            result.Files.Select(file => Path.GetFileName(file.Path))
        );
    }

    [Fact]
    public void An_exercise_too_long_to_sound_is_none_for_other_kinds() =>
        Assert.Empty(Build(TooLong, HandoutFormat.Html, HandoutFormat.Midi).Diagnostics);

    [Fact]
    public void The_printed_exercise_has_heading_caption_tempo_and_every_fret()
    {
        var result = Build(Chords + "\ntitle: Up we go\ncaption: \"From {key}\"", HandoutFormat.Pdf);

        using var pdf = PdfDocument.Open(Assert.Single(result.Files).Path);
        var text = ContentOrderTextExtractor.GetText(pdf.GetPage(1));
        Assert.Contains("Exercise 1", text, StringComparison.Ordinal);
        Assert.Contains("Up we go", text, StringComparison.Ordinal);
        Assert.Contains("From F major", text, StringComparison.Ordinal);
        Assert.Contains("60 beats a minute", text, StringComparison.Ordinal);
        Assert.Equal(1, pdf.NumberOfPages);
    }

    [Fact]
    public void One_script_may_run_and_only_where_there_are_exercises()
    {
        var page = HtmlPage.Of(WithPlay(Chords), engraver: Engraver);
        var script = Script().Match(page).Groups[1].Value;

        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
        Assert.Contains($"script-src 'sha256-{hash}'\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("script", HtmlPage.Of(Samples.InReach), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_note_is_to_be_found_on_the_staves_for_page_and_phone_and_in_words()
    {
        var lesson = WithPlay(Chords);
        var notes = lesson.Exercises[0].Played.Notes;
        var page = HtmlPage.Of(lesson, engraver: Engraver);

        for (var note = 0; note < notes.Count; note++)
        {
            // Notehead and figure, on the staff for the page and on that for a phone.
            Assert.Equal(4, Regex.Count(page, $"data-note=\"{note}\""));
        }

        Assert.Contains("aria-label=\"Bars 1 to 2. Bar 1: 4:3 F, 3:2 A, 2:1 C, 1:0 E,", page, StringComparison.Ordinal);
        Assert.Equal(notes.Count, ExerciseWords.Table(lesson.Exercises[0].Played).Rows.Count);
    }

    [Fact]
    public void The_same_exercise_twice_on_a_page_shares_no_id()
    {
        var play = $"\n```play\n{Chords}\n```\n";
        var page = HtmlPage.Of(Lesson.Parse($"---\ntitle: T\nkey: F major\n---\n{play}{play}"), engraver: Engraver);

        var ids = Ids().Matches(page).Select(id => id.Groups[1].Value).ToList();
        var links = Links().Matches(page).Select(link => link.Groups[1].Value).ToList();
        Assert.Contains("staves-2-narrow-1-0", ids);
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(links, link => Assert.Contains(link, ids));
    }

    [Theory]
    [InlineData("the chords C Am F G7, on a ukulele, strummed", "Ukulele")]
    [InlineData("the scale, on a bass, in E major, in quarters, frets 0-5", "Bass")]
    [InlineData("the triads, on a banjo, in G major, up", "Banjo")]
    [InlineData("the scale, on a mandolin, in D major, frets 0-7", "Mandolin")]
    [InlineData("the scale, in E major, with a capo at 2, for a left-handed player", "Guitar, capo at 2")]
    public void An_exercise_alone_is_headed_by_its_instrument_and_named_once(string sentence, string player)
    {
        var exercise = WithPlay(sentence).Exercises[0].Played;
        using var typst = new Pages.Pdf.TypstCompiler();

        using var pdf = PdfDocument.Open(Pages.Documents.PdfDocument.Of(exercise, new PrintOptions(), typst, Engraver));
        var text = ContentOrderTextExtractor.GetText(pdf.GetPage(1));
        Assert.Contains(player, text, StringComparison.Ordinal);
        Assert.DoesNotContain("Exercise 1", text, StringComparison.Ordinal);
        var words = Regex.Replace(text, @"\s+", " ");
        Assert.Equal(1, Regex.Count(words, Regex.Escape(exercise.Name)));
        Assert.Equal(
            sentence.Contains("capo", StringComparison.Ordinal),
            words.Contains("Guitar", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Chords_that_are_held_have_a_box_each_once()
    {
        var strummed = WithPlay("Am, F, Am and F, strum down down-up").Exercises[0].Played;
        var boxes = Assert.Single(ExerciseBoxes.Of(strummed, 480, new()));

        Assert.EndsWith("Am and F", boxes.Drawing.Title, StringComparison.Ordinal);
        Assert.Empty(ExerciseBoxes.Of(WithPlay(Chords).Exercises[0].Played, 480, new()));
        const string Many = "the triads from I to IV, on strings 3-1, frets 0-15, as block chords, in every key";
        Assert.Empty(ExerciseBoxes.Of(WithPlay(Many).Exercises[0].Played, 480, new()));
    }

    [Fact]
    public void A_box_has_the_fingers_of_the_exercise()
    {
        var exercise = WithPlay("Am and F, strum down down-up").Exercises[0].Played;
        var table = Assert.Single(ExerciseBoxes.Of(exercise, 480, new())).Table;

        var chord = exercise.Notes.Where(note => note.At == default && note.Finger != Finger.None).ToList();
        Assert.NotEmpty(chord);
        Assert.All(
            chord,
            note =>
                Assert.EndsWith(
                    note.Finger.ToLabel(),
                    table.Rows[0][table.Header.ToList().IndexOf(Column(note))],
                    StringComparison.Ordinal
                )
        );

        static string Column(Exercises.ExerciseNote note) => $"string {Wording.Number(note.Note.Spot.String)}";
    }

    [Fact]
    public void Without_the_engraver_there_is_tablature_in_plain_text()
    {
        var page = HtmlPage.Of(WithPlay(Chords));

        Assert.Contains("<pre tabindex=\"0\" class=\"tablature\"><code>", page, StringComparison.Ordinal);
        Assert.Matches(@"(?m)^E\|--*0-", page);
        Assert.Contains("<span data-bar=\"2\">2</span>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Tablature_is_never_mirrored_and_the_neck_is()
    {
        var right = WithPlay(Chords).Exercises[0].Played;
        var left = WithPlay(Chords, "player: left-handed\n").Exercises[0].Played;

        Assert.Equal(
            Engraver.Engrave(right, 170).Systems.Select(system => system.Svg),
            Engraver.Engrave(left, 170).Systems.Select(system => system.Svg)
        );
        Assert.NotEqual(ExerciseNeck.Of(right, 340).Drawing.Nodes, ExerciseNeck.Of(left, 340).Drawing.Nodes);
    }

    [Fact]
    public void What_is_wide_is_said_once_in_general_and_at_each_exercise()
    {
        var lesson = Lesson.Parse(
            "---\ntitle: T\nkey: F major\n---\n" + string.Concat(Enumerable.Repeat($"\n```play\n{Chords}\n```\n", 2))
        );

        var page = HtmlPage.Of(lesson);
        Assert.Equal(2, Regex.Count(page, "<p class=\"reach\">Wide for a hand of 189 mm on this instrument: "));
        Assert.Equal(1, Regex.Count(page, HandNotes.Heading));
    }

    [Theory]
    [InlineData("the open strings, at 60", "60 beats a minute")]
    [InlineData(
        "the scale, 3 notes a string, frets 0-8, in swing eighths, from 60 to 84 in steps of 12, with a count-in",
        "60 to 84 beats a minute, in steps of 12, swing, after a count-in of 1 bar"
    )]
    [InlineData("the open strings, short, twice, at 80", "80 beats a minute, 2 times, short")]
    public void The_tempo_is_told_in_words(string sentence, string words) =>
        Assert.Equal(words, ExerciseWords.Tempo(WithPlay(sentence).Exercises[0].Played));

    [Fact]
    public void Threads_join_thirds_that_follow_each_other_on_neighbouring_strings()
    {
        var exercise = WithPlay("the spots 4:3 3:2 2:1 1:1").Exercises[0].Played;

        var lights = Groups(ExerciseNeck.Of(exercise, 340).Drawing.Nodes)
            .Where(name => name.StartsWith("light ", StringComparison.Ordinal));

        // F A C in thirds; from C to F is a fourth.
        Assert.Equal(["light 4-3 3-2", "light 3-2 2-1", "light 4-3", "light 3-2", "light 2-1", "light 1-1"], lights);
    }

    private static IEnumerable<string> Groups(IEnumerable<Pages.Scene.Node> nodes) =>
        nodes.OfType<Pages.Scene.Node.Group>().Select(group => group.Name);

    [GeneratedRegex(" id=\"([^\"]+)\"")]
    private static partial Regex Ids();

    [GeneratedRegex("xlink:href=\"#([^\"]+)\"")]
    private static partial Regex Links();

    [GeneratedRegex("<script>(.*)</script>", RegexOptions.Singleline)]
    private static partial Regex Script();
}
