namespace Fretloom.Neck;

/// <summary>Distance from one string to its neighbour in millimetres, at the nut and at the bridge.</summary>
/// <remarks>The <c>default</c> is 0 and 0: all strings in one line.</remarks>
public readonly record struct StringSpacing
{
    /// <summary>Makes a spacing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A distance is outside 0 to 50 mm.</exception>
    public StringSpacing(double nutMm, double bridgeMm)
    {
        if (nutMm is not (>= 0 and <= 50) || bridgeMm is not (>= 0 and <= 50))
        {
            throw new ArgumentOutOfRangeException(nameof(nutMm), nutMm, "Spacings are 0 to 50 mm.");
        }

        NutMm = nutMm;
        BridgeMm = bridgeMm;
    }

    /// <summary>Millimetres between neighbours at the nut.</summary>
    public double NutMm { get; }

    /// <summary>Millimetres between neighbours at the bridge.</summary>
    public double BridgeMm { get; }
}
