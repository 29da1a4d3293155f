using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Svg;

/// <summary>How tones become colours in an SVG file.</summary>
/// <remarks>
/// <see cref="Screen"/> names classes and leaves the colours to <see cref="ScreenStyles"/>; the others write plain
/// attributes, which every program that reads SVG understands.
/// </remarks>
public sealed class SvgTheme
{
    private readonly Palette? _palette;

    private SvgTheme(Palette? palette) => _palette = palette;

    /// <summary>For a page on a screen: light or dark as the reader wishes, in the reader's own colours where forced, white when printed.</summary>
    public static SvgTheme Screen { get; } = new(null);

    /// <summary>For paper: white, in colour, with stipple and hatch that a photocopier keeps.</summary>
    public static SvgTheme Print { get; } = new(Palette.Printed);

    /// <summary>For paper: black on white, no greys.</summary>
    public static SvgTheme BlackAndWhite { get; } = new(Palette.BlackAndWhite);

    /// <summary>
    /// The CSS of <see cref="Screen"/>, once for a page. <c>data-theme="light"</c>, <c>"dark"</c> or <c>"print"</c> on the root
    /// element overrides the reader's setting.
    /// </summary>
    public static string ScreenStyles { get; } = ScreenCss.Write();

    /// <summary>Whether colours stand in the file itself.</summary>
    internal bool IsResolved => _palette is not null;

    /// <summary>Whether the column of a full fret is stippled.</summary>
    internal bool IsStippled => IsResolved;

    /// <summary>The colour of a tone; <c>none</c> for none.</summary>
    internal string ColourOf(Tone tone) => (_palette ?? Palette.Light).Of(tone);
}
