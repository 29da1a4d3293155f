using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>
/// How a stretch is drawn: a dimension line, which has doubled ends where the stretch is wide, and is a hatched bar between
/// doubled ends where it is very wide.
/// </summary>
internal static class WideSign
{
    private const double EndHeight = 2.5;
    private const double BarHeight = 1.9;
    private const double BetweenEnds = 2.2;
    private const double BetweenHatches = 3;

    /// <summary>The width of a sample.</summary>
    public const double SampleWidth = 24;

    /// <summary>The line from left to right at a height.</summary>
    public static IEnumerable<Node> Line(double left, double right, double y, Width width)
    {
        var stroke = width == Width.InReach ? new Stroke(Tone.Quiet, 0.7) : new Stroke(Tone.Ink, 1);
        if (width == Width.VeryWide)
        {
            var bar = new Node.Rect(
                left,
                y - BarHeight,
                right - left,
                2 * BarHeight,
                Tone.Paper,
                new Stroke(Tone.Ink, 0.7)
            );
            yield return bar;
            yield return Hatches(left, right, y);
        }
        else
        {
            yield return new Node.Line(left, y, right, y, stroke);
        }

        double[] ends = width == Width.InReach ? [left, right] : [left, left - BetweenEnds, right, right + BetweenEnds];
        foreach (var end in ends)
        {
            var height = width == Width.InReach ? EndHeight : EndHeight + 0.6;
            yield return new Node.Line(end, y - height, end, y + height, stroke);
        }
    }

    /// <summary>A sample of it around a point.</summary>
    public static Node.Group Sample(double x, double y, Width width) =>
        new(width.Words(), Line(x - SampleWidth / 2 + 3, x + SampleWidth / 2 - 3, y, width).ToValueList());

    /// <summary>The words beside it: <c>very wide 1–4</c>; empty for a shape in reach.</summary>
    public static string Words(ShapeInHand? inHand) =>
        inHand switch
        {
            null or { Width: Width.InReach } => "",
            { Fingering: null } => "no fingering",
            { Fingering.Widest: { } widest } =>
                $"{inHand.Width.Words()} {widest.Lower.ToLabel()}–{widest.Higher.ToLabel()}",
            _ => inHand.Width.Words(),
        };

    /// <summary>The legend of the signs that occur, as one.</summary>
    public static IEnumerable<LegendItem> Legend(Exhibit exhibit)
    {
        var widths = exhibit
            .InHand.Where(one => one.Fingering is not null && one.Width != Width.InReach)
            .Select(one => one.Width)
            .Distinct()
            .Order()
            .ToList();
        if (widths.Count > 0)
        {
            const double gap = 5;
            var each = SampleWidth + gap;
            yield return new LegendItem(
                (x, y) =>
                    new Node.Group(
                        "widths",
                        widths
                            .Select<Width, Node>(
                                (width, at) => Sample(x + (at - (widths.Count - 1) / 2.0) * each, y, width)
                            )
                            .ToValueList()
                    ),
                each * widths.Count - gap,
                $"{string.Join(" and ", widths.Select(width => width.Words()))} for a hand of {exhibit.Player.Hand}"
            );
        }
    }

    private static Node.Path Hatches(double left, double right, double y)
    {
        var steps = new List<PathStep>();
        for (var x = left + BetweenHatches; x <= right; x += BetweenHatches)
        {
            steps.Add(PathStep.MoveTo(Math.Max(left, x - 2 * BarHeight), y + BarHeight));
            steps.Add(PathStep.LineTo(x, y - BarHeight));
        }

        return new Node.Path(steps.ToValueList(), Tone.None, new Stroke(Tone.Ink, 0.8));
    }
}
