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
            Append(text, face, face.Family, face, null);
        }

        // Browsers choose the slant and the weights before they look at the characters, so every cut needs the rule with its
        // own slant and weights.
        foreach (var face in letters)
        {
            Append(text, TextFaces.Find(TextFaces.Accidentals, face.Weight)!, face.Family, face, AccidentalRange);
        }

        foreach (var face in TextFaces.All.Where(face => face.Family == TextFaces.Accidentals))
        {
            Append(text, face, face.Family, face, AccidentalRange);
        }

        return text.ToString();
    }

    // A cut at 600 or above answers for all bolder weights too, so that no browser thickens it by itself.
    private static void Append(StringBuilder text, FontFace face, string family, FontFace answers, string? range)
    {
        var hasBolder = TextFaces.All.Any(other => other.Family == answers.Family && other.Weight > answers.Weight);
        var weight = answers.Weight < 600 || hasBolder ? $"{answers.Weight}" : $"{answers.Weight} 900";
        text.Append(
                CultureInfo.InvariantCulture,
                $"@font-face{{font-family:\"{family}\";font-weight:{weight};font-style:{(answers.IsItalic ? "italic" : "normal")};font-display:block;"
            )
            .Append(range is null ? "" : $"unicode-range:{range};")
            .Append(
                CultureInfo.InvariantCulture,
                $"src:url(data:font/{face.WebFormat};base64,{Convert.ToBase64String(face.Web.Span)}) format(\"{(face.WebFormat == "ttf" ? "truetype" : face.WebFormat)}\")}}\n"
            );
    }
}
