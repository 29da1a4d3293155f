namespace Fretloom.Studio.Tests;

public sealed class DemoLessonsTests : IDisposable
{
    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("fretloom-demo-");

    public void Dispose() => _root.Delete(recursive: true);

    [Fact]
    public void They_are_copied_once_and_never_again()
    {
        var demo = _root.CreateSubdirectory("demo").FullName;
        File.WriteAllText(Path.Combine(demo, "one.md"), "1");
        File.WriteAllText(Path.Combine(demo, "two.md"), "2");
        var folder = Path.Combine(_root.FullName, "data", "fretloom", "lessons");

        DemoLessons.CopyOnce(demo, folder);
        File.WriteAllText(Path.Combine(folder, "one.md"), "mine");
        File.Delete(Path.Combine(folder, "two.md"));
        DemoLessons.CopyOnce(demo, folder);

        var file = Assert.Single(Directory.GetFileSystemEntries(folder));
        Assert.Equal("mine", File.ReadAllText(file));
        Assert.Single(Directory.GetFileSystemEntries(Path.GetDirectoryName(folder)!));
    }

    [Fact]
    public void The_folder_is_among_the_data_of_the_user()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Unix paths");

        Assert.Equal("/data/fretloom/lessons", DemoLessons.UsersFolder("/data", "/home/tess"));
        Assert.Equal("/home/tess/.local/share/fretloom/lessons", DemoLessons.UsersFolder("data", "/home/tess"));
        Assert.Equal("/home/tess/.local/share/fretloom/lessons", DemoLessons.UsersFolder(null, "/home/tess"));
        Assert.Null(DemoLessons.UsersFolder(null, ""));
    }
}
