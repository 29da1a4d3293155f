using System.Globalization;
using Fretloom.Neck;

namespace Fretloom.Scores.Tab;

/// <summary>What stands on a line of tablature.</summary>
internal static class TabFigure
{
    /// <summary>The fret, counted along the neck; 0 for an open string wherever it begins. Common practice for short strings, no source.</summary>
    public static string Of(Instrument instrument, Spot spot) =>
        instrument.IsOpen(spot) ? "0" : spot.Fret.ToString(CultureInfo.InvariantCulture);
}
