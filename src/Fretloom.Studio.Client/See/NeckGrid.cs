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
/// <param name="Rows">The rows, to stand in an element of the role <c>grid</c>.</param>
/// <param name="Style">The places of strings and frets, for that element.</param>
/// <param name="Names">The strings from the top down, each with its number, the name of its note, and where it lies in the picture, CSS from the top.</param>
public sealed record NeckGrid(string Rows, string Style, ValueList<(int Number, string Note, string Top)> Names)
{
    /// <summary>Writes the grid.</summary>
    /// <param name="neck">Where the spots lie.</param>
    /// <param name="exhibit">What they sound.</param>
    /// <param name="chosen">The spots of the shape in hand.</param>
    /// <param name="at">The spot that is reached first by the Tab key; null for the first of all.</param>
    /// <param name="labels">The words.</param>
    public static NeckGrid Of(LiveNeck neck, Exhibit exhibit, IReadOnlyCollection<Spot> chosen, Spot? at, Labels labels)
    {
        // A short string has no spot before it begins.
        if (neck.Cells.Count == 0)
        {
            return new NeckGrid("", "", []);
        }

        var html = new StringBuilder(neck.Cells.Count * 130);
        Head(html, neck, exhibit, labels);
        var first = at is { } wanted && neck.Cells.Any(cell => cell.Spot == wanted) ? wanted : neck.Cells[0].Spot;
        var words = new SoundWords(exhibit, labels);
        var firstFret = exhibit.Map.Frets.First;
        var names = new List<(int, string, string)>();
        foreach (var row in neck.Cells.GroupBy(cell => cell.Spot.String))
        {
            var name = exhibit.NameOf(exhibit.Map.Instrument.String(row.Key).Open.Name);
            var top = 100 * (row.First().Top + row.First().Height / 2) / neck.Drawing.Height;
            names.Add((row.Key, name, FormattableString.Invariant($"{top:0.##}%")));
            html.Append("<div role=\"row\"><span role=\"rowheader\">")
                .Append(Text(labels.Of("neck-string", row.Key, name)))
                .Append("</span>");
            // A short string begins further along.
            var skipped = row.First().Spot.Fret - firstFret;
            foreach (var cell in row)
            {
                html.Append("<span role=\"gridcell\" tabindex=\"")
                    .Append(cell.Spot == first ? '0' : '-')
                    .Append(cell.Spot == first ? "" : "1")
                    .Append("\" data-spot=\"")
                    .Append(row.Key)
                    .Append(':')
                    .Append(cell.Spot.Fret)
                    .Append("\" aria-selected=\"")
                    .Append(chosen.Contains(cell.Spot) ? "true" : "false");
                if (cell.Spot.Fret == firstFret + skipped)
                {
                    html.Append("\" style=\"grid-column-start:").Append(skipped + 2);
                }

                html.Append("\" aria-label=\"");
                words.Append(html, cell.Spot);
                html.Append("\"></span>");
            }

            html.Append("</div>");
        }

        return new NeckGrid(html.ToString(), Places(neck), names.ToValueList());
    }

    private static void Head(StringBuilder html, LiveNeck neck, Exhibit exhibit, Labels labels)
    {
        var landmarks = Landmarks.Of(exhibit.Map);
        html.Append("<div role=\"row\" class=\"heads\"><span role=\"columnheader\">")
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

    // Columns touch: what lies between two frets belongs to the higher one. A mirrored neck runs from the right.
    private static string Places(LiveNeck neck)
    {
        var (whole, height) = (neck.Drawing.Width, neck.Drawing.Height);
        var isMirrored = neck.FretColumns.Count > 1 && neck.FretColumns[1].Left < neck.FretColumns[0].Left;
        var ends = neck
            .FretColumns.Select(column => isMirrored ? whole - column.Left : column.Left + column.Width)
            .ToList();
        var start = isMirrored
            ? whole - neck.FretColumns[0].Left - neck.FretColumns[0].Width
            : neck.FretColumns[0].Left;
        // Open strings take of the room before the nut as much as makes their spots as wide as they are high.
        start -= Math.Clamp(neck.Cells[0].Height - neck.FretColumns[0].Width, 0, start);
        var columns = new StringBuilder();
        columns.Append(FormattableString.Invariant($"direction:{(isMirrored ? "rtl" : "ltr")};grid-template-columns:"));
        columns.Append(FormattableString.Invariant($"{100 * start / whole:0.##}%"));
        for (var at = 0; at < ends.Count; at++)
        {
            var from = at == 0 ? start : ends[at - 1];
            columns.Append(FormattableString.Invariant($" {100 * (ends[at] - from) / whole:0.##}%"));
        }

        var (top, each) = (neck.Cells[0].Top, neck.Cells[0].Height);
        return columns
            .Append(
                FormattableString.Invariant(
                    $";top:{100 * top / height:0.##}%;height:{100 * each * neck.Strings.Count / height:0.##}%;grid-template-rows:repeat({neck.Strings.Count},1fr)"
                )
            )
            .ToString();
    }

    private static string Text(string words) => WebUtility.HtmlEncode(words);

    // What spots are, for those who hear it; notes that sound alike are worded once.
    private sealed class SoundWords(Exhibit exhibit, Labels labels)
    {
        private readonly Dictionary<int, string> _words = [];
        private readonly string _fret = Text(labels["neck-at-fret"]);

        public void Append(StringBuilder html, Spot spot)
        {
            var midi = exhibit.Map.Instrument.MidiAt(spot)!.Value;
            if (!_words.TryGetValue(midi, out var words))
            {
                words = Text(WordsOf(spot));
                _words[midi] = words;
            }

            html.Append(_fret).Append(' ').Append(spot.Fret).Append(": ").Append(words);
        }

        private string WordsOf(Spot spot)
        {
            var note = exhibit.Map.NoteAt(spot)!.Value;
            var name = Accidentals.Pretty(note.Pitch.ToString());
            return exhibit.Map.IsInKey(spot)
                ? labels.Of("neck-note", name, Accidentals.Pretty(note.Degree.ToString()))
                : labels.Of("neck-note-outside", name);
        }
    }
}
