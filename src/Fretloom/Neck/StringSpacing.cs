namespace Fretloom.Neck;

/// <summary>Distance from one string to its neighbour in millimetres, at the nut and at the bridge.</summary>
/// <remarks>The <c>default</c> is 0 and 0: all strings in one line.</remarks>
public readonly record struct StringSpacing
{
    /// <summary>Makes a spacing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A distance is outside 0 to 50 mm.</exception>
    public StringSpacing(double nutMm, double bridgeMm)
    {
        NutMm = Checked(nutMm, nameof(nutMm));
        BridgeMm = Checked(bridgeMm, nameof(bridgeMm));
    }

    /// <summary>Millimetres between neighbours at the nut.</summary>
    public double NutMm { get; }

    /// <summary>Millimetres between neighbours at the bridge.</summary>
    public double BridgeMm { get; }

    private static double Checked(double distanceMm, string parameter) =>
        distanceMm is >= 0 and <= 50
            ? distanceMm
            : throw new ArgumentOutOfRangeException(parameter, distanceMm, "Spacings are 0 to 50 mm.");
}
