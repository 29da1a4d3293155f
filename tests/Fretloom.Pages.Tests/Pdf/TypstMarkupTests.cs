using Fretloom.Pages.Pdf;
using UglyToad.PdfPig;

namespace Fretloom.Pages.Tests.Pdf;

public class TypstMarkupTests(TypstFixture typst)
{
    // What Typst gives a meaning to in markup or code, and letters to build words of it.
    private const string Syntax = "#[]{}()$*_`\\/\"'@<>=-+~:;,.!?&|%^ \n\tabfil019";

    // Without Ĭ and ĭ: the faces build them of two glyphs, and the reader of these tests counts the second as a character.
    private static readonly Gen<string> Drawable = Gen.OneOf(
            Gen.Char[Syntax].Select(c => c.ToString()),
            Gen.Int[0x20, 0x7E].Select(char.ConvertFromUtf32),
            Gen.Int[0xA1, 0xAC].Select(char.ConvertFromUtf32),
            Gen.Int[0xAE, 0x17F].Where(c => c is not (0x12C or 0x12D)).Select(char.ConvertFromUtf32),
            Gen.OneOf([.. new[] { "♭", "♮", "♯", "𝄪", "𝄫", "△", "°", "–", "’", "→" }.Select(Gen.Const)])
        )
        .Array[1, 40]
        .Select(string.Concat);

    [Fact]
    public void Any_text_comes_back_from_the_pdf_as_it_was() =>
        Drawable
            .Array[30]
            .Sample(texts => Assert.Equal(texts.Select(Squeezed), Pages(texts.Select(TypstMarkup.Text))), iter: 40);

    [Fact]
    public void Text_as_code_comes_back_too() =>
        Drawable
            .Array[30]
            .Sample(texts => Assert.Equal(texts.Select(Squeezed), Pages(texts.Select(TypstMarkup.Code))), iter: 10);

    [Fact]
    public void No_string_at_all_stops_the_typesetter() =>
        Gen
            .String.Array[30]
            .Sample(
                texts =>
                {
                    var body = TypstMarkup.Join(
                        texts.Select(text =>
                            TypstMarkup.Paragraph(TypstMarkup.Text(text))
                            + TypstMarkup.CodeBlock(text)
                            + TypstMarkup.Link("https://example.org/" + text, TypstMarkup.Text(text))
                        )
                    );
                    typst.Compiler.Compile(body.ToString(), TypstFixture.NoFiles);
                },
                iter: 20
            );

    [Theory]
    [InlineData("#panic(\"no\")")]
    [InlineData("\");#panic(\"no\");\"")]
    [InlineData("\\\");#panic()")]
    [InlineData("]#panic()[")]
    [InlineData("\n= Not a heading")]
    [InlineData("// not a comment")]
    [InlineData("https://example.org not a link")]
    [InlineData("a\"b \"c\" it's -- --- ... 1/2 x^2")]
    public void Text_that_looks_like_code_stays_text(string text) =>
        Assert.Equal([Squeezed(text)], Pages([TypstMarkup.Text(text)]));

    [Fact]
    public void Text_right_before_what_could_continue_it_stays_apart() =>
        Assert.Equal(
            ["a.len()b(1)[x]c;d"],
            Pages([
                new[] { "a", ".len()", "b", "(1)", "[x]", "c", ";d" }
                    .Select(TypstMarkup.Text)
                    .Aggregate((x, y) => x + y),
            ])
        );

