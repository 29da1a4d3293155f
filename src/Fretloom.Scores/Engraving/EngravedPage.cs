using System.Text.Json;

namespace Fretloom.Scores.Engraving;

/// <summary>The page the engraver works on: as wide as asked, as high as one system.</summary>
public static class EngravedPage
{
    /// <summary>The narrowest system, in millimetres.</summary>
    public const double LeastWidthMm = 60;

    /// <summary>The height of the five lines, in millimetres: the figures of the tablature are then 9 points high. Ours, without source.</summary>
    internal const double StaffMm = 7.1;

    // The engraver's own measure, in which its options are written.
    private const int StaffUnits = 72;

    /// <summary>The engraver's options as JSON.</summary>
    internal static string Options(double widthMm) =>
        JsonSerializer.Serialize(
            new Dictionary<string, object>
            {
                ["adjustPageHeight"] = true,
                ["breaks"] = "auto",
                ["fingeringScale"] = 0.8,
                ["footer"] = "none",
                ["header"] = "none",
                ["pageHeight"] = 100,
                ["pageMarginBottom"] = 4,
                ["pageMarginLeft"] = 0,
                ["pageMarginRight"] = 0,
                // Room for the number of the first bar, which the engraver does not count in.
                ["pageMarginTop"] = 18,
                ["pageWidth"] = Math.Round(widthMm * StaffUnits / StaffMm),
                ["spacingStaff"] = 7,
                ["svgFormatRaw"] = true,
                ["svgViewBox"] = true,
                ["xmlIdSeed"] = 1,
            }
        );
}
