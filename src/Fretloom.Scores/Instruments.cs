using Fretloom.Neck;

namespace Fretloom.Scores;

/// <summary>Which instruments sound unlike others of their length.</summary>
internal static class Instruments
{
    /// <summary>Whether it has a skin for a top. Its name says so, as no measure of it does.</summary>
    public static bool IsBanjo(Instrument instrument) => instrument.Name.Contains("banjo", StringComparison.Ordinal);
}
