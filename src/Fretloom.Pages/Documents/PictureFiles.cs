using System.Globalization;
using System.Text;
using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Png;
using Fretloom.Pages.Svg;

namespace Fretloom.Pages.Documents;

/// <summary>The pictures of an exhibit as files; the kind follows the ending of the name.</summary>
public static class PictureFiles
{
    private delegate byte[] Writer(Picture picture, PngBackground? ground);

    private static readonly Dictionary<string, Writer> Writers = new(StringComparer.OrdinalIgnoreCase)
    {
        [".svg"] = (picture, ground) => Encoding.UTF8.GetBytes(Svg(picture, ground ?? PngBackground.Transparent)),
        [".png"] = (picture, ground) =>
            SvgRasteriser.ToPng(Svg(picture, PngBackground.Transparent), background: ground ?? PngBackground.Paper),
    };

    /// <summary>What is wrong with the name of a file; null when it is of a kind we write.</summary>
    public static string? WhyNot(string path) =>
        Writers.ContainsKey(Path.GetExtension(path)) ? null : $"The file's name must end in .svg or .png: '{path}'.";

    /// <summary>Draws the pictures.</summary>
    /// <param name="exhibit">What they show.</param>
    /// <param name="name">The name of the file, whose kind is known; several get a number before the ending.</param>
    /// <param name="ground">What lies behind them; null for nothing in SVG and paper in PNG.</param>
    /// <returns>The files in order, whose content is made when it is asked for; empty when there is nothing to draw.</returns>
    public static IReadOnlyList<(string Name, Func<byte[]> Content)> Of(
        Exhibit exhibit,
        string name,
        PngBackground? ground = null
    )
    {
        var write = Writers[Path.GetExtension(name)];
        var pictures = PicturePlan.For(exhibit);
        return
        [
            .. pictures.Select<Picture, (string, Func<byte[]>)>(
                (picture, at) => (pictures.Count == 1 ? name : Numbered(name, at + 1), () => write(picture, ground))
            ),
        ];
    }

    private static string Svg(Picture picture, PngBackground ground)
    {
        var svg = SvgWriter.Write(picture.Drawing, SvgTheme.Print);
        const string AfterWords = "</desc>\n";
        return ground == PngBackground.Transparent
            ? svg
            : svg.Insert(
                svg.IndexOf(AfterWords, StringComparison.Ordinal) + AfterWords.Length,
                "  <rect width=\"100%\" height=\"100%\" fill=\"#FFFFFF\"/>\n"
            );
    }

    private static string Numbered(string path, int number) =>
        Path.ChangeExtension(path, null)
        + "-"
        + number.ToString(CultureInfo.InvariantCulture)
        + Path.GetExtension(path);
}
