using System.Globalization;
using System.Text;

namespace Fretloom.Pages.Fonts;

/// <summary>Writes <c>@font-face</c> rules that hold the fonts themselves, for pages and pictures that must stand alone.</summary>
public static class FontStyleSheet
{
    private const string AccidentalRange = "U+266D-266F,U+1D12A-1D12B";

    /// <summary>
    /// Rules for the given cuts. Accidentals are declared as part of every family named, limited to their own
    /// characters, so that a plain <c>font-family: "Source Serif 4"</c> draws them; they also have their own family.
    /// </summary>
    /// <param name="faces">Which cuts to embed; some 45 to 56 KB of text each, all of them together under 400 KB.</param>
    /// <example><c>"&lt;style&gt;" + FontStyleSheet.For(TextFaces.All) + "&lt;/style&gt;"</c></example>
    public static string For(IEnumerable<FontFace> faces)
    {
        var text = new StringBuilder();
        var letters = faces.Where(face => face.Family != TextFaces.Accidentals).ToList();
        foreach (var face in letters)
        {
            Append(text, face, face.Family, face.IsItalic, null);
        }

        // Browsers choose the slant before they look at the characters, so upright and italic each need the rule.
        var homes = letters
            .Select(face => (face.Family, face.IsItalic))
            .Append((TextFaces.Accidentals, false))
            .Distinct();
        foreach (var (family, isItalic) in homes)
        {
            foreach (var face in TextFaces.All.Where(face => face.Family == TextFaces.Accidentals))
            {
                Append(text, face, family, isItalic, AccidentalRange);
            }
        }

        return text.ToString();
    }

    // A cut at 600 or above answers for all bolder weights too, so that no browser thickens it by itself.
    private static void Append(StringBuilder text, FontFace face, string family, bool isItalic, string? range)
    {
        var hasBolder = TextFaces.All.Any(other => other.Family == face.Family && other.Weight > face.Weight);
        var weight = face.Weight < 600 || hasBolder ? $"{face.Weight}" : $"{face.Weight} 900";
        text.Append(
                CultureInfo.InvariantCulture,
                $"@font-face{{font-family:\"{family}\";font-weight:{weight};font-style:{(isItalic ? "italic" : "normal")};font-display:block;"
            )
            .Append(range is null ? "" : $"unicode-range:{range};")
            .Append(
                CultureInfo.InvariantCulture,
                $"src:url(data:font/{face.WebFormat};base64,{Convert.ToBase64String(face.Web.Span)}) format(\"{(face.WebFormat == "ttf" ? "truetype" : face.WebFormat)}\")}}\n"
            );
    }
}
