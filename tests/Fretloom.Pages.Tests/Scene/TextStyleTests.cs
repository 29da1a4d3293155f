using Fretloom.Pages.Fonts;
using Fretloom.Pages.Scene;
using SkiaSharp;

namespace Fretloom.Pages.Tests.Scene;

public class TextStyleTests
{
    [Theory]
    [InlineData(Face.Sans, TextFaces.Sans, 400)]
    [InlineData(Face.SansBold, TextFaces.Sans, 700)]
    [InlineData(Face.Serif, TextFaces.Serif, 400)]
    [InlineData(Face.SerifBold, TextFaces.Serif, 600)]
    public void Widths_are_those_of_the_fonts(Face face, string family, int weight)
    {
        using var typeface = TypefaceOf(family, weight);
        using var font = new SKFont(typeface, 1000) { LinearMetrics = true, Subpixel = true };
        for (var character = ' '; character <= '~'; character++)
        {
            var text = character.ToString();
            // Font units are rounded to thousandths.
            Assert.InRange(new TextStyle(face, 1000).WidthOf(text) - font.MeasureText(text), -1.01, 1.01);
        }
    }

    [Fact]
    public void Widths_of_accidentals_are_those_of_the_drawn_face()
    {
        using var typeface = TypefaceOf(TextFaces.Accidentals, 600);
        using var font = new SKFont(typeface, 1000) { LinearMetrics = true, Subpixel = true };
        foreach (var text in (string[])["♭", "♮", "♯", "𝄪", "𝄫"])
        {
            Assert.InRange(new TextStyle(Face.SansBold, 1000).WidthOf(text) - font.MeasureText(text), -1, 1);
        }
    }

    private static SKTypeface TypefaceOf(string family, int weight)
    {
        using var data = SKData.CreateCopy(TextFaces.Find(family, weight)!.TrueType.ToArray());
        return SKTypeface.FromData(data);
    }
}
