using Fretloom.Pages.Fonts;
using SkiaSharp;
using Svg.Skia;

namespace Fretloom.Pages.Png;

/// <summary>What lies behind a picture.</summary>
public enum PngBackground
{
    /// <summary>Nothing.</summary>
    Transparent,

    /// <summary>White, as paper is in print.</summary>
    Paper,
}

/// <summary>Turns SVG pictures into PNG, with the faces of <see cref="TextFaces"/> only, so that every machine gives the same picture.</summary>
/// <remarks>
/// Safe to use from several threads. A family name with a digit needs quotes in SVG:
/// <c>font-family="'Source Sans 3'"</c>. Text in unknown families is drawn in the sans face.
/// </remarks>
public static class SvgRasteriser
{
    private static readonly Lazy<FaceProvider[]> Providers = new(() =>
        [
            new FaceProvider(TextFaces.Serif, isFallback: false),
            new FaceProvider(TextFaces.Sans, isFallback: false),
            new FaceProvider(TextFaces.Accidentals, isFallback: false),
            new FaceProvider(TextFaces.Sans, isFallback: true),
        ]
    );

    /// <summary>Draws a picture.</summary>
    /// <param name="svg">The SVG document. Its colours are plain: no CSS variables.</param>
    /// <param name="scale">Pixels for one user unit, above 0.</param>
    /// <param name="background">What lies behind it.</param>
    /// <returns>The PNG file, 8 bits a channel; the same bytes for the same input.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The scale is not a number above 0.</exception>
    /// <exception cref="FormatException">The text is not an SVG document, or has no size.</exception>
    public static byte[] ToPng(string svg, double scale = 2, PngBackground background = PngBackground.Paper)
    {
        if (!(scale > 0 && double.IsFinite(scale)))
        {
            throw new ArgumentOutOfRangeException(nameof(scale), scale, "A scale is above 0.");
        }

        using var drawing = new SKSvg();
        drawing.Settings.TypefaceProviders = [.. Providers.Value];
        using var picture = Load(drawing, svg);
        var size = new SKImageInfo(
            (int)Math.Ceiling(picture.CullRect.Width * scale),
            (int)Math.Ceiling(picture.CullRect.Height * scale),
            SKColorType.Rgba8888,
            SKAlphaType.Premul
        );
        using var surface =
            SKSurface.Create(size)
            ?? throw new FormatException($"A picture of {size.Width} by {size.Height} pixels cannot be drawn.");
        surface.Canvas.Clear(background == PngBackground.Paper ? SKColors.White : SKColors.Transparent);
        surface.Canvas.Scale((float)scale);
        surface.Canvas.Translate(-picture.CullRect.Left, -picture.CullRect.Top);
        surface.Canvas.DrawPicture(picture);
        using var image = surface.Snapshot();
        using var png = image.Encode(SKEncodedImageFormat.Png, 100);
        return png.ToArray();
    }

    private static SKPicture Load(SKSvg drawing, string svg)
    {
        SKPicture? picture;
        try
        {
            picture = drawing.FromSvg(AccidentalSpans.Mark(svg));
        }
        catch (System.Xml.XmlException error)
        {
            throw new FormatException("This is not an SVG document: " + error.Message, error);
        }

        return picture is { CullRect: { Width: > 0, Height: > 0 } }
            ? picture
            : throw new FormatException("The SVG document has no size.");
    }
}
