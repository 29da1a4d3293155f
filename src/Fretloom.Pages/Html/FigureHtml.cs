using System.Globalization;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;

namespace Fretloom.Pages.Html;

/// <summary>Writes the pictures of a lesson as HTML, each with its content as a table that can be opened.</summary>
internal sealed class FigureHtml(HtmlText html, PicturedLesson pictured, PictureHtml drawings, KeptHtml? kept)
{
    private int _captions;
    private int _cautions;

    /// <summary>Writes figures side by side; where there is no room, one below the other.</summary>
    public void WriteRow(IEnumerable<Block.Figure> figures)
    {
        html.Open("div", ("class", "row")).Line();
        foreach (var figure in figures)
        {
            Write(figure);
            html.Line();
        }

        html.Close();
    }

    /// <summary>Writes a figure. Those with a caption are numbered.</summary>
    public void Write(Block.Figure figure)
    {
        var caption = figure.Options.Caption is null ? 0 : ++_captions;
        if (kept is null)
        {
            WriteAnew(figure, caption);
        }
        else
        {
            var said = (figure.Number, caption, figure.Options, RunningLines.NoteOn(figure.Exhibit, pictured.Front));
            kept.Write(html, pictured.DrawingOf(figure), said, () => WriteAnew(figure, caption));
        }
    }

    private void WriteAnew(Block.Figure figure, int number)
    {
        var pictures = pictured.PicturesOf(figure);
        var widest = PictureHtml.Drawn(pictures.Select(picture => picture.Drawing.Width).DefaultIfEmpty(0).Max());
        html.Open("figure", ("id", Id(figure)), ("style", widest)).Line();
        if (figure.Options.Title is { } title)
        {
            html.Element("p", title, ("class", "figure-title")).Line();
        }

        if (figure.Options.Caption is { } caption)
        {
            html.Open("figcaption").Element("b", Number(number)).Text(" " + caption).Close().Line();
        }

        if (pictures.Count == 0)
        {
            html.Element("p", PicturedLesson.NothingToSee);
        }

        for (var at = 0; at < pictures.Count; at++)
        {
            drawings.Write(pictures[at], $"{Id(figure)}-{Number(at + 1)}");
        }

        if (RunningLines.NoteOn(figure.Exhibit, pictured.Front) is { Length: > 0 } note)
        {
            html.Element("p", note, ("class", "note")).Line();
        }

        Notes(pictured.NotesOn(figure));
        drawings.WriteWords(pictures);
        html.Close();
    }

    /// <summary>Writes the general words of caution that belong after some blocks.</summary>
    public void WriteCautions(IEnumerable<Block> blocks)
    {
        foreach (var words in pictured.CautionsAfter(blocks))
        {
            var id = "caution-" + Number(++_cautions);
            html.Line().Open("div", ("class", "caution"), ("role", "note"), ("aria-labelledby", id));
            html.Open("p", ("id", id)).Element("strong", HandNotes.Heading).Close().Element("p", words).Close();
        }
    }

    // Below the pictures: how many shapes the hand reaches and what to do about the others, or what is wide.
    private void Notes(HandNotes notes)
    {
        if (notes.Summary.Length > 0)
        {
            html.Element("p", notes.Summary, ("class", "reach")).Line();
        }

        if (notes.OutOfReach.Rows.Count > 0)
        {
            drawings.WriteTable(notes.OutOfReach, "Table: shapes that are not in reach");
        }

        foreach (var caution in notes.Cautions)
        {
            html.Element("p", caution, ("class", "reach")).Line();
        }
    }

    private static string Id(Block.Figure figure) => "figure-" + Number(figure.Number);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
