namespace Fretloom.Pages.Fonts;

/// <summary>One point of a TrueType contour, in font units; off-curve points are quadratic control points.</summary>
internal readonly record struct OutlinePoint(int X, int Y, bool OnCurve = true);

/// <summary>
/// A closed contour; clockwise ones (y upward) are filled, counter-clockwise ones cut out, by the non-zero rule.
/// </summary>
internal sealed class Contour(params OutlinePoint[] points)
{
    /// <summary>The points in order; the last is joined to the first.</summary>
    public IReadOnlyList<OutlinePoint> Points { get; } = points;

    /// <summary>The same contour moved sideways.</summary>
    public Contour MovedBy(int x) => new([.. Points.Select(p => p with { X = p.X + x })]);
}

/// <summary>A drawn character: its code point, how far it moves the pen, and its contours.</summary>
internal sealed record Glyph(int CodePoint, int Advance, IReadOnlyList<Contour> Contours);
