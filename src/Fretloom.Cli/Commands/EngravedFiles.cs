using System.Globalization;
using System.Text;
using Fretloom.Exercises;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pdf;
using Fretloom.Scores.Engraving;

namespace Fretloom.Cli.Commands;

/// <summary>An exercise as it is printed, in a file of its own.</summary>
internal static class EngravedFiles
{
    // The text of an A4 page.
    private const double WidthMm = 170;

    /// <summary>One picture: the systems one below the other.</summary>
    /// <exception cref="IOException">The engraver's file is missing, or it could not set the exercise.</exception>
    public static byte[] Svg(Exercise exercise)
    {
        using var engraver = new Engraver(EngravingCache.OfUser());
        var systems = engraver.Engrave(exercise, WidthMm);
        if (systems.Warning is not null)
        {
            throw new IOException(
                "it could not be engraved; a .txt file holds its tablature, and a .pdf file says why"
            );
        }

        var (height, body) = (0.0, new StringBuilder());
        foreach (var system in systems.Systems)
        {
            body.Append(CultureInfo.InvariantCulture, $"<svg y=\"{height:0.##}mm\"{system.Svg["<svg".Length..]}\n");
            height += system.HeightMm;
        }

        return Encoding.UTF8.GetBytes(
            string.Create(
                CultureInfo.InvariantCulture,
                $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{WidthMm}mm\" height=\"{height:0.##}mm\">\n{body}</svg>\n"
            )
        );
    }

    /// <summary>A sheet with nothing else on it.</summary>
    /// <exception cref="IOException">The typesetter's files are missing.</exception>
    /// <exception cref="TypstException">The typesetter cannot be started.</exception>
    public static byte[] Pdf(Exercise exercise, string? caption, Action<string> warn)
    {
        using var typst = new TypstCompiler();
        using var engraver = new Engraver(EngravingCache.OfUser());
        return PdfDocument.Of(exercise, typst, engraver, caption, warn);
    }
}
