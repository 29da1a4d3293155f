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

    // Numerals keep so far from the staff above them, in half spaces of it: with less, tall letters touch a head. Ours, without source.
    private const double NumeralMargin = 2.5;

    // Room for the number of the first bar, which the engraver does not count in.
    private const int TopUnits = 18;

    /// <summary>The margin above a system, in the tenths of a unit that the engraver draws in.</summary>
    internal const double TopMargin = 10 * TopUnits;

    /// <summary>The width of a system, in the tenths of a unit that the engraver draws in.</summary>
    internal static double Room(double widthMm) => 10 * Units(widthMm);

    private static double Units(double mm) => Math.Round(mm * StaffUnits / StaffMm);

    /// <summary>About what lies before the first note of a system, after its clef and without accidentals: measured in pictures.</summary>
    internal const double ClefLead = 1400;

    /// <summary>About what lies before the first note of any other bar: measured in pictures.</summary>
    internal const double Lead = 250;

    /// <summary>About what an accidental of a signature takes: measured in pictures.</summary>
    internal const double AccidentalWidth = 165;

    /// <summary>The options with which a score is set as one line, its bars as narrow as they can be.</summary>
    internal static string UnbrokenOptions { get; } = Options(LeastWidthMm, "none", isFilled: false);

    /// <summary>The options with which a score is set in the systems that it says.</summary>
    /// <param name="widthMm">The width of a system.</param>
    /// <param name="isFilled">Whether each system fills the width. Else bars are as narrow as they can be.</param>
    internal static string Options(double widthMm, bool isFilled) => Options(widthMm, "encoded", isFilled);

    private static string Options(double widthMm, string breaks, bool isFilled) =>
        JsonSerializer.Serialize(
            new Dictionary<string, object>
            {
                ["adjustPageHeight"] = true,
                ["breaks"] = breaks,
                ["fingeringScale"] = 0.8,
                ["footer"] = "none",
                ["header"] = "none",
                ["mdivAll"] = true,
                ["minLastJustification"] = 0,
                ["noJustification"] = !isFilled,
                ["pageHeight"] = 100,
                ["pageMarginBottom"] = 4,
                ["pageMarginLeft"] = 0,
                ["pageMarginRight"] = 0,
                ["pageMarginTop"] = TopUnits,
                ["pageWidth"] = Units(widthMm),
                ["spacingStaff"] = 7,
                ["svgFormatRaw"] = true,
                ["svgViewBox"] = true,
                ["topMarginHarm"] = NumeralMargin,
                ["xmlIdSeed"] = 1,
            }
        );
}
