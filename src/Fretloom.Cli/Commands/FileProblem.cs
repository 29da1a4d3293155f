namespace Fretloom.Cli.Commands;

/// <summary>What to say of a file that cannot be written.</summary>
internal static class FileProblem
{
    /// <summary>The problem with a file's name, before anything is worked out; null when there is none.</summary>
    /// <remarks>A folder is not made for one file: a name that is misspelled would be taken for a new one.</remarks>
    public static string? WhyNot(string path)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        return Directory.Exists(path) ? $"'{path}' cannot be written: it is a folder."
            : Directory.Exists(folder) ? null
            : $"'{path}' cannot be written: there is no folder '{Path.GetDirectoryName(path)}'. Make it first, or mend its name.";
    }

    /// <summary>What went wrong, in words that name no other file than the one that was asked for.</summary>
    public static string Words(string path, Exception problem)
    {
        // A message of the system may name what is written on the way.
        var said = problem.Message.Split(" : '")[0].TrimEnd('.');
        var reason =
            problem is UnauthorizedAccessException || said.Contains("denied", StringComparison.OrdinalIgnoreCase)
                ? "this user may not write there"
            : said.Contains(Path.GetDirectoryName(Path.GetFullPath(path))!, StringComparison.Ordinal)
                ? "its folder takes no files"
            : char.ToLowerInvariant(said[0]) + said[1..];
        return $"'{path}' cannot be written: {reason}.";
    }
}
