using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Tests.Scene;

/// <summary>Finds what an engraver would be ashamed of: things off the page, writing on writing, type too small to read.</summary>
internal static class DrawingFaults
{
    private const double Tolerance = 0.01;

    private readonly record struct Box(double Left, double Top, double Right, double Bottom)
    {
        public bool Meets(Box other) =>
            Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;
    }

    /// <summary>Every fault, in words; empty for a good drawing.</summary>
    public static IEnumerable<string> Of(Drawing drawing) =>
        OffThePage(drawing).Concat(Overlapping(drawing)).Concat(TooSmall(drawing));

    private static IEnumerable<string> OffThePage(Drawing drawing) =>
        drawing
            .Leaves.Where(node =>
            {
                var box = BoxOf(node);
                return !(
                    box.Left >= -Tolerance
                    && box.Top >= -Tolerance
                    && box.Right <= drawing.Width + Tolerance
                    && box.Bottom <= drawing.Height + Tolerance
                );
            })
            .Select(node => $"off the page of {drawing.Width:0.0} x {drawing.Height:0.0}: {node} {BoxOf(node)}");

    private static IEnumerable<string> Overlapping(Drawing drawing)
    {
        var labels = drawing.Leaves.OfType<Node.Label>().ToList();
        for (var one = 0; one < labels.Count; one++)
        {
            for (var other = one + 1; other < labels.Count; other++)
            {
                if (BoxOf(labels[one]).Meets(BoxOf(labels[other])))
                {
                    yield return $"'{labels[one].Text}' on '{labels[other].Text}' at {labels[one].X:0.0}, {labels[one].Y:0.0}";
                }
            }
        }
    }

    private static IEnumerable<string> TooSmall(Drawing drawing) =>
        drawing
            .Leaves.OfType<Node.Label>()
            .Where(label => label.Style.Size < TextStyle.SmallestSize)
            .Select(label => $"'{label.Text}' is set in {label.Style.Size} pt");

    private static Box BoxOf(Node node) =>
        node switch
        {
            Node.Line line => Around([(line.X1, line.Y1), (line.X2, line.Y2)], 0),
            Node.Circle circle => Around([(circle.X, circle.Y)], circle.Radius + Half(circle.Stroke)),
            Node.Rect rect => Around(
                [(rect.X, rect.Y), (rect.X + rect.Width, rect.Y + rect.Height)],
                Half(rect.Stroke)
            ),
            Node.Path path => Around(
                [.. path.Steps.Where(step => step.Kind != PathStepKind.Close).Select(step => (step.X, step.Y))],
                Half(path.Stroke)
            ),
            // From the height of figures and capitals (two thirds of the size) down to the baseline.
            Node.Label label => new Box(label.Left, label.Y - 0.66 * label.Style.Size, label.Right, label.Y),
            _ => throw new InvalidOperationException($"No box for {node}."),
        };

    private static double Half(Stroke? stroke) => (stroke?.Width ?? 0) / 2;

    private static Box Around((double X, double Y)[] points, double margin) =>
        new(
            points.Min(point => point.X) - margin,
            points.Min(point => point.Y) - margin,
            points.Max(point => point.X) + margin,
            points.Max(point => point.Y) + margin
        );
}
