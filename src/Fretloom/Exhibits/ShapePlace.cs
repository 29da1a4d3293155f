using System.Globalization;
using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Exhibits;

/// <summary>Where a chord shape lies, in words.</summary>
public static class ShapePlace
{
    /// <summary>Fret by fret, the far string first, 0 for an open string: <c>frets 5-4-3-1 on strings 4-1</c>.</summary>
    /// <param name="shape">One note a string.</param>
    /// <param name="instrument">What it lies on; a short string is open at the fret where it begins.</param>
    public static string FretByFret(this Shape shape, Instrument instrument)
    {
        ArgumentNullException.ThrowIfNull(shape);
        var frets = shape.Spots.Select(spot => instrument.IsOpen(spot) ? 0 : spot.Fret);
        var strings = new StringSet(shape.Spots.Select(spot => spot.String));
        return string.Create(CultureInfo.InvariantCulture, $"frets {string.Join('-', frets)} on strings {strings}");
    }
}
