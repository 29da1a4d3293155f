using System.Text.RegularExpressions;
using Fretloom.Pages.Fonts;

namespace Fretloom.Pages.Tests.Fonts;

public partial class FontStyleSheetTests
{
    [Fact]
    public void All_faces_together_stay_below_400_kilobytes() =>
        Assert.InRange(FontStyleSheet.For(TextFaces.All).Length, 100_000, 400_000);

    [Fact]
    public void Every_rule_holds_its_font_and_names_no_address()
    {
        var rules = Rules(TextFaces.All);

        Assert.All(
            rules,
            rule =>
            {
                var font = Convert.FromBase64String(rule.Groups["data"].Value);
                // W3C WOFF 2.0, 4.1: signature "wOF2"; ISO/IEC 14496-22: version 1.0 for TrueType outlines.
                Assert.Equal(rule.Groups["type"].Value == "woff2" ? "wOF2"u8.ToArray() : [0, 1, 0, 0], font[..4]);
            }
        );
        Assert.DoesNotContain("http", FontStyleSheet.For(TextFaces.All).Split("base64,")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Every_cut_has_accidentals_of_its_own_slant_and_weights()
    {
        var rules = Rules(TextFaces.All)
            .ToLookup(
                rule => rule.Value.Contains("unicode-range:U+266D-266F,U+1D12A-1D12B", StringComparison.Ordinal),
                rule => $"{rule.Groups["family"].Value} {rule.Groups["style"].Value} {rule.Groups["weight"].Value}"
            );

        Assert.Contains("Source Sans 3 normal 600", rules[false]);
        Assert.Equal(
            rules[false].Concat(["Fretloom Accidentals normal 400", "Fretloom Accidentals normal 600 900"]),
            rules[true]
        );
    }

    [Fact]
    public void Only_the_faces_asked_for_are_embedded()
    {
        var sheet = Rules([TextFaces.Find(TextFaces.Sans, 600)!]);

        Assert.Equal(
            [TextFaces.Accidentals, TextFaces.Sans],
            sheet.Select(rule => rule.Groups["family"].Value).Distinct().Order(StringComparer.Ordinal)
        );
    }

    private static MatchCollection Rules(IEnumerable<FontFace> faces)
    {
        var sheet = FontStyleSheet.For(faces);
        var rules = Rule().Matches(sheet);
        Assert.Equal(sheet.Split("@font-face").Length - 1, rules.Count);
        return rules;
    }

    [GeneratedRegex(
        """@font-face\{font-family:"(?<family>[^"]+)";font-weight:(?<weight>[\d ]+);font-style:(?<style>normal|italic);[^{}]*src:url\(data:font/(?<type>woff2|ttf);base64,(?<data>[A-Za-z0-9+/=]+)\) format\("(woff2|truetype)"\)\}"""
    )]
    private static partial Regex Rule();
}
