using System.Globalization;
using System.Text;

namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>Names for lesson files.</summary>
public static class FileNames
{
    private const string Ending = ".md";
    private const int Longest = 60;

    /// <summary>A name from a title: small letters, figures and hyphens, <c>the-cloth-of-a-key.md</c>.</summary>
    public static string From(string title)
    {
        var name = new StringBuilder();
        foreach (var letter in title.Trim().ToLowerInvariant())
        {
            if (char.IsLetterOrDigit(letter))
            {
                name.Append(letter);
            }
            else if (name.Length > 0 && name[^1] != '-' && letter is not ('\'' or '’'))
            {
                name.Append('-');
            }
        }

        var stem = name.ToString().Trim('-');
        stem = stem.Length > Longest ? stem[..Longest].TrimEnd('-') : stem;
        return (
                stem.Length == 0 ? "lesson"
                : IsDevice(stem) ? stem + "-lesson"
                : stem
            ) + Ending;
    }

    // Names that Windows keeps for devices, whatever ending follows ("Naming Files, Paths, and Namespaces", learn.microsoft.com; from memory).
    private static bool IsDevice(string stem) =>
        stem is "con" or "prn" or "aux" or "nul"
        || (
            stem.Length == 4
            && (stem.StartsWith("com", StringComparison.Ordinal) || stem.StartsWith("lpt", StringComparison.Ordinal))
            && stem[3] is >= '0' and <= '9'
        );

    /// <summary>The name that another file of the same title gets: <c>x-2.md</c>, <c>x-3.md</c>. A figure that is part of the title stays: <c>week-3-2.md</c>.</summary>
    /// <param name="name">The name that is taken.</param>
    /// <param name="number">Which file of that title, from 2.</param>
    public static string Numbered(string name, int number)
    {
        var stem = name.EndsWith(Ending, StringComparison.Ordinal) ? name[..^Ending.Length] : name;
        return string.Create(CultureInfo.InvariantCulture, $"{stem}-{number}{Ending}");
    }
}
