using System.Globalization;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;

namespace Fretloom.Pages.Html;

/// <summary>Writes the pictures of a lesson as HTML, each with its content as a table that can be opened.</summary>
internal sealed class FigureHtml(HtmlText html, PicturedLesson pictured)
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
        var pictures = pictured.PicturesOf(figure);
        var widest = Drawn(pictures.Select(picture => picture.Drawing.Width).DefaultIfEmpty(0).Max());
        html.Open("figure", ("id", Id(figure)), ("style", widest)).Line();
        if (figure.Options.Title is { } title)
        {
            html.Element("p", title, ("class", "figure-title")).Line();
        }

        if (figure.Options.Caption is { } caption)
        {
            html.Open("figcaption").Element("b", Number(++_captions)).Text(" " + caption).Close().Line();
        }

        if (pictures.Count == 0)
        {
            html.Element("p", PicturedLesson.NothingToSee);
        }

        for (var at = 0; at < pictures.Count; at++)
        {
            WritePicture(pictures[at], $"{Id(figure)}-{Number(at + 1)}");
        }

        if (RunningLines.NoteOn(figure.Exhibit, pictured.Front) is { Length: > 0 } note)
        {
            html.Element("p", note, ("class", "note")).Line();
        }

        Notes(pictured.NotesOn(figure));
        WriteWords(pictures);
        html.Close();
    }

    /// <summary>Writes the general words of caution that belong after some figures.</summary>
    public void WriteCautions(IEnumerable<Block.Figure> figures)
    {
        foreach (var words in pictured.CautionsAfter(figures))
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
            Table(notes.OutOfReach, "Table: shapes that are not in reach");
        }

        foreach (var caution in notes.Cautions)
        {
            html.Element("p", caution, ("class", "reach")).Line();
        }
    }

    private static string Id(Block.Figure figure) => "figure-" + Number(figure.Number);

    /// <summary>Writes one drawing.</summary>
    public void WritePicture(Picture picture, string id)
    {
        html.Open(
                "div",
                ("class", "picture"),
                ("style", Drawn(picture.Drawing.Width)),
                ("tabindex", "0"),
                ("role", "group"),
                ("aria-label", picture.Drawing.Title)
            )
            .Line();
        html.Raw(SvgWriter.Write(picture.Drawing, SvgTheme.Screen, id, isAlone: false)).Close().Line();
    }

    /// <summary>Writes what pictures show, for those who do not see them and for those who want to copy it.</summary>
    public void WriteWords(ValueList<Picture> pictures)
    {
        if (pictures.Count == 0)
        {
            return;
        }

        html.Open("details").Element("summary", "In words").Line();
        foreach (var picture in pictures)
        {
            html.Element("p", picture.Drawing.Description).Line();
            if (picture.Table.Rows.Count > 0)
            {
                Table(picture.Table, "Table: " + picture.Drawing.Title);
            }
        }

        html.Close().Line();
    }

    private void Table(TextTable content, string label)
    {
        html.Open("div", ("class", "scroll"), ("tabindex", "0"), ("role", "group"), ("aria-label", label));
        html.Open("table").Open("thead").Open("tr");
        foreach (var cell in content.Header)
        {
            html.Element("th", cell, ("scope", "col"));
        }

        html.Close().Close().Open("tbody").Line();
        foreach (var row in content.Rows)
        {
            html.Open("tr");
            for (var at = 0; at < row.Count; at++)
            {
                html.Element(at == 0 ? "th" : "td", row[at], ("scope", at == 0 ? "row" : null));
            }

            html.Close().Line();
        }

        html.Close().Close().Close().Line();
    }

    /// <summary>The width a drawing is made for, as a style.</summary>
    public static string Drawn(double width) =>
        string.Create(CultureInfo.InvariantCulture, $"--drawn: {Math.Round(width, 2)}pt");

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
