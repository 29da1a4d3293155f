using Fretloom.Lessons;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pdf;
using Fretloom.Theory;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;
using UglyToad.PdfPig.Tokens;
using PdfReader = UglyToad.PdfPig.PdfDocument;

namespace Fretloom.Pages.Tests.Documents;

/// <summary>Lessons set as PDF and read back.</summary>
public sealed class PdfDocumentTests
{
    private static readonly TypstCompiler Typst = new();
    private static readonly byte[] Sample = PdfDocument.Of(
        Samples.EveryConstruct,
        new PrintOptions(SourceName: "every-construct.md"),
        Typst
    );

    private static string Unbroken(string text) =>
        string.Join(' ', text.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));

    private static string TextOf(byte[] pdf)
    {
        using var document = PdfReader.Open(pdf);
        return string.Join('\n', document.GetPages().Select(page => ContentOrderTextExtractor.GetText(page)));
    }

    [Theory]
    [InlineData("Three frets that carry F major")]
    [InlineData("Where every string belongs")]
    [InlineData("M. Ferrier · second week of term")]
    [InlineData("Low-G ukulele · Thursday ukulele choir · Sheet 4")]
    [InlineData("Made with Fretloom from every-construct.md")]
    [InlineData("1 of 2")]
    [InlineData("First look")]
    [InlineData("The fifth is C, its seventh chord C7.")]
    [InlineData("Three full frets in F major, one empty one")]
    [InlineData("Sing the note A.")]
    [InlineData("louder")]
    [InlineData("Another paragraph of the entry.")]
    [InlineData("slowly")]
    [InlineData("Slow is smooth. <b>not bold</b>")]
    [InlineData("B♭")]
    [InlineData("A deep heading")]
    [InlineData("The pull")]
    public void Everything_written_can_be_read_in_the_pdf(string words) =>
        Assert.Contains(words, TextOf(Sample), StringComparison.Ordinal);

    [Fact]
    public void What_is_wide_is_said_below_its_picture_and_the_general_words_once_for_each_kind_of_hand()
    {
        var text = Unbroken(TextOf(PdfDocument.Of(Samples.Wide, new PrintOptions(), Typst)));

        Assert.Equal(
            2,
            Count("Wide for a hand of 189 mm on this instrument: V7 at fret 1 (128 mm between fingers 1 and 4).")
        );
        Assert.Equal(1, Count("1 of 2 shapes is in reach of a hand of 165 mm, 1 is very wide."));
        Assert.Equal(2, Count("very wide, 128 mm between fingers 1 and 4"));
        Assert.Equal(1, Count("Warm up first and do not force it."));
        Assert.Equal(1, Count("Stop and tell your teacher or a parent"));
        Assert.Equal(0, Count("safe"));

        int Count(string words) => text.Split(words).Length - 1;
    }

    [Fact]
    public void Where_nothing_is_wide_no_hand_is_spoken_of() =>
        Assert.DoesNotContain(
            "hand",
            TextOf(PdfDocument.Of(Samples.InReach, new PrintOptions(), Typst)),
            StringComparison.Ordinal
        );

    [Fact]
    public void Every_picture_is_described_and_every_part_is_tagged()
    {
        using var document = PdfReader.Open(Sample);
        var objects = document
            .Structure.CrossReferenceTable.ObjectOffsets.Keys.Select(key => document.Structure.GetObject(key).Data)
            .OfType<DictionaryToken>()
            .ToList();
        var descriptions = objects.Select(tag => Text(tag, "Alt")).Where(text => text is not null).ToList();
        var tags = objects.Select(tag => Text(tag, "S")).ToHashSet();

        // Structure types of ISO 32000-2, 14.8.4.
        string[] expected =
        [
            "H1",
            "H2",
            "H3",
            "H4",
            "P",
            "L",
            "LI",
            "Table",
            "TH",
            "TD",
            "Figure",
            "Link",
            "BlockQuote",
        ];
        Assert.Empty(expected.Except(tags));
        Assert.Contains(descriptions, text => text!.StartsWith("F major on low-G ukulele", StringComparison.Ordinal));
        Assert.Contains("The dominant seventh runs from fret 5 of string 4 to fret 1 of string 1.", descriptions);
    }

    private static string? Text(DictionaryToken tag, string name) =>
        tag.TryGet(NameToken.Create(name), out var value)
            ? value switch
            {
                StringToken text => text.Data,
                HexToken text => text.Data,
                NameToken text => text.Data,
                _ => null,
            }
            : null;

    [Theory]
    [InlineData(Paper.A4, 210, 297)]
    [InlineData(Paper.Letter, 215.9, 279.4)]
    public void The_sheet_has_the_size_asked_for(Paper paper, double width, double height)
    {
        using var document = PdfReader.Open(PdfDocument.Of(Samples.WithText("a"), new PrintOptions(paper), Typst));
        var page = document.GetPage(1);

        // Sizes are written in points with two decimals.
        Assert.Equal(width, page.Width / 72 * 25.4, 0.01);
        Assert.Equal(height, page.Height / 72 * 25.4, 0.01);
    }

    [Fact]
    public void Large_print_lies_one_way_and_has_no_small_type()
    {
        using var document = PdfReader.Open(
            PdfDocument.Of(Samples.EveryConstruct, new PrintOptions(IsLargePrint: true), Typst)
        );

        Assert.Single(document.GetPages().Select(page => page.Width > page.Height).Distinct());
        var body = document.GetPage(1).Letters.Where(letter => letter.Value == "F").Max(letter => letter.PointSize);
        Assert.True(body >= 18);
    }

    [Theory]
    [InlineData("- a\n\n  ")]
    [InlineData("> ")]
    [InlineData("> - a\n>\n>   ")]
    public void A_picture_may_stand_in_a_list_or_a_quote(string before)
    {
        var inner = before.Split('\n')[^1].Replace('-', ' ');
        var lesson = Samples.WithText(
            $"{before}```show\n{inner}the landmarks\n{inner}caption: Where to look\n{inner}```"
        );

        foreach (var isLargePrint in new[] { false, true })
        {
            var pdf = PdfDocument.Of(lesson, new PrintOptions(IsLargePrint: isLargePrint), Typst);

            Assert.Contains("Where to look", TextOf(pdf), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Half_wide_figures_that_follow_each_other_stand_side_by_side()
    {
        const string Figure = "```show\nthe chord V, on strings 4-2, frets 3-5\ncaption: Look\nwidth: half\n```\n\n";

        var lookAt = PositionsOf("Look", PdfDocument.Of(Samples.WithText(Figure + Figure + Figure), new(), Typst));

        Assert.Equal(lookAt[0].Bottom, lookAt[1].Bottom, 0.1);
        Assert.True(lookAt[1].Left > lookAt[0].Left + 200);
        Assert.True(lookAt[2].Bottom < lookAt[0].Bottom - 50);
        Assert.Equal(lookAt[0].Left, lookAt[2].Left, 0.1);
    }

    private static List<PdfRectangle> PositionsOf(string word, byte[] pdf)
    {
        using var document = PdfReader.Open(pdf);
        return
        [
            .. document
                .GetPages()
                .SelectMany(page => page.GetWords())
                .Where(found => found.Text == word)
                .Select(found => found.BoundingBox),
        ];
    }

    [Theory]
    [InlineData("instrument: guitar\ncapo: 3\nplayer: left-handed", "Guitar, capo at 3, left-handed")]
    [InlineData("instrument: bass", "Bass")]
    public void The_running_header_says_for_which_player_it_is(string settings, string expected)
    {
        var lesson = Lesson.Parse($"---\ntitle: T\n{settings}\n---\nText.");

        Assert.Equal(expected, RunningLines.Of(lesson).Left);
    }

    [Fact]
    public void A_figure_on_another_instrument_says_so()
    {
        var lesson = Samples.WithText("```show\nthe notes of the key on a bass\n```");

        Assert.Equal("Bass", RunningLines.NoteOn(new PicturedLesson(lesson).Figures[0].Exhibit, lesson.Front));
    }

    [Fact]
    public void A_lesson_in_another_key_says_so_everywhere()
    {
        var text = TextOf(
            PdfDocument.Of(Samples.EveryConstruct.InKey(Key.Parse("Bb major")), new PrintOptions(), Typst)
        );

        Assert.Contains("Three frets that carry B♭ major", text, StringComparison.Ordinal);
        Assert.DoesNotContain("F major", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("#panic(\"x\") $x$ = a *b* _c_ @d <e> ~ // f")]
    [InlineData("\\\" #{ } [ ] \u0001 \uD834 \uFFFF")]
    [InlineData("`#panic()` **#panic()**")]
    public void Text_is_never_taken_for_commands(string hostile) =>
        Assert.NotEmpty(
            PdfDocument.Of(
                Samples.WithText($"{hostile}\n\n# {hostile}\n\n- {hostile}\n\n> {hostile}"),
                new PrintOptions(),
                Typst
            )
        );
}
