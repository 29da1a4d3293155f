using System.Buffers.Binary;
using Fretloom.Pages.Fonts;
using SkiaSharp;

namespace Fretloom.Pages.Tests.Fonts;

public class TextFacesTests
{
    private const string Accidentals = "♭♮♯𝄫𝄪";

    public static TheoryData<string> Faces => [.. TextFaces.All.Select(face => face.ToString())];

    [Theory]
    [MemberData(nameof(Faces))]
    public void A_face_is_what_it_says(string name)
    {
        var face = TextFaces.All.Single(face => face.ToString() == name);

        using var typeface = Open(face);

        Assert.Equal(face.Family, typeface.FamilyName);
        Assert.Equal(face.Weight, typeface.FontWeight);
        Assert.Equal(face.IsItalic, typeface.IsItalic);
    }

    [Fact]
    public void Text_faces_draw_the_signs_of_chord_names_and_leave_accidentals_to_their_own_face()
    {
        foreach (var face in TextFaces.All)
        {
            using var typeface = Open(face);
            using var font = new SKFont(typeface);
            var isText = face.Family != TextFaces.Accidentals;

            Assert.Equal(isText, font.ContainsGlyphs("Aagé0169 △ø°–’→"));
            Assert.All(Accidentals.EnumerateRunes(), rune => Assert.Equal(!isText, font.ContainsGlyph(rune.Value)));
        }
    }

    [Fact]
    public void The_figures_of_every_text_face_are_equally_wide()
    {
        foreach (var face in TextFaces.All.Where(face => face.Family != TextFaces.Accidentals))
        {
            using var typeface = Open(face);
            using var font = new SKFont(typeface, 1000);

            Assert.Single("0123456789".Select(figure => font.MeasureText(figure.ToString())).Distinct());
        }
    }

    [Fact]
    public void Each_accidental_has_a_drawing_of_its_own_that_is_darker_in_bold()
    {
        var regular = Accidentals.EnumerateRunes().Select(rune => Ink(rune.ToString(), 400)).ToList();
        var bold = Accidentals.EnumerateRunes().Select(rune => Ink(rune.ToString(), 600)).ToList();

        Assert.Equal(5, regular.Distinct().Count());
        Assert.All(regular.Zip(bold), pair => Assert.True(0 < pair.First && pair.First * 1.2 < pair.Second));
    }

    [Fact]
    public void A_drawn_font_adds_up()
    {
        // ISO/IEC 14496-22, 'head' table: the 32-bit words of the whole file add up to 0xB1B0AFBA.
        foreach (var face in TextFaces.All.Where(face => face.Family == TextFaces.Accidentals))
        {
            var font = face.TrueType.Span;
            var sum = 0u;
            for (var i = 0; i < font.Length; i += 4)
            {
                sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(font[i..]));
            }

            Assert.Equal(0xB1B0AFBAu, sum);
            Assert.InRange(font.Length, 1000, 4000);
        }
    }

    [Theory]
    [InlineData(TextFaces.Serif, 400, false, "Source Serif 4 400")]
    [InlineData(TextFaces.Serif, 700, true, "Source Serif 4 600 italic")]
    [InlineData(TextFaces.Sans, 500, false, "Source Sans 3 600")]
    [InlineData(TextFaces.Sans, 650, false, "Source Sans 3 700")]
    [InlineData(TextFaces.Sans, 900, true, "Source Sans 3 700")]
    [InlineData("source serif 4", 100, false, "Source Serif 4 400")]
    [InlineData(TextFaces.Accidentals, 700, true, "Fretloom Accidentals 600")]
    public void The_nearest_cut_is_found(string family, int weight, bool isItalic, string expected) =>
        Assert.Equal(expected, TextFaces.Find(family, weight, isItalic)?.ToString());

    [Fact]
    public void An_unknown_family_is_not_found() => Assert.Null(TextFaces.Find("Nosuch Sans"));

    private static SKTypeface Open(FontFace face) => SKTypeface.FromData(SKData.CreateCopy(face.TrueType.Span));

    // How much of a 100-pixel square a character covers, as the sum of its alpha values.
    private static int Ink(string text, int weight)
    {
        using var typeface = Open(TextFaces.Find(TextFaces.Accidentals, weight)!);
        using var font = new SKFont(typeface, 80);
        using var bitmap = new SKBitmap(100, 100, SKColorType.Alpha8, SKAlphaType.Premul);
        using var canvas = new SKCanvas(bitmap);
        using var paint = new SKPaint();
        canvas.DrawText(text, 10, 80, SKTextAlign.Left, font, paint);
        return bitmap.Bytes.Sum(alpha => alpha);
    }
}
