using Fretloom.Pages.Fonts;
using Fretloom.Pages.Png;
using SkiaSharp;

namespace Fretloom.Pages.Tests.Png;

public class SvgRasteriserTests
{
    [Theory]
    [InlineData(1, 120, 40)]
    [InlineData(2.5, 300, 100)]
    [InlineData(0.33, 40, 14)]
    public void The_picture_has_the_size_of_the_drawing_times_the_scale(double scale, int width, int height)
    {
        using var picture = Draw(Svg("B"), scale);

        Assert.Equal((width, height), (picture.Width, picture.Height));
    }

    [Theory]
    [InlineData(PngBackground.Paper, 255)]
    [InlineData(PngBackground.Transparent, 0)]
    public void Behind_the_drawing_is_what_was_asked(PngBackground background, byte alpha)
    {
        using var picture = SKBitmap.Decode(SvgRasteriser.ToPng(Svg("B"), 1, background));

        Assert.Equal(alpha, picture.GetPixel(0, 0).Alpha);
        Assert.True(background == PngBackground.Transparent || picture.GetPixel(0, 0) == SKColors.White);
    }

    [Theory]
    [InlineData("'Source Sans 3'", "400", "normal")]
    [InlineData("'Source Sans 3'", "600", "normal")]
    [InlineData("'Source Sans 3'", "700", "normal")]
    [InlineData("'Source Serif 4'", "400", "normal")]
    [InlineData("'Source Serif 4'", "400", "italic")]
    [InlineData("'Source Serif 4', serif", "600", "normal")]
    [InlineData("Nosuch, sans-serif", "400", "normal")]
    public void Text_is_drawn_in_every_face(string family, string weight, string style)
    {
        var attributes = $"font-family=\"{family}\" font-weight=\"{weight}\" font-style=\"{style}\"";

        Assert.InRange(Ink(Svg("Bg", attributes)), Ink(Svg("")) + 100, int.MaxValue);
    }

    [Fact]
    public void Every_cut_looks_its_own_way()
    {
        var cuts = TextFaces
            .All.Where(face => face.Family != TextFaces.Accidentals)
            .Select(face =>
                $"font-family=\"'{face.Family}'\" font-weight=\"{face.Weight}\" font-style=\"{(face.IsItalic ? "italic" : "normal")}\""
            );

        Assert.Distinct(cuts.Select(cut => Convert.ToBase64String(SvgRasteriser.ToPng(Svg("Rg", cut)))));
    }

    [Theory]
    [InlineData("400")]
    [InlineData("700")]
    public void Accidentals_are_drawn_and_differ_from_each_other_and_from_the_box_of_an_unknown_character(string weight)
    {
        string[] texts = ["♭", "♮", "♯", "𝄫", "𝄪", "\uE123", ""];

        Assert.Distinct(texts.Select(text => Ink(Svg(text, $"font-weight=\"{weight}\""))));
    }

    [Fact]
    public void An_accidental_stands_right_after_its_letter_and_does_not_swallow_what_follows()
    {
        Assert.InRange(Right("B♭"), Right("B") + 8, Right("B") + 24);
        Assert.InRange(Right("B♭m"), Right("B♭") + 10, Right("B♭") + 60);
    }

    [Fact]
    public void Text_that_is_centred_stays_centred_with_accidentals()
    {
        using var picture = Draw(Svg("♭3♯", "text-anchor=\"middle\" font-weight=\"700\"", x: 60), 4);
        var columns = Columns(picture);

        Assert.InRange((columns.First() + columns.Last()) / 2.0, 240 - 12, 240 + 12);
    }

    [Fact]
    public void The_same_drawing_gives_the_same_bytes_on_every_thread()
    {
        var expected = SvgRasteriser.ToPng(Svg("F♯m7"));

        var made = new byte[16][];
        Parallel.For(0, made.Length, i => made[i] = SvgRasteriser.ToPng(Svg("F♯m7")));

        Assert.All(made, picture => Assert.Equal(expected, picture));
    }

    [Theory]
    [InlineData("")]
    [InlineData("not a drawing")]
    [InlineData("<svg")]
    [InlineData("<p>text</p>")]
    public void What_is_no_drawing_is_refused(string text) =>
        Assert.Throws<FormatException>(() => SvgRasteriser.ToPng(text));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_scale_is_above_zero(double scale) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SvgRasteriser.ToPng(Svg("B"), scale));

    private static string Svg(string text, string attributes = "", int x = 5) =>
        $"""
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120 40" width="120" height="40" font-family="'Source Sans 3'">
              <text x="{x}" y="30" font-size="28" {attributes}>{text}</text>
            </svg>
            """;

    private static SKBitmap Draw(string svg, double scale) => SKBitmap.Decode(SvgRasteriser.ToPng(svg, scale));

    // How dark the picture is, all in all.
    private static int Ink(string svg)
    {
        using var picture = Draw(svg, 2);
        return picture.Pixels.Sum(pixel => 255 - pixel.Green) / 255;
    }

    private static int Right(string text)
    {
        using var picture = Draw(Svg(text), 2);
        return Columns(picture).Last();
    }

    private static List<int> Columns(SKBitmap picture) =>
        [
            .. Enumerable
                .Range(0, picture.Width)
                .Where(x => Enumerable.Range(0, picture.Height).Any(y => picture.GetPixel(x, y).Green < 128)),
        ];
}
