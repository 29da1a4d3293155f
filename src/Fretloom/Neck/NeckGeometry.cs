namespace Fretloom.Neck;

/// <summary>Where frets, strings and fingertips lie, in millimetres from the nut (without capo) and from string 1.</summary>
/// <remarks>
/// Frets follow the rule of equal temperament, fret n at L(1 - 2^(-n/12)) from the nut (common practice; the tests compare
/// a table). The fingertip lands a quarter of the fret's width behind the wire: an assumption without source.
/// </remarks>
public static class NeckGeometry
{
    private const double LandingShare = 0.25;

    /// <summary>Nut to fret wire, for a fret counted on the bare neck; 0 for the nut.</summary>
    public static double FretMm(double scaleLengthMm, double fret) => scaleLengthMm * (1 - Math.Pow(2, -fret / 12));

    /// <summary>Nut to fret wire, for a fret counted from the capo.</summary>
    public static double FretMm(this Instrument instrument, double fret) =>
        FretMm(instrument.ScaleLengthMm, fret + instrument.Capo);

    /// <summary>Nut to where the fingertip lands for a fret counted from the capo; for fret 0 the nut or the capo itself.</summary>
    public static double LandingMm(this Instrument instrument, int fret)
    {
        var wire = instrument.FretMm(fret);
        return fret == 0 ? wire : wire - LandingShare * (wire - instrument.FretMm(fret - 1));
    }

    /// <summary>Distance across the neck from string 1 to another string, at a distance along it, both in millimetres.</summary>
    public static double StringMm(this Instrument instrument, int stringNumber, double alongMm)
    {
        var spacing = instrument.Spacing;
        var between = spacing.NutMm + (spacing.BridgeMm - spacing.NutMm) * alongMm / instrument.ScaleLengthMm;
        return (stringNumber - 1) * between;
    }

    /// <summary>Where a fingertip lands for a spot: along the neck from the nut, and across from string 1.</summary>
    public static (double AlongMm, double AcrossMm) PointMm(this Instrument instrument, Spot spot)
    {
        var along = instrument.LandingMm(spot.Fret);
        return (along, instrument.StringMm(spot.String, along));
    }

    /// <summary>The straight line between the landing points of two spots, in millimetres.</summary>
    public static double DistanceMm(this Instrument instrument, Spot one, Spot other)
    {
        var (along, across) = instrument.PointMm(one);
        var (otherAlong, otherAcross) = instrument.PointMm(other);
        return Math.Sqrt(Math.Pow(along - otherAlong, 2) + Math.Pow(across - otherAcross, 2));
    }

    /// <summary>Frets covered, counted inclusively, open strings left out: frets 5 to 7 are 3. 0 when every string is open.</summary>
    public static int Span(this Instrument instrument, IEnumerable<Spot> spots)
    {
        var frets = instrument.PressedFrets(spots);
        return frets.Count == 0 ? 0 : frets.Max() - frets.Min() + 1;
    }

    /// <summary>Millimetres along the neck between the lowest and the highest landing point, open strings left out.</summary>
    public static double StretchMm(this Instrument instrument, IEnumerable<Spot> spots)
    {
        var frets = instrument.PressedFrets(spots);
        return frets.Count == 0 ? 0 : instrument.LandingMm(frets.Max()) - instrument.LandingMm(frets.Min());
    }

    private static List<int> PressedFrets(this Instrument instrument, IEnumerable<Spot> spots) =>
        spots.Where(spot => !instrument.IsOpen(spot)).Select(spot => spot.Fret).ToList();
}
