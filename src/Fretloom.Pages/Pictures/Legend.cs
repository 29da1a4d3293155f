using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>A sign with its meaning.</summary>
/// <param name="Sign">Draws the sign with its middle at a point.</param>
/// <param name="SignWidth">Points.</param>
/// <param name="Words">What it means.</param>
internal sealed record LegendItem(Func<double, double, Node> Sign, double SignWidth, string Words);

/// <summary>What the signs of a picture mean, in rows.</summary>
internal static class Legend
{
    private const double RowHeight = 18;
    private const double Gap = 12;

    private static readonly TextStyle Style = new(Face.Sans, 9.5);

    /// <summary>The legend, its right edge and its height; nothing and 0 when there are no items.</summary>
    public static (ValueList<Node> Nodes, double Right, double Height) Draw(
        IReadOnlyList<LegendItem> items,
        double left,
        double top,
        double right
    )
    {
        var nodes = new List<Node>();
        var (x, row, end) = (left, 0, 0.0);
        foreach (var item in items)
        {
            var width = item.SignWidth + 4 + Style.WidthOf(item.Words);
            if (x > left && x + width > right)
            {
                (x, row) = (left, row + 1);
            }

            var y = top + (row + 0.5) * RowHeight;
            nodes.Add(item.Sign(x + item.SignWidth / 2, y));
            nodes.Add(new Node.Label(x + item.SignWidth + 4, y + 3.2, item.Words, Style, Tone.Quiet, Anchor.Start));
            end = Math.Max(end, x + width);
            x += width + Gap;
        }

        return items.Count == 0
            ? ([], 0, 0)
            : ([new Node.Group("legend", nodes.ToValueList())], end, (row + 1) * RowHeight);
    }
}
