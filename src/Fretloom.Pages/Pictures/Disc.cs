using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>The round ground of a label: a circle, or where the label is too long for it, as in Sol♭, a capsule.</summary>
/// <param name="X">The middle.</param>
/// <param name="Y">The middle.</param>
/// <param name="Widening">How far it reaches beyond the circle, on either side.</param>
internal readonly record struct Disc(double X, double Y, double Widening)
{
    // Letters reach about so far above and below the middle of their line, in parts of the type size.
    private const double HalfHeight = 0.33;
    private const double Margin = 1;

    /// <summary>The ground that a label needs.</summary>
    /// <param name="x">The middle.</param>
    /// <param name="y">The middle.</param>
    /// <param name="radius">Of the circle.</param>
    /// <param name="label">What stands on it.</param>
    /// <param name="style">How it is set.</param>
    public static Disc For(double x, double y, double radius, string label, TextStyle style)
    {
        var half = style.WidthOf(label) / 2;
        var room = Math.Sqrt(Math.Max(0, radius * radius - Math.Pow(HalfHeight * style.Size, 2)));
        return new Disc(x, y, half <= room ? 0 : half - room + Margin);
    }

    /// <summary>Draws it.</summary>
    public Node Drawn(double radius, Tone fill, Stroke line)
    {
        var reach = radius + Widening;
        return Widening == 0
            ? new Node.Circle(X, Y, radius, fill, line)
            : new Node.Rect(X - reach, Y - radius, 2 * reach, 2 * radius, fill, line, radius);
    }
}
