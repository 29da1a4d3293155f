using Fretloom.Lessons;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pdf;
using Fretloom.Scores.Engraving;

namespace Fretloom.Pages.Html;

/// <summary>A lesson as one HTML file that needs nothing else: styles, fonts, pictures and, where there are exercises, the script that plays them stand inside it.</summary>
/// <remarks>The page forbids itself to load anything. Light or dark as the reader wishes; printed, it is white and has page numbers.</remarks>
public static class HtmlPage
{
    /// <summary>Writes the page.</summary>
    /// <param name="lesson">The lesson, in the key it is wanted in.</param>
    /// <param name="sourceName">The name of the lesson file, for the last line; empty for none.</param>
    /// <param name="paper">The paper it is printed on.</param>
    /// <param name="engraver">Engraves the exercises; null writes them as plain-text tablature.</param>
    /// <returns>The file. The same lesson gives the same text.</returns>
    public static string Of(
        Lesson lesson,
        string sourceName = "",
        Paper paper = Paper.A4,
        IEngraver? engraver = null
    ) => Of(new PicturedLesson(lesson, engraver: engraver), sourceName, paper);

    /// <summary>Writes the page of a lesson whose pictures are drawn.</summary>
    internal static string Of(PicturedLesson pictured, string sourceName, Paper paper)
    {
        var (front, lines) = (pictured.Front, pictured.Lines);
        var html = new HtmlText().Raw("<!doctype html>\n");
        html.Open("html", ("lang", front.Language)).Line();
        var script = pictured.Exercises.Count > 0 ? PlayerHtml.Script : null;
        PageHead.Write(html, front.Title, $"@page {{ size: {(paper == Paper.Letter ? "letter" : "A4")}; }}\n", script);
        html.Open("body").Line();
        html.Element("a", "Skip to the lesson", ("class", "skip"), ("href", "#lesson")).Line();
        WriteRunning(html, lines);
        html.Open("main", ("id", "lesson"), ("tabindex", "-1")).Open("article").Line();
        WriteTitle(html, front, lines);
        new BlockHtml(html, pictured).WriteSections(pictured.Blocks);
        html.Close().Close().Line();
        html.Open("footer")
            .Element("p", sourceName.Length == 0 ? "Made with Fretloom" : $"Made with Fretloom from {sourceName}")
            .Close()
            .Line();
        if (script is not null)
        {
            html.Open("script").Raw(script).Close().Line();
        }

        return html.Close().Line().Close().Line().ToString();
    }

    /// <summary>Writes what stands above every page.</summary>
    internal static void WriteRunning(HtmlText html, RunningLines lines) =>
        html.Open("header", ("class", "running")).Element("p", lines.Left).Element("p", lines.Right).Close().Line();

    /// <summary>Writes the title and what stands below it.</summary>
    internal static void WriteTitle(HtmlText html, FrontMatter front, RunningLines lines)
    {
        html.Open("header").Element("h1", front.Title);
        Optional(html, front.Subtitle, "subtitle");
        Optional(html, lines.Byline, "byline");
        html.Close().Line();
    }

    private static void Optional(HtmlText html, string? text, string kind)
    {
        if (!string.IsNullOrEmpty(text))
        {
            html.Element("p", text, ("class", kind));
        }
    }
}
