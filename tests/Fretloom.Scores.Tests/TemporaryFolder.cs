namespace Fretloom.Scores.Tests;

/// <summary>A folder that is gone when the test ends.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fretloom-scores-");

    public string PathTo(string name) => Path.Combine(_folder.FullName, name);

    public void Dispose() => _folder.Delete(recursive: true);
}
