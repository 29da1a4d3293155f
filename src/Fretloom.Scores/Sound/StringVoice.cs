using Fretloom.Neck;

namespace Fretloom.Scores.Sound;

/// <summary>How the strings of an instrument sound. All figures are set by ear, without source.</summary>
/// <param name="RingsAtE2">Seconds in which a string of 82.4 Hz falls by 60 dB.</param>
/// <param name="SoftAboveHz">Where the pluck begins to lose its high partials.</param>
/// <param name="Roughness">How much noise is in the pluck, as a share of its force.</param>
/// <param name="PluckedAt">Where the string is plucked, as a share of its length from the bridge.</param>
/// <param name="BodyHz">The lowest resonance of the body.</param>
internal sealed record StringVoice(
    double RingsAtE2,
    double SoftAboveHz,
    double Roughness,
    double PluckedAt,
    double BodyHz
)
{
    /// <summary>The loudness of one string, as root mean square at the pluck; full scale is 1.</summary>
    public const double Loudness = 0.12;

    /// <summary>The pitch at which <see cref="RingsAtE2"/> holds.</summary>
    public const double E2 = 82.41;

    /// <summary>The power of the ratio of frequencies by which higher strings ring shorter.</summary>
    public const double RingsPower = 0.4;

    private const double GuitarMm = 648;

    // A skin takes the strings' sound up at once and gives it off: brighter, and over sooner. From memory of the sound, by ear.
    private const double BanjoRings = 0.4;
    private const double BanjoSoftAboveHz = 5200;
    private const double BanjoPluckedAt = 0.12;
    private const double BanjoBodyHz = 230;

    /// <summary>The voice of an instrument: that of a banjo, or the one that fits its scale length.</summary>
    public static StringVoice For(Instrument instrument)
    {
        var wood = For(instrument.ScaleLengthMm);
        return Instruments.IsBanjo(instrument)
            ? wood with
            {
                RingsAtE2 = BanjoRings * wood.RingsAtE2,
                SoftAboveHz = BanjoSoftAboveHz,
                PluckedAt = BanjoPluckedAt,
                BodyHz = BanjoBodyHz,
            }
            : wood;
    }

    /// <summary>The voice that fits a scale length: short strings ring shorter, and small bodies resonate higher.</summary>
    /// <param name="scaleLengthMm">Nut to bridge.</param>
    public static StringVoice For(double scaleLengthMm)
    {
        var size = scaleLengthMm / GuitarMm;
        return new(5 * Math.Min(1.5, size), 2600, 0.25, 0.17, 100 / size);
    }

    /// <summary>Seconds in which a string falls by 60 dB; high strings ring shorter.</summary>
    public double T60(double hz) => RingsAtE2 * Math.Pow(E2 / hz, RingsPower);
}
