using System.Globalization;
using System.Text;
using Fretloom.Exhibits;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Png;
using Fretloom.Pages.Svg;

namespace Fretloom.Cli.Commands;

/// <summary>Writes the pictures of an exhibit to files; the kind follows the ending of the name.</summary>
internal static class PictureFiles
{
    private static readonly Dictionary<string, Func<Picture, byte[]>> Writers = new(StringComparer.OrdinalIgnoreCase)
    {
        [".svg"] = picture => Encoding.UTF8.GetBytes(Svg(picture)),
        [".png"] = picture => SvgRasteriser.ToPng(Svg(picture)),
    };

    /// <summary>What is wrong with the name of a file; null when it is of a kind we write.</summary>
    public static string? WhyNot(string path) =>
        Writers.ContainsKey(Path.GetExtension(path)) ? null : $"The file's name must end in .svg or .png: '{path}'.";

    /// <summary>Writes one file, or several with a number before the ending.</summary>
    /// <param name="exhibit">What the pictures show.</param>
    /// <param name="path">The file; its kind is known.</param>
    /// <param name="names">Takes the names of the files, in order.</param>
    /// <returns>Why nothing was written, or null.</returns>
    public static string? Write(Exhibit exhibit, string path, List<string> names)
    {
        var write = Writers[Path.GetExtension(path)];
        var pictures = PicturePlan.For(exhibit);
        if (pictures.Count == 0)
        {
            return $"There is nothing to draw: {exhibit.Sentence}";
        }

        if (FileProblem.WhyNot(path) is { } misnamed)
        {
            return misnamed;
        }

        try
        {
            names.AddRange(pictures.Select((_, at) => pictures.Count == 1 ? path : Numbered(path, at + 1)));
            using var files = new StagedFiles(Path.GetDirectoryName(Path.GetFullPath(path))!);
            foreach (var (name, picture) in names.Zip(pictures))
            {
                files.Add(Path.GetFileName(name), write(picture));
            }

            files.Publish();
            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return FileProblem.Words(path, problem);
        }
    }

    private static string Svg(Picture picture) => SvgWriter.Write(picture.Drawing, SvgTheme.Print);

    private static string Numbered(string path, int number) =>
        Path.ChangeExtension(path, null)
        + "-"
        + number.ToString(CultureInfo.InvariantCulture)
        + Path.GetExtension(path);
}
