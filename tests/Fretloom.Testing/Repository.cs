namespace Fretloom.Testing;

/// <summary>Places in the source tree that tests read, such as check tables and approved files.</summary>
public static class Repository
{
    /// <summary>The folder that holds <c>Fretloom.slnx</c>, found upward from the test's own folder.</summary>
    /// <exception cref="DirectoryNotFoundException">The tests run outside the source tree.</exception>
    public static string Root { get; } = Find();

    /// <summary>A path below <see cref="Root"/>.</summary>
    public static string PathTo(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string Find()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "Fretloom.slnx")))
            {
                return at.FullName;
            }
        }

        throw new DirectoryNotFoundException($"No Fretloom.slnx above {AppContext.BaseDirectory}");
    }
}
