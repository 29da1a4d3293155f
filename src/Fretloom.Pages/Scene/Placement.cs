namespace Fretloom.Pages.Scene;

/// <summary>A move, with or without a mirror. Writing is moved but stays readable.</summary>
public readonly record struct Placement
{
    private readonly double _dx;
    private readonly double _dy;

    private Placement(bool isMirrored, double dx, double dy)
    {
        IsMirrored = isMirrored;
        _dx = dx;
        _dy = dy;
    }

    /// <summary>Whether left and right change places.</summary>
    public bool IsMirrored { get; }

    /// <summary>To the right and downward, in points.</summary>
    public static Placement Moved(double dx, double dy) => new(false, dx, dy);

    /// <summary>Left and right change places within a width that begins at 0.</summary>
    public static Placement Mirrored(double width) => new(true, width, 0);

    /// <summary>Where an x goes.</summary>
    public double X(double x) => IsMirrored ? _dx - x : x + _dx;

    /// <summary>Where a y goes.</summary>
    public double Y(double y) => y + _dy;
}
