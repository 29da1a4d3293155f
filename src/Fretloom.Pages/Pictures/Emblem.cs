using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>Small signs for landmarks and motions, around a point.</summary>
internal static class Emblem
{
    public const double HalfTurnWidth = 13;
    public const double HalfTurnHeight = 17;

    /// <summary>
    /// Upside down: a small card with a flag in its upper left corner and the same flag, turned over, in the lower right,
    /// as the indices of a playing card.
    /// </summary>
    public static Node HalfTurn(double x, double y)
    {
        var flag = Flag();
        return new Node.Group("half-turn", [Plate(x, y), Around(flag, x, y, 1), Around(flag, x, y, -1)]);
    }

    /// <summary>Mirror: two flags that look at each other across a line.</summary>
    public static Node Mirror(double x, double y) =>
        new Node.Group(
            "mirror",
            [
                Plate(x, y),
                new Node.Line(x, y - 6.5, x, y + 6.5, new Stroke(Tone.Ink, 0.7, Dash.Axis)),
                Pennant(x, y, 1),
                Pennant(x, y, -1),
            ]
        );

    /// <summary>The same form: two equal flags.</summary>
    public static Node SameForm(double x, double y) =>
        new Node.Group("same form", [Plate(x, y), Pennant(x + 0.5, y, 1), Pennant(x + 5.7, y, 1)]);

    /// <summary>The odd pair of strings: a pin between two leaves.</summary>
    /// <param name="x">The pin.</param>
    /// <param name="far">Where one string lies.</param>
    /// <param name="near">Where the other lies.</param>
    public static Node Hinge(double x, double far, double near)
    {
        var middle = (far + near) / 2;
        var line = new Stroke(Tone.Ink, 1.1, IsRound: true);
        return new Node.Group(
            "hinge",
            [
                new Node.Path(
                    [
                        PathStep.MoveTo(x - 4, near),
                        PathStep.LineTo(x, near),
                        PathStep.LineTo(x, far),
                        PathStep.LineTo(x - 4, far),
                    ],
                    Tone.None,
                    line
                ),
                new Node.Circle(x, middle, 2.4, Tone.Paper, line),
            ]
        );
    }

    private static Node.Rect Plate(double x, double y) =>
        new(
            x - HalfTurnWidth / 2,
            y - HalfTurnHeight / 2,
            HalfTurnWidth,
            HalfTurnHeight,
            Tone.Paper,
            new Stroke(Tone.Ink, 0.9),
            2
        );

    /// <summary>A small upright flag on one side of a point, looking away from its pole by <paramref name="sign"/>.</summary>
    private static Node.Path Pennant(double x, double y, int sign) =>
        new(
            [
                PathStep.MoveTo(x - sign * 4.6, y - 4.5),
                PathStep.LineTo(x - sign * 1, y - 2.4),
                PathStep.LineTo(x - sign * 3.6, y - 0.6),
                PathStep.LineTo(x - sign * 3.6, y + 4.5),
                PathStep.LineTo(x - sign * 4.6, y + 4.5),
                PathStep.Close(),
            ],
            Tone.Ink
        );

    /// <summary>A flag on its pole in the upper left, relative to the middle of the card.</summary>
    private static PathStep[] Flag() =>
        [
            PathStep.MoveTo(-4.6, -6.8),
            PathStep.LineTo(1.6, -4.5),
            PathStep.LineTo(-3.5, -2.4),
            PathStep.LineTo(-3.5, 1.2),
            PathStep.LineTo(-4.6, 1.2),
            PathStep.Close(),
        ];

    private static Node.Path Around(PathStep[] steps, double x, double y, int sign) =>
        new(steps.Select(step => step with { X = x + sign * step.X, Y = y + sign * step.Y }).ToValueList(), Tone.Ink);
}
