using Fretloom.Testing;

namespace Fretloom.Cli.Tests;

/// <summary>Builds as processes of their own, which share the folder of engravings.</summary>
public sealed class CacheTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("fretloom-").FullName;
    private readonly string _lesson;

    public CacheTests()
    {
        _lesson = Path.Combine(_root, "lesson.md");
        var blocks = new[] { "the triads", "the scale, up and down", "C, F and G7" };
        File.WriteAllText(
            _lesson,
            "---\ntitle: T\nkey: C major\n---\n\n" + string.Concat(blocks.Select(block => $"```play\n{block}\n```\n\n"))
        );
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public async Task Builds_at_once_share_a_folder_that_holds_only_what_is_whole()
    {
        var caches = Path.Combine(_root, "caches");
        var alone = await BuildAsync("alone", Path.Combine(_root, "other"));
        var kept = Kept(Path.Combine(_root, "other"));

        var builds = await Task.WhenAll(Enumerable.Range(0, 3).Select(at => BuildAsync($"out-{at}", caches)));

        Assert.All(builds, build => Assert.Equal(alone, build));
        Assert.Equal(kept, Kept(caches));
    }

    [Fact]
    public async Task A_build_that_is_killed_leaves_nothing_that_another_would_show()
    {
        var caches = Path.Combine(_root, "caches");
        var whole = await BuildAsync("alone", Path.Combine(_root, "other"));
        using (var build = Start("killed", caches))
        {
            var kept = Path.Combine(caches, "fretloom", "engraving");
            await build.WaitUntilAsync(() => Directory.Exists(kept) && Directory.GetFiles(kept).Length >= 2);
            build.Kill();
            await build.ExitAsync();
        }

        Assert.Equal(whole, await BuildAsync("again", caches));
    }

    [Fact]
    public async Task Files_that_were_damaged_are_never_shown()
    {
        var caches = Path.Combine(_root, "caches");
        var fresh = await BuildAsync("fresh", caches);
        var kept = Kept(caches);
        foreach (var (name, at) in kept.Keys.Select((name, at) => (name, at)))
        {
            var content = kept[name].ToArray();
            content[content.Length / 2] ^= 4;
            File.WriteAllBytes(
                Path.Combine(caches, "fretloom", "engraving", name),
                at % 2 == 0 ? content : content[..^9]
            );
        }

        Assert.Equal(fresh, await BuildAsync("again", caches));
        Assert.Equal(kept, Kept(caches));
    }

    [Fact]
    public async Task Without_a_folder_that_can_be_written_the_files_are_made_all_the_same()
    {
        var usual = await BuildAsync("usual", Path.Combine(_root, "caches"));

        Assert.Equal(usual, await BuildAsync("other", _lesson));
    }

    [Fact]
    public async Task A_path_that_is_not_absolute_is_passed_over()
    {
        var folder = Directory.CreateDirectory(Path.Combine(_root, "here")).FullName;

        await BuildAsync("out", "caches", folder);

        Assert.Empty(Directory.GetFileSystemEntries(folder));
        Assert.NotEmpty(Kept(Path.Combine(_root, ".cache")));
    }

    // The files made, by name.
    private async Task<SortedDictionary<string, byte[]>> BuildAsync(string name, string caches, string? folder = null)
    {
        using var build = Start(name, caches, folder);
        var ended = await build.ExitAsync();

        Assert.Equal((0, ""), (ended.ExitCode, ended.Error));
        return Content(Path.Combine(_root, name));
    }

    private StartedProgram Start(string name, string caches, string? folder = null) =>
        new(
            Path.Combine(AppContext.BaseDirectory, "Fretloom.Cli"),
            ["build", _lesson, "--format", "html,svg", "--out", Path.Combine(_root, name)],
            folder,
            new Dictionary<string, string> { ["XDG_CACHE_HOME"] = caches, ["HOME"] = _root }
        );

    private static SortedDictionary<string, byte[]> Kept(string caches) =>
        Content(Path.Combine(caches, "fretloom", "engraving"));

    private static SortedDictionary<string, byte[]> Content(string folder) =>
        Directory.Exists(folder)
            ? new(Directory.GetFiles(folder).ToDictionary(path => Path.GetFileName(path), File.ReadAllBytes))
            : [];
}
