using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>Sizes of what lies on a neck, all from the distance between its strings.</summary>
/// <param name="Spacing">Points between neighbouring strings.</param>
internal readonly record struct Measures(double Spacing)
{
    /// <summary>On a neck: the smallest spacing at which a two-character label of 9 pt fits its mark.</summary>
    public static Measures Neck { get; } = new(24);

    /// <summary>On a neck that would else need a second row.</summary>
    public static Measures CloseNeck { get; } = new(22);

    /// <summary>On a card.</summary>
    public static Measures Card { get; } = new(20);

    /// <summary>The strings of a pair are drawn finer than a single one, by this factor.</summary>
    public static double PairLine => 0.7;

    public double MarkRadius => 0.33 * Spacing;

    public double MarkLine => 0.045 * Spacing;

    public double RingRadius => 0.43 * Spacing;

    public double CulpritRadius => 0.56 * Spacing;

    public double CulpritLine => 0.07 * Spacing;

    public double BandRadius => 0.43 * Spacing;

    public double StitchLine => 0.04 * Spacing;

    public double ThickThread => 0.20 * Spacing;

    public double ThickThreadCore => 0.13 * Spacing;

    public double ThinThread => 0.07 * Spacing;

    public double HairThread => 0.04 * Spacing;

    public double ThreadHalo => 0.07 * Spacing;

    /// <summary>Between the two strings of a pair.</summary>
    public double PairGap => 0.13 * Spacing;

    public double FretLine => 0.028 * Spacing;

    public double NutWidth => 0.13 * Spacing;

    /// <summary>From the nut to the middle of an open string's mark.</summary>
    public double OpenOffset => 0.66 * Spacing;

    public double FootWidth => 0.48 * Spacing;

    public double FootHeight => 0.09 * Spacing;

    public double TickWidth => 0.52 * Spacing;

    public double TickHeight => 0.16 * Spacing;

    /// <summary>How far the neck reaches beyond its outer strings.</summary>
    public double Overhang => 0.5 * Spacing;

    /// <summary>How far the strings run on beyond the first and last wire.</summary>
    public double RunOn => 0.25 * Spacing;

    /// <summary>The thickness of a string's line; the far ones are thicker.</summary>
    /// <param name="fromNear">0 for the string nearest the floor of those drawn.</param>
    /// <param name="count">How many are drawn.</param>
    public double StringLine(int fromNear, int count) => Spacing * (0.020 + 0.034 * fromNear / Math.Max(3, count - 1));

    /// <summary>The type on a mark: one character larger than two.</summary>
    public TextStyle LabelStyle(string label) =>
        new(Face.SansBold, Math.Max(TextStyle.SmallestSize, (label.Length > 1 ? 0.375 : 0.44) * Spacing));
}
