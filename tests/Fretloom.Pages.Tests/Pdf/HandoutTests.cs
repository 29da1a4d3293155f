using Fretloom.Pages.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Fretloom.Pages.Tests.Pdf;

public class HandoutTests(TypstFixture typst)
{
    private static readonly HandoutPicture Neck = new("neck.svg", "A neck with B flat on string 2");

    private static readonly Dictionary<string, byte[]> Pictures = new() { ["neck.svg"] = TypstFixture.Picture };

    private static readonly Handout Short = new(
        "Where B♭ lies",
        TypstMarkup.Heading(2, Text("The neck"))
            + TypstMarkup.Paragraph(Text("Look at string 2."))
            + TypstMarkup.Figure(Neck, Text("One spot"))
    )
    {
        HeaderLeft = "Low-G ukulele",
        HeaderRight = "Sheet 4",
        SourceName = "b-flat.md",
    };

    public static TheoryData<Paper, bool> Editions =>
        new()
        {
            { Paper.A4, false },
            { Paper.A4, true },
            { Paper.Letter, false },
            { Paper.Letter, true },
        };

    [Theory]
    [MemberData(nameof(Editions))]
    public void Header_title_body_and_footer_stand_on_the_page(Paper paper, bool isLargePrint)
    {
        var text = TypstFixture.TextOf(Set(Short with { Paper = paper, IsLargePrint = isLargePrint }));

        Assert.All(
            [
                "Low-G ukulele",
                "Sheet 4",
                "Where B♭ lies",
                "The neck",
                "Look at string 2.",
                "One spot",
                "Made with Fretloom from b-flat.md",
                "1 of 1",
            ],
            words => Assert.Contains(words, text, StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(Paper.A4, 210, 297)] // ISO 216
    [InlineData(Paper.Letter, 215.9, 279.4)] // ANSI/ASME Y14.1, size A
    public void The_sheet_has_its_size_in_millimetres(Paper paper, double width, double height)
    {
        using var document = PdfDocument.Open(Set(Short with { Paper = paper }));

        var page = document.GetPage(1);

        Assert.Equal(width, page.Width / 72 * 25.4, tolerance: 0.01);
        Assert.Equal(height, page.Height / 72 * 25.4, tolerance: 0.01);
    }

    [Fact]
    public void The_same_handout_gives_the_same_bytes() => Assert.Equal(Set(Short), Set(Short));

    [Fact]
    public void The_document_is_tagged_and_names_its_title_and_language()
    {
        using var document = PdfDocument.Open(Set(Short with { Language = "de" }));

        var tags = StructureTree.Of(document);

        Assert.Equal("Where B♭ lies", document.Information.Title);
        Assert.Null(document.Information.CreationDate);
        Assert.Equal("de", tags.Language);
        Assert.Equal(["H1", "H2"], tags.Elements.Select(element => element.Kind).Where(kind => kind.StartsWith('H')));
        Assert.Contains(tags.Elements, element => element.Kind == "P");
        Assert.Equal(
            ["A neck with B flat on string 2"],
            tags.Elements.Where(element => element.Kind == "Figure")
                .Select(element => element.Alternative)
                .OfType<string>()
        );
    }

    [Theory]
    [InlineData(false, 9, 10)]
    [InlineData(true, 16, 18)]
    public void No_letter_is_smaller_than_the_edition_allows(bool isLargePrint, double smallest, double body)
    {
        var handout = Everything with { IsLargePrint = isLargePrint };

        using var document = PdfDocument.Open(handout.ToPdf(typst.Compiler, TypstFixture.NoFiles));
        var sizes = document.GetPages().SelectMany(page => page.Letters).Select(letter => letter.PointSize).ToList();

        Assert.Equal(smallest, sizes.Min(), tolerance: 0.01);
        Assert.Equal(
            body,
            sizes.GroupBy(size => Math.Round(size, 2)).MaxBy(group => group.Count())!.Key,
            tolerance: 0.01
        );
    }

    [Fact]
    public void Figures_are_numbered_and_pictures_without_caption_are_not()
    {
        var body =
            TypstMarkup.Figure(Neck, Text("First"))
            + TypstMarkup.Figure(Neck, TypstMarkup.Empty)
            + TypstMarkup.Figure(Neck, Text("Second"));

        var lines = Lines(Set(new("Numbers", body)));

        Assert.Contains(lines, line => line is "1First" or "1 First");
        Assert.Contains(lines, line => line is "2Second" or "2 Second");
    }

    [Fact]
    public void A_figure_never_leaves_its_caption_and_a_heading_never_the_words_below_it()
    {
        for (var filler = 30; filler < 60; filler++)
        {
            var body =
                TypstMarkup.Join(Enumerable.Repeat(TypstMarkup.Paragraph(Text("Filler.")), filler))
                + TypstMarkup.Heading(2, Text("HEADING"))
                + TypstMarkup.Paragraph(Text("BELOW"))
                + TypstMarkup.Figure(Neck, Text("CAPTION"));
            using var document = PdfDocument.Open(Set(new("Breaks", body)));

            var heading = PageWith(document, "HEADING");
            Assert.Equal(heading, PageWith(document, "BELOW"));
            Assert.Equal(PageWith(document, "B♭"), PageWith(document, "CAPTION"));
        }
    }

    [Fact]
    public void Pages_are_counted()
    {
        var body =
            TypstMarkup.Paragraph(Text("One"))
            + TypstMarkup.PageBreak
            + TypstMarkup.Paragraph(Text("Two"))
            + TypstMarkup.PageBreak
            + TypstMarkup.Paragraph(Text("Three"));

        using var document = PdfDocument.Open(Set(new("Count", body)));

        Assert.Equal([1, 2, 3], Enumerable.Range(1, 3).Select(number => PageWith(document, $"{number}of3")));
        Assert.Equal(3, document.NumberOfPages);
    }

    [Fact]
    public void A_picture_that_is_too_high_is_made_smaller_to_fit_one_page()
    {
        var tower =
            """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 100"><path d="M1 1V99" stroke="#000"/></svg>"""u8.ToArray();
        var handout = new Handout("Tall", TypstMarkup.Figure(new("tower.svg", "A tower"), Text("A tower")));

        using var document = PdfDocument.Open(
            handout.ToPdf(typst.Compiler, new Dictionary<string, byte[]> { ["tower.svg"] = tower })
        );

        var page = document.GetPage(1);
        var line = Assert
            .Single(page.Paths, path => path.IsStroked && path.GetBoundingRectangle() is { Height: > 300 })
            .GetBoundingRectangle()!
            .Value;
        Assert.True(line.Bottom > 60 && line.Top < page.Height - 60);
        Assert.Equal(1, document.NumberOfPages);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void All_sheets_lie_the_same_way(bool isLandscape)
    {
        var body =
            TypstMarkup.Paragraph(Text("Before")) + TypstMarkup.PageBreak + TypstMarkup.Figure(Neck, Text("Neck"));

        using var document = PdfDocument.Open(
            Set(new("Wide", body) { IsLargePrint = true, IsLandscape = isLandscape })
        );

        Assert.Equal([isLandscape, isLandscape], document.GetPages().Select(page => page.Width > page.Height));
    }

    [Fact]
    public void Figures_in_a_row_stand_side_by_side_with_their_captions()
    {
        HandoutPicture[] pictures = [Neck with { WidthPt = 100, Note = "Bass" }];
        var row = TypstMarkup.FigureRow([(Text("LEFTCAPTION"), pictures), (Text("RIGHTCAPTION"), pictures)]);

        using var document = PdfDocument.Open(Set(new("Row", row)));
        var words = document.GetPage(1).GetWords().ToList();
        var left = Assert.Single(words, word => word.Text == "LEFTCAPTION").BoundingBox;
        var right = Assert.Single(words, word => word.Text == "RIGHTCAPTION").BoundingBox;

        Assert.Equal(left.Bottom, right.Bottom, 0.1);
        Assert.True(right.Left > left.Left + 100);
        Assert.Equal(2, words.Count(word => word.Text == "Bass"));
    }

    [Fact]
    public void A_missing_picture_is_an_error() =>
        Assert.Throws<TypstException>(() => Short.ToPdf(typst.Compiler, TypstFixture.NoFiles));

    [Theory]
    [InlineData("", "x", 1)]
    [InlineData("a.svg", " ", 1)]
    public void A_picture_has_a_path_and_words(string path, string words, double share) =>
        Assert.Throws<ArgumentException>(() => new HandoutPicture(path, words, share));

    [Theory]
    [InlineData(0)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_picture_takes_a_part_of_the_width(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new HandoutPicture("a.svg", "x", share));

    private static Handout Everything =>
        Short with
        {
            Body =
                TypstMarkup.Heading(2, Text("Two"))
                + TypstMarkup.Heading(3, Text("Three"))
                + TypstMarkup.Heading(4, Text("Four"))
                + TypstMarkup.Paragraph(
                    Text("Every note of the key has a third above it on the next string, in the same key. ")
                        + TypstMarkup.Code("in B♭ major")
                )
                + TypstMarkup.Paragraph(
                    Text("Follow the threads from string 4 to string 1 and you have played a seventh chord.")
                )
                + TypstMarkup.CodeBlock("show the notes of the key")
                + TypstMarkup.Table(
                    [Text("Chord")],
                    [
                        [Text("B♭maj7")],
                    ]
                )
                + new Statement(StatementMark.Fails, Text("It fits."), Text("Fails in 1 of 2 keys"))
                {
                    Rows =
                    [
                        new StatementKeys(
                            Text("major"),
                            [(Text("B♭"), StatementMark.Fails), (Text("F"), StatementMark.Holds)]
                        ),
                    ],
                    Details = Text("In B♭ it does not."),
                }.ToMarkup()
                + TypstMarkup.Caution(Text("Take care"), Text("Never force it."))
                + TypstMarkup.Problem(Text("Line 3"), Text("Expected a key.")),
        };

    private static TypstMarkup Text(string text) => TypstMarkup.Text(text);

    private static string[] Lines(byte[] pdf) => TypstFixture.TextOf(pdf).Split('\n', StringSplitOptions.TrimEntries);

    private static int PageWith(PdfDocument document, string words) =>
        Assert.Single(document.GetPages(), page => Squeezed(page).Contains(words, StringComparison.Ordinal)).Number;

    private static string Squeezed(Page page) =>
        string.Concat(page.Letters.Select(letter => letter.Value).Where(value => !string.IsNullOrWhiteSpace(value)));

    private byte[] Set(Handout handout) => handout.ToPdf(typst.Compiler, Pictures);
}
