using System.Globalization;
using Fretloom.Pages.Scene;
using Fretloom.Pages.Svg;

namespace Fretloom.Pages.Tests.Svg;

/// <summary>Contrast by the formula of Web Content Accessibility Guidelines 2.2 (W3C 2023), "relative luminance" and "contrast ratio".</summary>
public class PaletteTests
{
    public static TheoryData<string> Names => ["light", "dark", "printed", "black and white"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Writing_has_a_contrast_of_at_least_4_5_and_lines_of_3(string name)
    {
        var palette = Named(name);
        Assert.InRange(Contrast(palette, Tone.Ink, Tone.Paper), 4.5, 21);
        Assert.InRange(Contrast(palette, Tone.Quiet, Tone.Paper), 4.5, 21);
        Assert.InRange(Contrast(palette, Tone.Focus, Tone.Paper), 4.5, 21);
        Assert.InRange(Contrast(palette, Tone.OnFocus, Tone.Focus), 4.5, 21);
        Assert.InRange(Contrast(palette, Tone.Line, Tone.Paper), 3, 21);
        Assert.InRange(Contrast(palette, Tone.ThreadEdge, Tone.Paper), 3, 21);
        Assert.InRange(Contrast(palette, Tone.Fail, Tone.Paper), 3, 21);
        Assert.InRange(Contrast(palette, Tone.Focus, Tone.Band), 3, 21);
    }

    private static Palette Named(string name) =>
        name switch
        {
            "light" => Palette.Light,
            "dark" => Palette.Dark,
            "printed" => Palette.Printed,
            _ => Palette.BlackAndWhite,
        };

    private static double Contrast(Palette palette, Tone one, Tone other)
    {
        var (a, b) = (Luminance(palette.Of(one)), Luminance(palette.Of(other)));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        var channels = Enumerable
            .Range(0, 3)
            .Select(at =>
                int.Parse(colour.AsSpan(1 + 2 * at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0
            )
            .Select(value => value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4))
            .ToList();
        return 0.2126 * channels[0] + 0.7152 * channels[1] + 0.0722 * channels[2];
    }
}
