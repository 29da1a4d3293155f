using System.Globalization;
using System.Net;
using System.Text;
using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Studio.Client.Words;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.See;

/// <summary>
/// A neck as a grid over its picture, a row for each string and a cell for each spot, so that it can be pointed at, walked with arrow keys and
/// read aloud. Written as text: the browser takes it in at once, which a neck of 24 frets needs.
/// </summary>
public static class NeckGrid
{
    /// <summary>Writes the grid.</summary>
    /// <param name="neck">Where the spots lie.</param>
    /// <param name="exhibit">What they sound.</param>
    /// <param name="chosen">The spots of the shape in hand.</param>
    /// <param name="at">The spot that is reached first by the Tab key; null for the first of all.</param>
    /// <param name="labels">The words.</param>
    public static string Html(LiveNeck neck, Exhibit exhibit, IReadOnlyCollection<Spot> chosen, Spot? at, Labels labels)
    {
        var (map, width, height) = (exhibit.Map, neck.Drawing.Width, neck.Drawing.Height);
        var html = new StringBuilder(neck.Cells.Count * 220);
        Head(html, neck, exhibit, labels);
        var first = at is { } wanted && neck.Cells.Any(cell => cell.Spot == wanted) ? wanted : neck.Cells[0].Spot;
        var number = 0;
        foreach (var cell in neck.Cells)
        {
            if (cell.Spot.String != number)
            {
                html.Append(number == 0 ? "" : "</div>");
                number = cell.Spot.String;
                var name = exhibit.NameOf(map.Instrument.String(number).Open.Name);
                html.Append("<div role=\"row\"><span role=\"rowheader\">")
                    .Append(Text(labels.Of("neck-string", number, name)))
                    .Append("</span>");
            }

            var isChosen = chosen.Contains(cell.Spot);
            html.Append("<span role=\"gridcell\" tabindex=\"")
                .Append(cell.Spot == first ? "0" : "-1")
                .Append("\" data-spot=\"")
                .Append(cell.Spot)
                .Append(
                    isChosen ? "\" aria-selected=\"true\" aria-label=\"" : "\" aria-selected=\"false\" aria-label=\""
                )
                .Append(Text(Words(exhibit, cell.Spot, labels)))
                .Append("\" style=\"left:")
                .Append(Share(cell.Left, width))
                .Append("%;top:")
                .Append(Share(cell.Top, height))
                .Append("%;width:")
                .Append(Share(cell.Width, width))
                .Append("%;height:")
                .Append(Share(cell.Height, height))
                .Append("%\"></span>");
        }

        return html.Append("</div>").ToString();
    }

    // What a spot is, for those who hear it.
    private static string Words(Exhibit exhibit, Spot spot, Labels labels)
    {
        var note = exhibit.Map.NoteAt(spot)!.Value;
        var name = Accidentals.Pretty(note.Pitch.ToString());
        return exhibit.Map.IsInKey(spot)
            ? labels.Of("neck-spot", spot.Fret, name, Accidentals.Pretty(note.Degree.ToString()))
            : labels.Of("neck-spot-outside", spot.Fret, name);
    }

    private static void Head(StringBuilder html, LiveNeck neck, Exhibit exhibit, Labels labels)
    {
        var landmarks = Landmarks.Of(exhibit.Map);
        html.Append("<div role=\"row\" class=\"unseen\"><span role=\"columnheader\">")
            .Append(Text(labels["neck-strings"]))
            .Append("</span>");
        foreach (var (fret, _, _) in neck.FretColumns)
        {
            var key =
                landmarks.FullFrets.Contains(fret) ? "neck-full"
                : landmarks.EmptyFrets.Contains(fret) ? "neck-empty"
                : "neck-fret";
            html.Append("<span role=\"columnheader\">").Append(Text(labels.Of(key, fret))).Append("</span>");
        }

        html.Append("</div>");
    }

    private static string Share(double part, double whole) =>
        (100 * part / whole).ToString("0.##", CultureInfo.InvariantCulture);

    private static string Text(string words) => WebUtility.HtmlEncode(words);
}
