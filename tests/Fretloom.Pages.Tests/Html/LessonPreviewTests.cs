using System.Text.RegularExpressions;
using Fretloom.Exercises;
using Fretloom.Lessons;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Html;
using Fretloom.Scores.Engraving;
using Fretloom.Testing;

namespace Fretloom.Pages.Tests.Html;

public partial class LessonPreviewTests
{
    private const string Long = "bench/lessons/ten-pages.md";

    private static readonly string[] Demos =
    [
        .. Directory.GetFiles(Repository.PathTo("lessons"), "*.md").Order(StringComparer.Ordinal),
    ];

    private static readonly string[] Scraps =
    [
        "a",
        "{key}",
        "\n",
        "\n\n",
        "# ",
        "- ",
        "> ",
        "*",
        "`",
        "\n```show\nevery D, frets 0-5\n```\n",
        "\n```show\nthe triads, on strings 3-1, for a small hand\ncaption: Here\nwidth: half\n```\n",
        "\n```play\nthe scale, in eighths\n```\n",
        "\n```claim\nIn every major key, on strings 3-1, there are exactly 2 full frets.\nexpect: fails\n```\n",
        ", frets 0-7",
        "---\n",
    ];

    /// <summary>A text and how it is changed: a part goes, a scrap or another part of it takes its place.</summary>
    private static readonly Gen<(int At, int Length, int Scrap)[]> Edits = Gen.Select(
        Gen.Int[0, 3000],
        Gen.Frequency((3, Gen.Const(0)), (3, Gen.Int[1, 3]), (1, Gen.Int[4, 200])),
        Gen.Int[-1, Scraps.Length - 1]
    ).Array[1, 8];

    public static TheoryData<string> DemoNames => [.. Demos.Select(path => Path.GetFileName(path)!)];

    [Fact]
    public void What_was_kept_gives_the_same_page_as_all_done_anew() =>
        Gen.Select(Gen.Int[0, Demos.Length - 1], Edits)
            .Sample(
                (demo, edits) =>
                {
                    var kept = new LessonPreview();
                    var text = File.ReadAllText(Demos[demo]);
                    var before = text;
                    foreach (var (at, length, scrap) in edits)
                    {
                        Agrees(kept, text);
                        var start = Math.Min(at, text.Length);
                        var end = Math.Min(start + length, text.Length);
                        (before, text) = (text, text[..start] + (scrap < 0 ? "" : Scraps[scrap]) + text[end..]);
                    }

                    Agrees(kept, text);
                    Agrees(kept, before);
                },
                iter: 40
            );

