using System.Globalization;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;

namespace Fretloom.Pages.Html;

/// <summary>Writes drawings into a page, each with its content in words and as a table that can be opened.</summary>
internal sealed class PictureHtml(HtmlText html)
{
    /// <summary>Writes one drawing.</summary>
    public void Write(Picture picture, string id)
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
                WriteTable(picture.Table, "Table: " + picture.Drawing.Title);
            }
        }

        html.Close().Line();
    }

    /// <summary>Writes a table that scrolls where it is too wide.</summary>
    public void WriteTable(TextTable content, string label)
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
}
