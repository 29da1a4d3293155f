namespace Fretloom.Studio;

/// <summary>The user's own lessons where no other folder is named: at first a copy of the demo lessons.</summary>
public static class DemoLessons
{
    /// <summary>The folder, in the user's data (XDG Base Directory Specification 0.8, from memory; on Windows the folder of local data).</summary>
    /// <returns>Null where the user has no such folder.</returns>
    public static string? UsersFolder() =>
        UsersFolder(
            Environment.GetEnvironmentVariable("XDG_DATA_HOME"),
            Environment.GetFolderPath(
                OperatingSystem.IsWindows()
                    ? Environment.SpecialFolder.LocalApplicationData
                    : Environment.SpecialFolder.UserProfile
            )
        );

    /// <summary>Makes the folder with a copy of the demo lessons; one that is there is left as it is.</summary>
    /// <param name="demo">The demo lessons.</param>
    /// <param name="folder">The folder.</param>
    /// <exception cref="IOException">It cannot be made.</exception>
    /// <exception cref="UnauthorizedAccessException">This user may not make it.</exception>
    public static void CopyOnce(string demo, string folder)
    {
        if (Directory.Exists(folder))
        {
            return;
        }

        var above = Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(folder))!);
        var draft = Path.Combine(above.FullName, Path.GetRandomFileName());
        Directory.CreateDirectory(draft);
        try
        {
            foreach (var lesson in Directory.EnumerateFiles(demo, "*.md"))
            {
                File.Copy(lesson, Path.Combine(draft, Path.GetFileName(lesson)));
            }

            Directory.Move(draft, folder);
        }
        catch (IOException) when (Directory.Exists(folder))
        {
            // Another studio made it meanwhile.
            Directory.Delete(draft, recursive: true);
        }
    }

    /// <summary>The folder, by what the system says; a path that is not absolute counts as none.</summary>
    internal static string? UsersFolder(string? dataHome, string home) =>
        Path.IsPathFullyQualified(dataHome ?? "") ? Path.Combine(dataHome!, "fretloom", "lessons")
        : !Path.IsPathFullyQualified(home) ? null
        : OperatingSystem.IsWindows() ? Path.Combine(home, "fretloom", "lessons")
        : Path.Combine(home, ".local", "share", "fretloom", "lessons");
}
