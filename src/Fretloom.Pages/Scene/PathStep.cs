namespace Fretloom.Pages.Scene;

/// <summary>What a step of a path does.</summary>
public enum PathStepKind
{
    /// <summary>Begins a new part.</summary>
    Move,

    /// <summary>A straight line.</summary>
    Line,

    /// <summary>An arc of at most half a circle.</summary>
    Arc,

    /// <summary>A line back to where the part began.</summary>
    Close,
}

/// <summary>A step of a path, to (<paramref name="X"/>, <paramref name="Y"/>).</summary>
/// <param name="Kind">What it does.</param>
/// <param name="X">Where it ends.</param>
/// <param name="Y">Where it ends.</param>
/// <param name="Radius">Of an arc, in points.</param>
/// <param name="IsClockwise">Which way an arc turns, as seen on the page.</param>
public readonly record struct PathStep(
    PathStepKind Kind,
    double X = 0,
    double Y = 0,
    double Radius = 0,
    bool IsClockwise = false
)
{
    /// <summary>Begins a new part.</summary>
    public static PathStep MoveTo(double x, double y) => new(PathStepKind.Move, x, y);

    /// <summary>A straight line.</summary>
    public static PathStep LineTo(double x, double y) => new(PathStepKind.Line, x, y);

    /// <summary>An arc of at most half a circle.</summary>
    public static PathStep ArcTo(double x, double y, double radius, bool isClockwise) =>
        new(PathStepKind.Arc, x, y, radius, isClockwise);

    /// <summary>A line back to where the part began.</summary>
    public static PathStep Close() => new(PathStepKind.Close);

    /// <summary>The same, moved or mirrored.</summary>
    public PathStep Placed(Placement placement) =>
        this with
        {
            X = placement.X(X),
            Y = placement.Y(Y),
            IsClockwise = IsClockwise != placement.IsMirrored,
        };
}
