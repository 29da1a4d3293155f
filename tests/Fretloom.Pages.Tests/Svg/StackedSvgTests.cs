using System.Xml.Linq;
using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Png;
using Fretloom.Pages.Scene;
using Fretloom.Pages.Svg;

namespace Fretloom.Pages.Tests.Svg;

public class StackedSvgTests
{
    private static readonly Drawing[] Drawings =
    [
        Square(60, Tone.Ink),
        Square(30, Tone.Line),
        .. PicturePlan
            .For(ShowQuestion.Answer("the triads, on strings 4-1", ShowDefaults.Standard).Value!)
            .Select(picture => picture.Drawing),
    ];

    private static Drawing Square(double side, Tone tone) =>
        new(side, side, "A square", "It is full.", [new Node.Rect(0, 0, side, side, tone)]);

    [Fact]
    public void One_drawing_is_written_as_it_is() =>
        Assert.Equal(
            SvgWriter.Write(Drawings[0], SvgTheme.Print),
            StackedSvg.Write(Drawings[..1], SvgTheme.Print, "One")
        );

    [Fact]
    public void Drawings_stand_one_below_the_other_each_of_its_own_size_and_every_id_once()
    {
        var stack = XDocument.Parse(StackedSvg.Write(Drawings, SvgTheme.Print, "The triads & more"));

        Assert.Equal("The triads & more", stack.Root!.Elements().First().Value);
        var inner = stack.Root.Elements().Skip(1).ToList();
        Assert.Equal(Drawings.Select(one => Points(one.Width)), inner.Select(one => (string?)one.Attribute("width")));
        var tops = Drawings.Select((_, at) => Drawings[..at].Sum(one => one.Height + 12));
        Assert.Equal(tops.Select(Points), inner.Select(one => (string?)one.Attribute("y")));
        var ids = stack.Descendants().Attributes("id").Select(id => id.Value).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
    }

    /// <summary>The sizes hold for a reader of SVG that is not ours: what is painted is as high as the drawings and the gaps between them.</summary>
    [Fact]
    public void What_is_painted_has_the_sizes_of_the_drawings()
    {
        var squares = Drawings[..2];
        var png = SvgRasteriser.ToPng(
            StackedSvg.Write(squares, SvgTheme.Print, "Two"),
            background: PngBackground.Paper
        );
        using var image = SkiaSharp.SKBitmap.Decode(png);

        var perPoint = image.Width / 60.0;
        Assert.Equal(102, image.Height / perPoint, 0.5);
        Assert.True(IsInked(59, 59));
        Assert.False(IsInked(5, 66));
        Assert.True(IsInked(1, 73));
        Assert.True(IsInked(29, 101));
        Assert.False(IsInked(32, 90));

        bool IsInked(double x, double y) => image.GetPixel((int)(x * perPoint), (int)(y * perPoint)).Red < 200;
    }

    private static string Points(double value) =>
        Math.Round(value, 2).ToString(System.Globalization.CultureInfo.InvariantCulture) + "pt";
}
