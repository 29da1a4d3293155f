using Fretloom.Lessons;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Pdf;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;

namespace Fretloom.Pages.Documents;

/// <summary>How a lesson is printed.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="IsLargePrint">18 point type, and every wide picture on a page of its own, lying on its side.</param>
/// <param name="SourceName">The name of the lesson file, for the last line of each page; empty for none.</param>
public sealed record PrintOptions(Paper Paper = Paper.A4, bool IsLargePrint = false, string SourceName = "");

/// <summary>A lesson as a tagged PDF.</summary>
public static class PdfDocument
{
    private const double PointsPerMm = 72 / 25.4;

    // 18 point type is 1.8 times that of the standard edition. An A4 sheet lying on its side has 261 mm between its margins.
    private const double LargePrintScale = 1.8;
    private const double LargePrintDrawing = 261 * PointsPerMm / LargePrintScale;

    /// <summary>Sets a lesson.</summary>
    /// <param name="lesson">The lesson, in the key it is wanted in.</param>
    /// <param name="options">How it is printed.</param>
    /// <param name="typst">The compiler, kept warm by the caller.</param>
    /// <returns>The file. The same lesson gives the same bytes.</returns>
    /// <exception cref="TypstException">The language of the lesson is not known to the typesetter.</exception>
    public static byte[] Of(Lesson lesson, PrintOptions options, TypstCompiler typst) =>
        Of(Pictured(lesson, options), options, typst);

    /// <summary>Draws the pictures of a lesson as they are printed.</summary>
    internal static PicturedLesson Pictured(Lesson lesson, PrintOptions options) =>
        new(lesson, options.IsLargePrint ? LargePrintDrawing : PicturePlan.PageWidth);

    /// <summary>Sets a lesson whose pictures are drawn.</summary>
    internal static byte[] Of(PicturedLesson pictured, PrintOptions options, TypstCompiler typst)
    {
        var lines = pictured.Lines;
        var scale = options.IsLargePrint ? LargePrintScale : 1;
        var files = new Dictionary<string, byte[]>();
        var front = pictured.Front;
        var subtitle = TypstMarkup.Emphasis(TypstMarkup.Text(front.Subtitle ?? ""));
        var byline = TypstMarkup.Small(TypstMarkup.Text(lines.Byline));
        var opening =
            (front.Subtitle is null ? TypstMarkup.Empty : TypstMarkup.Lead(subtitle))
            + (lines.Byline.Length == 0 ? TypstMarkup.Empty : TypstMarkup.Lead(byline));
        var body = new BlockTypst(pictured, TextWidth(options.Paper), scale, files).Markup(pictured.Blocks);
        var handout = new Handout(front.Title, opening + body)
        {
            HeaderLeft = lines.Left,
            HeaderRight = lines.Right,
            SourceName = options.SourceName,
            Paper = options.Paper,
            IsLargePrint = options.IsLargePrint,
            Language = front.Language.Split('-')[0],
        };
        return handout.ToPdf(typst, files);
    }

    // Margins of 18 mm.
    private static double TextWidth(Paper paper) => ((paper == Paper.Letter ? 215.9 : 210) - 36) * PointsPerMm;
}
