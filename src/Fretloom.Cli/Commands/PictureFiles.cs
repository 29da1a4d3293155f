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

    /// <summary>Writes one file, or several with a number before the ending, and prints their names.</summary>
    /// <returns>The <see cref="ExitCode"/>.</returns>
    public static int Write(Exhibit exhibit, string path, Terminal terminal)
    {
        if (!Writers.TryGetValue(Path.GetExtension(path), out var write))
        {
            terminal.Error.WriteLine($"The file's name must end in {string.Join(" or ", Writers.Keys)}: {path}");
            return ExitCode.Misused;
        }

        var pictures = PicturePlan.For(exhibit);
        if (pictures.Count == 0)
        {
            terminal.Error.WriteLine($"There is nothing to draw: {exhibit.Sentence}");
            return ExitCode.Misused;
        }

        try
        {
            using var files = new StagedFiles(Path.GetDirectoryName(Path.GetFullPath(path))!);
            var names = pictures.Select((_, at) => pictures.Count == 1 ? path : Numbered(path, at + 1)).ToList();
            foreach (var (name, picture) in names.Zip(pictures))
            {
                files.Add(Path.GetFileName(name), write(picture));
            }

            files.Publish();
            names.ForEach(terminal.Output.WriteLine);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"'{path}' cannot be written: {problem.Message}");
            return ExitCode.Misused;
        }

        return ExitCode.Done;
    }

    private static string Svg(Picture picture) => SvgWriter.Write(picture.Drawing, SvgTheme.Print);

    private static string Numbered(string path, int number) =>
        Path.ChangeExtension(path, null)
        + "-"
        + number.ToString(CultureInfo.InvariantCulture)
        + Path.GetExtension(path);
}
