namespace Fretloom.Neck;

/// <summary>Where a figure of the catalogue comes from.</summary>
public enum FigureSource
{
    /// <summary>Agreed among players or makers and found in many books; no single source was consulted.</summary>
    CommonPractice,

    /// <summary>
    /// The list of standard course tunings (<c>data.COURSETUNING</c>) of the Music Encoding Initiative, module MEI.stringtab,
    /// MEI 5, licence ECL-2.0.
    /// </summary>
    MeiStringTab,

    /// <summary>A scale length of this project's table of fret positions, at most half a millimetre off where the table has inches.</summary>
    FretTable,

    /// <summary>A plausible figure set for this project, without source; instruments of the name differ.</summary>
    Assumption,
}
