using Fretloom.Exhibits;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>Cards side by side, with the ties between them below: one drawing a row, so that a page can end between rows.</summary>
internal static class CardRow
{
    private const double FocusRoom = 6;

    /// <summary>All the rows of an exhibit's shapes; below the last what the signs of all cards mean.</summary>
    public static IEnumerable<Picture> DrawAll(Exhibit exhibit, double width, Shape? focus, ExplainedSigns explained)
    {
        var layout = CardLayout.Of(exhibit, width);
        var rows = (exhibit.Shapes ?? []).Chunk(layout.Columns).ToList();
        for (var at = 0; at < rows.Count; at++)
        {
            var ties = CardTies.Draw(exhibit, rows[at], layout);
            var isLast = at == rows.Count - 1;
            LegendItem[] across = [.. isLast ? CardTies.Across(exhibit, rows) : []];
            LegendItem[] items = [.. ties.Legend, .. across, .. isLast ? CardLegend.For(exhibit) : []];
            LegendItem[] news = [.. items.Where(item => explained.Add(item.Words))];
            var drawing = Draw(exhibit, rows[at], layout, focus, ties, news, width);
            yield return new Picture(drawing, CardWords.Table(exhibit, rows[at]));
        }
    }

    private static Drawing Draw(
        Exhibit exhibit,
        Shape[] row,
        CardLayout layout,
        Shape? focus,
        CardTies ties,
        LegendItem[] items,
        double room
    )
    {
        var height = Card.HeightOf(exhibit, layout);
        var top = row.Contains(focus) ? FocusRoom : 0;
        var nodes = new List<Node> { StringNumbers(exhibit, top) };
        for (var at = 0; at < row.Length; at++)
        {
            var left = CardLayout.NumbersWidth + at * layout.CardWidth;
            if (at > 0)
            {
                nodes.Add(new Node.Line(left, top, left, top + height - 8, new Stroke(Tone.Rule, 0.6)));
            }

            var card = new Card(exhibit, row[at], layout, row[at] == focus).Draw();
            nodes.Add(card.Placed(Placement.Moved(left, top)));
        }

        var width = CardLayout.NumbersWidth + row.Length * layout.CardWidth;
        nodes.AddRange(ties.Nodes.Select(node => node.Placed(Placement.Moved(0, top + height))));
        var legend = Legend.Draw(items, 2, top + height + ties.Height, Math.Max(width, room));
        nodes.AddRange(legend.Nodes);
        var (title, description) = CardWords.Of(exhibit, row);
        return new Drawing(
            Math.Max(width, legend.Right + 2),
            top + height + ties.Height + legend.Height,
            title,
            string.Join(" ", ties.Sentences.Prepend(description)),
            nodes.ToValueList()
        );
    }

    private static Node.Group StringNumbers(Exhibit exhibit, double cardTop)
    {
        var numbers = exhibit.Map.Strings.Numbers;
        var style = new TextStyle(Face.Sans, 9);
        var top = cardTop + CardHeading.Height + Measures.Card.Overhang + 3;
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
