namespace Fretloom.Pages.Pdf;

/// <summary>Size of the sheet.</summary>
public enum Paper
{
    /// <summary>ISO 216 A4, 210 by 297 mm.</summary>
    A4,

    /// <summary>ANSI/ASME Y14.1 size A, 215.9 by 279.4 mm.</summary>
    Letter,
}

/// <summary>A handout to be printed: what stands around the body, and the body.</summary>
/// <param name="Title">Title, as plain text; also the title of the PDF.</param>
/// <param name="Body">The body; its sections start at heading level 2.</param>
/// <example>
/// <code>
/// var handout = new Handout("Three frets that carry the key",
///     TypstMarkup.Paragraph(TypstMarkup.Text("Find the frets where every string belongs to the key."))
///     + TypstMarkup.Figure(new HandoutPicture("neck.svg", "The notes of F major"), TypstMarkup.Text("Three full frets")))
/// { HeaderLeft = "Low-G ukulele", SourceName = "three-frets.md" };
/// byte[] pdf = handout.ToPdf(typst, new Dictionary&lt;string, byte[]&gt; { ["neck.svg"] = svg });
/// </code>
/// </example>
public sealed record Handout(string Title, TypstMarkup Body)
{
    private const string TemplatePath = "handout.typ";

    /// <summary>A line below the title; empty for none.</summary>
    public string Subtitle { get; init; } = "";

    /// <summary>Who and when, in small type below the title; empty for none.</summary>
    public string Byline { get; init; } = "";

    /// <summary>Text at the left of the header line.</summary>
    public string HeaderLeft { get; init; } = "";

    /// <summary>Text at the right of the header line.</summary>
    public string HeaderRight { get; init; } = "";

    /// <summary>Name of the lesson in the footer: "Made with Fretloom from …"; empty for none.</summary>
    public string SourceName { get; init; } = "";

    /// <summary>Size of the sheet.</summary>
    public Paper Paper { get; init; }

    /// <summary>Whether this is the large-print edition: 18 pt body.</summary>
    public bool IsLargePrint { get; init; }

    /// <summary>Whether the sheets lie on their side.</summary>
    public bool IsLandscape { get; init; }

    /// <summary>Language of the text as a two-letter ISO 639-1 code, for hyphenation and screen readers.</summary>
    public string Language { get; init; } = "en";

    /// <summary>The whole Typst source. It needs the template, which <see cref="ToPdf"/> adds.</summary>
    public string ToTypst() =>
        $"""
            #import "/{TemplatePath}": *
            #show: handout.with(
              title: {TypstMarkup.Text(Title).Bracketed}, plain-title: {TypstMarkup.Literal(Title)},
              subtitle: {TypstMarkup.Text(Subtitle).OrNone}, byline: {TypstMarkup.Text(Byline).OrNone},
              header-left: {TypstMarkup.Text(HeaderLeft).Bracketed}, header-right: {TypstMarkup.Text(
                HeaderRight
            ).Bracketed},
              source: {(SourceName.Length == 0 ? "none" : TypstMarkup.Text(SourceName).Bracketed)},
              paper: "{(Paper == Paper.Letter ? "us-letter" : "a4")}", lang: {TypstMarkup.Literal(Language)},
              large-print: {(IsLargePrint ? "true" : "false")}, flipped: {(IsLandscape ? "true" : "false")},
            )
            {Body}
            """;

    /// <summary>Sets the handout.</summary>
    /// <param name="typst">The compiler, kept warm by the caller.</param>
    /// <param name="pictures">The picture files that the body names, by path.</param>
    /// <returns>The PDF: tagged, with alternative texts, the same bytes for the same handout.</returns>
    /// <exception cref="TypstException">A picture is missing or broken, or the language is not a code.</exception>
    public byte[] ToPdf(TypstCompiler typst, IReadOnlyDictionary<string, byte[]> pictures)
    {
        var files = new Dictionary<string, byte[]>(pictures) { [TemplatePath] = EmbeddedText.ReadBytes(TemplatePath) };
        return typst.Compile(ToTypst(), files);
    }
}