    [Theory]
    [InlineData("https://example.org/a?b=c&d=\"e\"", true)]
    [InlineData("http://example.org", true)]
    [InlineData("mailto:teacher@example.org", true)]
    [InlineData("javascript:alert(1)", false)]
    [InlineData("JavaScript:alert(1)", false)]
    [InlineData("file:///etc/passwd", false)]
    [InlineData("data:text/html,x", false)]
    [InlineData("lesson%20one-in-C-major.pdf", true)]
    [InlineData("../lesson.pdf", false)]
    [InlineData("other.md", false)]
    [InlineData("", false)]
    public void Only_web_and_mail_addresses_and_files_beside_become_links(string address, bool isLink)
    {
        var pdf = typst.Compiler.Compile(
            TypstMarkup.Link(address, TypstMarkup.Text("the words")).ToString(),
            TypstFixture.NoFiles
        );

        using var document = PdfDocument.Open(pdf);
        var page = document.GetPage(1);
        Assert.Equal(isLink, page.GetHyperlinks().Count == 1);
        Assert.Contains("the words", TypstFixture.TextOf(pdf), StringComparison.Ordinal);
    }

    [Fact]
    public void Blocks_keep_their_order_and_all_their_words()
    {
        static TypstMarkup Text(string text) => TypstMarkup.Text(text);
        var body =
            TypstMarkup.Heading(2, Text("Alpha"))
            + TypstMarkup.Paragraph(
                TypstMarkup.Emphasis(Text("beta")) + TypstMarkup.LineBreak + TypstMarkup.Strong(Text("gamma"))
            )
            + TypstMarkup.BulletList([
                Text("delta"),
                TypstMarkup.Paragraph(Text("epsilon")) + TypstMarkup.NumberedList([Text("zeta")], start: 7),
            ])
            + TypstMarkup.Quote(Text("eta"))
            + TypstMarkup.CodeBlock("theta\n  iota")
            + TypstMarkup.Table(
                [Text("kappa"), Text("lambda")],
                [
                    [Text("mu"), Text("nu")],
                    [Text("xi")],
                ],
                [ColumnAlignment.Left, ColumnAlignment.Right]
            )
            + TypstMarkup.PageBreak
            + TypstMarkup.Paragraph(Text("omicron"));

        var words = typst.TextOf(body).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(
            [
                "Alpha",
                "beta",
                "gamma",
                "delta",
                "epsilon",
                "zeta",
                "eta",
                "theta",
                "iota",
                "kappa",
                "lambda",
                "mu",
                "nu",
                "xi",
                "omicron",
            ],
            words.Where(word => word.All(char.IsAsciiLetter))
        );
        Assert.Contains("7.", words);
    }

    [Fact]
    public void A_table_checks_its_form()
    {
        var cell = TypstMarkup.Text("x");

        Assert.Throws<ArgumentException>(() => TypstMarkup.Table([], []));
        Assert.Throws<ArgumentException>(() =>
            TypstMarkup.Table(
                [cell],
                [
                    [cell, cell],
                ]
            )
        );
        Assert.Throws<ArgumentException>(() =>
            TypstMarkup.Table([cell], [], [ColumnAlignment.Left, ColumnAlignment.Left])
        );
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    public void A_heading_has_one_of_six_levels(int level) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TypstMarkup.Heading(level, TypstMarkup.Empty));

    [Fact]
    public void The_default_is_the_empty_piece()
    {
        Assert.Equal(TypstMarkup.Empty, default);
        Assert.True(TypstMarkup.Text("").IsEmpty);
        Assert.Equal("", default(TypstMarkup).ToString());
    }

    // Sets each piece on a page of its own and reads the pages back without white space.
    private string[] Pages(IEnumerable<TypstMarkup> pieces)
    {
        var source =
            "#set page(width: 3000pt, height: 100pt)\n#let faces = (\"Source Serif 4\", \"Fretloom Accidentals\")\n#set text(font: faces)\n#show raw: set text(font: faces)\n"
            + string.Join("#pagebreak()", pieces.Select(piece => $"#box[{piece}]"));
        using var document = PdfDocument.Open(typst.Compiler.Compile(source, TypstFixture.NoFiles));
        return
        [
            .. document.GetPages().Select(page => Squeezed(string.Concat(page.Letters.Select(letter => letter.Value)))),
        ];
    }

    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
