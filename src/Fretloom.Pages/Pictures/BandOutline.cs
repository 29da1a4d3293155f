using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>The outline of a band of even width around a chain of points: what a thick round pen would cover.</summary>
internal static class BandOutline
{
    /// <summary>The outline, once around.</summary>
    /// <param name="points">At least one; neighbours differ.</param>
    /// <param name="radius">Half the width.</param>
    public static ValueList<PathStep> Around(IReadOnlyList<(double X, double Y)> points, double radius)
    {
        if (points.Count == 1)
        {
            var (x, y) = points[0];
            return
            [
                PathStep.MoveTo(x - radius, y),
                PathStep.ArcTo(x + radius, y, radius, true),
                PathStep.ArcTo(x - radius, y, radius, true),
                PathStep.Close(),
            ];
        }

        var steps = new List<PathStep>();
        var there = Side(points, radius);
        var back = Side([.. points.Reverse()], radius);
        steps.Add(PathStep.MoveTo(there[0].X, there[0].Y));
        steps.AddRange(there.Skip(1));
        steps.Add(PathStep.ArcTo(back[0].X, back[0].Y, radius, true));
        steps.AddRange(back.Skip(1));
        steps.Add(PathStep.ArcTo(there[0].X, there[0].Y, radius, true));
        steps.Add(PathStep.Close());
        return steps.ToValueList();
    }

    /// <summary>The edge on the left of someone who walks along the points (y downward), arcs round outer corners.</summary>
    private static List<PathStep> Side(IReadOnlyList<(double X, double Y)> points, double radius)
    {
        var edge = new List<PathStep>();
        var normals = points.Zip(points.Skip(1), (from, to) => Normal(from, to)).ToList();
        edge.Add(Offset(points[0], normals[0], radius));
        for (var corner = 1; corner < points.Count - 1; corner++)
        {
            var (before, after) = (normals[corner - 1], normals[corner]);
            var turn = before.X * after.Y - before.Y * after.X;
            if (turn > 1e-9)
            {
                var end = Offset(points[corner], after, radius);
                edge.Add(Offset(points[corner], before, radius));
                edge.Add(PathStep.ArcTo(end.X, end.Y, radius, true));
            }
            else
            {
                var reach = radius / (1 + before.X * after.X + before.Y * after.Y);
                edge.Add(Offset(points[corner], (before.X + after.X, before.Y + after.Y), reach));
            }
        }

        edge.Add(Offset(points[^1], normals[^1], radius));
        return edge;
    }

    private static (double X, double Y) Normal((double X, double Y) from, (double X, double Y) to)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt(dx * dx + dy * dy);
        return (dy / length, -dx / length);
    }

    private static PathStep Offset((double X, double Y) point, (double X, double Y) normal, double distance) =>
        PathStep.LineTo(point.X + distance * normal.X, point.Y + distance * normal.Y);
}
