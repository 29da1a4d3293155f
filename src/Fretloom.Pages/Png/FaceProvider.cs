using Fretloom.Pages.Fonts;
using SkiaSharp;
using Svg.Skia.TypefaceProviders;

namespace Fretloom.Pages.Png;

/// <summary>Hands the shipped faces to the rasteriser, which finds no fonts of the system.</summary>
/// <param name="family">The family it serves.</param>
/// <param name="isFallback">Whether it answers to any name; such a provider stands last.</param>
internal sealed class FaceProvider(string family, bool isFallback) : ITypefaceProvider
{
    private readonly Dictionary<FontFace, SKTypeface> typefaces = TextFaces
        .All.Where(face => face.Family == family)
        .ToDictionary(face => face, face => SKTypeface.FromData(SKData.CreateCopy(face.TrueType.Span)));

    /// <inheritdoc />
    public SKTypeface? FromFamilyName(
        string fontFamily,
        SKFontStyleWeight fontWeight,
        SKFontStyleWidth fontWidth,
        SKFontStyleSlant fontStyle
    ) =>
        isFallback || Names(fontFamily).Contains(family, StringComparer.OrdinalIgnoreCase)
            ? typefaces[TextFaces.Find(family, (int)fontWeight, fontStyle != SKFontStyleSlant.Upright)!]
            : null;

    private static IEnumerable<string> Names(string? list) =>
        (list ?? "").Split(',').Select(name => name.Trim(' ', '\'', '"'));
}
