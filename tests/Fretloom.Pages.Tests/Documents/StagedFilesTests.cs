using Fretloom.Pages.Documents;

namespace Fretloom.Pages.Tests.Documents;

public sealed class StagedFilesTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("fretloom-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    private string[] Names() => [.. Directory.GetFileSystemEntries(_root).Select(entry => Path.GetFileName(entry))];

    [Fact]
    public void Nothing_is_seen_before_all_is_published()
    {
        using (var files = new StagedFiles(_root))
        {
            files.Add("a.txt", [1]);
            Assert.False(File.Exists(Path.Combine(_root, "a.txt")));
            files.Publish();
        }

        Assert.Equal(["a.txt"], Names());
    }

    [Fact]
    public void What_a_killed_program_left_is_removed_by_the_next()
    {
        var left = Directory.CreateDirectory(Path.Combine(_root, ".fretloom-left")).FullName;
        File.WriteAllText(Path.Combine(left, "lock"), "");
        File.WriteAllText(Path.Combine(left, "half.pdf"), "half");

        new StagedFiles(_root).Dispose();

        Assert.Empty(Names());
    }

    [Fact]
    public void What_another_is_still_writing_stays()
    {
        using var slow = new StagedFiles(_root);
        slow.Add("slow.txt", [1]);

        using (var quick = new StagedFiles(_root))
        {
            quick.Add("quick.txt", [2]);
            quick.Publish();
        }

        slow.Publish();
        Assert.True(File.Exists(Path.Combine(_root, "slow.txt")));
        Assert.True(File.Exists(Path.Combine(_root, "quick.txt")));
    }
}