    private static void Agrees(LessonPreview kept, string text)
    {
        var page = kept.Update(text);
        var anew = new LessonPreview().Update(text);
        Assert.Equal(
            anew.Parts.Select(part => (part.Line, part.Html)),
            page.Parts.Select(part => (part.Line, part.Html))
        );
        Assert.Equal(anew.Lesson.Diagnostics, page.Lesson.Diagnostics);
        Assert.Equal(page.Parts.Count, page.Parts.Select(part => part.Key).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(DemoNames))]
    public void The_parts_together_are_the_handout(string name)
    {
        var text = File.ReadAllText(Repository.PathTo("lessons", name));
        var page = HtmlPage.Of(Lesson.Parse(text));
        var article = page[page.IndexOf("<article>", StringComparison.Ordinal)..];
        article = article[
            (article.IndexOf('\n', StringComparison.Ordinal) + 1)..article.IndexOf(
                "</article>",
                StringComparison.Ordinal
            )
        ];
        var parts = new LessonPreview().Update(text).Parts;

        Assert.Equal(Sections().Replace(article, ""), string.Concat(parts.Skip(1).Select(part => part.Html)));
        Assert.Contains(parts[0].Html, page, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_letter_that_is_typed_changes_one_part()
    {
        var text = File.ReadAllText(Repository.PathTo(Long));
        var preview = new LessonPreview();
        var before = preview.Update(text);
        var after = preview.Update(text.Replace("Four notes, one", "Four notess, one", StringComparison.Ordinal));

        Assert.Single(after.Parts.Select(part => part.Key).Except(before.Parts.Select(part => part.Key)));
        Assert.Equal(Exhibits(before), Exhibits(after), ReferenceEqualityComparer.Instance.Equals);
    }

    private static IEnumerable<object> Exhibits(PreviewPage page) =>
        page.Lesson.Blocks.OfType<Block.Figure>().Select(figure => figure.Exhibit);

    [Fact]
    public void A_part_that_moves_keeps_its_key_and_tells_its_new_line()
    {
        const string Front = "---\ntitle: T\nkey: D major\n---\n";
        var preview = new LessonPreview();
        var before = preview.Update(Front + "One.\n\nTwo.\n\nThree.\n").Parts;
        var after = preview.Update(Front + "Nought.\n\nThree.\n\nOne.\n\nOne.\n").Parts;

        Assert.Equal(before[4].Key, after[3].Key);
        Assert.Equal(before[2].Key, after[4].Key);
        Assert.Equal((5, 9, 5, 7, 9), (before[2].Line, before[4].Line, after[2].Line, after[3].Line, after[4].Line));
        Assert.Equal(6, after.Select(part => part.Key).Distinct().Count());
    }

    [Fact]
    public void A_claim_that_takes_long_is_put_off_and_is_no_error()
    {
        const string Claim =
            "---\ntitle: T\n---\n```claim\nIn every key, on every 8-string tuning, there is at least 1 full fret.\n```\n";
        var page = new LessonPreview().Update(Claim);

        var put = Assert.Single(page.Lesson.Diagnostics);
        Assert.Equal((Severity.Warning, 5), (put.Severity, put.Line));
        Assert.Contains(put.Message, page.Parts[2].Html, StringComparison.Ordinal);
    }

    [Fact]
    public void What_could_not_be_engraved_is_tablature()
    {
        var preview = new LessonPreview();
        var plain = preview.Update(Played).Parts[2];
        preview.Engraver = new Engravings { Given = null };
        var refused = preview.Update(Played).Parts[2];

        Assert.Contains("class=\"tablature\"", plain.Html, StringComparison.Ordinal);
        Assert.Equal(plain.Html, refused.Html);
        Assert.Equal(plain.Key, refused.Key);
    }

    [Fact]
    public void An_exercise_that_is_awaited_is_tablature_until_both_widths_are_engraved_and_nothing_else_changes()
    {
        using var real = new Engraver();
        var engravings = new Engravings { Given = real };
        var preview = new LessonPreview { Engraver = engravings };
        var before = preview.Update(Played).Parts;
        Assert.Equal(2, engravings.Asked.Count);
        var plain = new LessonPreview().Update(Played).Parts;
        Assert.Equal(plain[2].Html, before[2].Html.Replace(" aria-busy=\"true\"", "", StringComparison.Ordinal));
        Assert.NotEqual(plain[2].Html, before[2].Html);

        engravings.Done.Add(engravings.Asked.Max());
        Assert.Equal(before, preview.Update(Played).Parts);
        engravings.Done.UnionWith(engravings.Asked);
        var after = preview.Update(Played).Parts;

        Assert.Equal(
            new LessonPreview { Engraver = real }
                .Update(Played)
                .Parts[2]
                .Html,
            after[2].Html
        );
        Assert.Contains("data-note", after[2].Html, StringComparison.Ordinal);
        Assert.Equal([before[0], before[1], before[3]], [after[0], after[1], after[3]]);
    }

    [Fact]
    public void What_is_worked_out_ahead_changes_no_key()
    {
        var preview = new LessonPreview();
        var before = preview.Update(Played);
        string[] others =
        [
            Played[..Played.IndexOf("```", StringComparison.Ordinal)],
            Played.Replace("D major", "E major", StringComparison.Ordinal),
        ];
        foreach (var step in others.SelectMany(preview.Steps))
        {
            step();
        }

        Assert.Equal(before.Parts, preview.Update(Played).Parts);
    }

    private const string Played = "---\ntitle: T\nkey: D major\n---\n```play\nthe scale, in eighths\n```\n\nWords.\n";

    [Fact]
    public void The_styles_have_what_pictures_pages_and_players_need()
    {
        Assert.Contains("svg.fretloom", HandoutStyles.Screen, StringComparison.Ordinal);
        Assert.Contains(".running", HandoutStyles.Screen, StringComparison.Ordinal);
        Assert.Contains(".player", HandoutStyles.Screen, StringComparison.Ordinal);
    }

    [GeneratedRegex("<section [^>]*>\n|</section>\n")]
    private static partial Regex Sections();

    /// <summary>Gives what an engraver engraves when it is said to be done; without one, it refuses.</summary>
    private sealed class Engravings : IEngraver
    {
        public required Engraver? Given { get; init; }

        public HashSet<double> Asked { get; } = [];

        public HashSet<double> Done { get; } = [];

        public EngravedExercise Engrave(Exercise exercise, double widthMm)
        {
            Asked.Add(widthMm);
            return Given is null
                    ? new ScoreEngraver(new Refusing()).EngraveAsync(exercise, widthMm).GetAwaiter().GetResult()
                : Done.Contains(widthMm) ? Given.Engrave(exercise, widthMm)
                : EngravedExercise.Awaited(exercise);
        }
    }

    private sealed class Refusing : IEngravingEngine
    {
        public Task<string[]> EngraveAsync(string score, string options) =>
            throw new EngravingException("it is not here");
    }
}
