using Fretloom.Exhibits;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>Cards side by side, with the ties between them below: one drawing a row, so that a page can end between rows.</summary>
internal static class CardRow
{
    private const double Top = 6;

    /// <summary>All the rows of an exhibit's shapes; below the last what the signs of all cards mean.</summary>
    public static IEnumerable<Picture> DrawAll(Exhibit exhibit, double width, Shape? focus)
    {
        var layout = CardLayout.Of(exhibit, width);
        var rows = (exhibit.Shapes ?? []).Chunk(layout.Columns).ToList();
        for (var at = 0; at < rows.Count; at++)
        {
            var ofCards = at == rows.Count - 1 ? CardLegend.For(exhibit) : [];
            var drawing = Draw(exhibit, rows[at], layout, focus, ofCards, width);
            yield return new Picture(drawing, CardWords.Table(exhibit, rows[at]));
        }
    }

    private static Drawing Draw(
        Exhibit exhibit,
        Shape[] row,
        CardLayout layout,
        Shape? focus,
        IEnumerable<LegendItem> ofCards,
        double room
    )
    {
        var height = Card.HeightOf(exhibit, layout);
        var nodes = new List<Node> { StringNumbers(exhibit) };
        for (var at = 0; at < row.Length; at++)
        {
            var left = CardLayout.NumbersWidth + at * layout.CardWidth;
            if (at > 0)
            {
                nodes.Add(new Node.Line(left, Top, left, Top + height - 8, new Stroke(Tone.Rule, 0.6)));
            }

            var card = new Card(exhibit, row[at], layout, row[at] == focus).Draw();
            nodes.Add(card.Placed(Placement.Moved(left, Top)));
        }

        var width = CardLayout.NumbersWidth + row.Length * layout.CardWidth;
        var ties = CardTies.Draw(exhibit, row, layout, Top + height);
        nodes.AddRange(ties.Nodes);
        LegendItem[] items = [.. ties.Legend, .. ofCards];
        var legendWidth = Math.Max(width, items.Length > 3 && room > PicturePlan.SmallestWidth ? room : 232);
        var legend = Legend.Draw(items, CardLayout.NumbersWidth, Top + height + ties.Height, legendWidth);
        nodes.AddRange(legend.Nodes);
        var (title, description) = CardWords.Of(exhibit, row);
        return new Drawing(
            legend.Height > 0 ? legendWidth : width,
            Top + height + ties.Height + legend.Height + 2,
            title,
            string.Join(" ", ties.Sentences.Prepend(description)),
            nodes.ToValueList()
        );
    }

    private static Node.Group StringNumbers(Exhibit exhibit)
    {
        var numbers = exhibit.Map.Strings.Numbers;
        var style = new TextStyle(Face.Sans, 9);
        var top = Top + CardHeading.Height + Measures.Card.Overhang + 3;
        return new Node.Group(
            "string numbers",
            numbers
                .Select<int, Node>(
                    (number, at) =>
                        new Node.Label(
                            1,
                            top + (numbers.Count - 1 - at) * Measures.Card.Spacing,
                            Wording.Number(number),
                            style,
                            Tone.Quiet,
                            Anchor.Start
                        )
                )
                .ToValueList()
        );
    }
}
