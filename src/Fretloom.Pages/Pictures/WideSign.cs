using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>
/// How a stretch is drawn: a dimension line. Between two fingers that are wide apart it is heavier and has doubled ends; where
/// they are very wide apart it is a hatched bar between doubled ends.
/// </summary>
internal static class WideSign
{
    private const double EndHeight = 2.5;
    private const double WideEndHeight = 3.1;
    private const double BarHeight = 1.9;
    private const double BetweenEnds = 2.2;
    private const double BetweenHatches = 3;

    /// <summary>The width of a sample.</summary>
    public const double SampleWidth = 24;

    /// <summary>The line of what is in reach, from left to right at a height.</summary>
    public static IEnumerable<Node> Plain(double left, double right, double y)
    {
        var stroke = new Stroke(Tone.Quiet, 0.7);
        yield return new Node.Line(left, y, right, y, stroke);
        foreach (var end in (double[])[left, right])
        {
            yield return new Node.Line(end, y - EndHeight, end, y + EndHeight, stroke);
        }
    }

    /// <summary>What is wide or very wide, from left to right at a height.</summary>
    public static IEnumerable<Node> Wide(double left, double right, double y, bool isVery)
    {
        var stroke = new Stroke(Tone.Ink, 1);
        if (isVery)
        {
            var edge = new Stroke(Tone.Ink, 0.7);
            yield return new Node.Rect(left, y - BarHeight, right - left, 2 * BarHeight, Tone.Paper, edge);
            yield return Hatches(left, right, y);
        }
        else
        {
            yield return new Node.Line(left, y, right, y, stroke);
        }

        foreach (var end in (double[])[left, left - BetweenEnds, right, right + BetweenEnds])
        {
            yield return new Node.Line(end, y - WideEndHeight, end, y + WideEndHeight, stroke);
        }
    }

    /// <summary>A sample of it around a point.</summary>
    public static Node.Group Sample(double x, double y, Width width) =>
        new(
            width.Words(),
            Wide(x - SampleWidth / 2 + 3, x + SampleWidth / 2 - 3, y, width == Width.VeryWide).ToValueList()
        );

    /// <summary>Where the two fingers land that are wide apart, in millimetres from the bare nut; null where none are.</summary>
    public static (double Lower, double Higher)? LandingsMm(ShapeInHand? inHand, Instrument instrument)
    {
        if (inHand is not { Width: not Width.InReach, Fingering: { Widest: { } widest } fingering })
        {
            return null;
        }

        var apart =
            from lower in fingering.Notes
            from higher in fingering.Notes
            where lower.Finger == widest.Lower && higher.Finger == widest.Higher
            let landings = (instrument.LandingMm(lower.Spot.Fret), instrument.LandingMm(higher.Spot.Fret))
            orderby Math.Abs(landings.Item2 - landings.Item1 - widest.DistanceMm)
            select ((double, double)?)landings;
        return apart.FirstOrDefault();
    }

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
