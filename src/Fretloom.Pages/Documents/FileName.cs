using System.Text;

namespace Fretloom.Pages.Documents;

/// <summary>Names files after what is in them.</summary>
public static class FileName
{
    private const int Most = 80;

    /// <summary>A title in small ASCII letters, digits and hyphens, at most 80: <c>The triads in B♭ major</c> gives <c>the-triads-in-b-flat-major</c>.</summary>
    /// <param name="title">The title.</param>
    /// <returns>The name without ending; <c>sheet</c> where nothing is left of the title.</returns>
    public static string Of(string title)
    {
        ArgumentNullException.ThrowIfNull(title);
        var spelled = title
            .Replace("♯", " sharp", StringComparison.Ordinal)
            .Replace("#", " sharp", StringComparison.Ordinal)
            .Replace("♭", " flat", StringComparison.Ordinal);
        var name = new StringBuilder();
        foreach (var letter in spelled)
        {
            if (char.IsAsciiLetterOrDigit(letter))
            {
                name.Append(char.ToLowerInvariant(letter));
            }
            else if (name.Length > 0 && name[^1] != '-')
            {
                name.Append('-');
            }
        }

        var cut = name.ToString(0, Math.Min(Most, name.Length)).Trim('-');
        return cut.Length == 0 ? "sheet" : cut;
    }
}
