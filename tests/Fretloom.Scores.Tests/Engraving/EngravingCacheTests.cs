using Fretloom.Exercises;
using Fretloom.Scores.Engraving;

namespace Fretloom.Scores.Tests.Engraving;

public sealed class EngravingCacheTests : IDisposable
{
    private const double A4 = 170;

    private readonly string root = Directory.CreateTempSubdirectory("fretloom-engraving-").FullName;

    private string Folder => Path.Combine(root, "kept");

    private string[] Files => Directory.GetFiles(Folder);

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void What_was_engraved_once_is_read_from_the_folder()
    {
        var exercise = Played.Of("play the triads");
        using var engraver = new Engraver(new EngravingCache(Folder));
        var fresh = engraver.Engrave(exercise, A4);
        var made = File.ReadAllBytes(Assert.Single(Files));

        using var other = new Engraver(new EngravingCache(Folder));
        other.Dispose();

        // An engraver that was given up engraves nothing any more: what it answers with was kept.
        Assert.Equal(fresh, other.Engrave(exercise, A4));
        Assert.Equal(made, File.ReadAllBytes(Assert.Single(Files)));
    }

    [Theory]
    [InlineData("play the triads", A4 + 1)]
    [InlineData("play the triads, at 73", A4)]
    [InlineData("play the triads, in D major", A4)]
    public void What_is_engraved_from_something_else_is_another_file(string sentence, double width)
    {
        using var engraver = new Engraver(new EngravingCache(Folder));
        engraver.Engrave(Played.Of("play the triads"), A4);
        engraver.Engrave(Played.Of(sentence), width);

        Assert.Equal(2, Files.Length);
    }

    [Fact]
    public void Another_build_of_the_engraver_is_asked_anew()
    {
        var exercise = Played.Of("play the triads");
        var patched = Path.Combine(root, "engraver.js");
        File.WriteAllText(patched, File.ReadAllText(EngraverEngine.Library) + "\n// patched\n");
        using (var engraver = new Engraver(new EngravingCache(Folder)))
        {
            engraver.Engrave(exercise, A4);
        }

        using var other = new Engraver(new EngravingCache(Folder), patched);
        other.Engrave(exercise, A4);

        Assert.Equal(2, Files.Length);
    }

    [Fact]
    public void What_is_cut_off_or_changed_anywhere_is_as_good_as_none()
    {
        var cache = new EngravingCache(Folder);
        EngravedSystem[] systems = [new("<svg>¾</svg>", 170, 30.25, 1, 4), new("<svg/>", 85.5, 31, 5, 6)];
        cache.Write("name", systems);
        var path = Assert.Single(Files);
        var whole = File.ReadAllBytes(path);
        Assert.Equal(systems, cache.Read("name"));

        for (var at = 0; at < whole.Length; at++)
        {
            File.WriteAllBytes(path, whole[..at]);
            Assert.Null(cache.Read("name"));
            var changed = whole.ToArray();
            changed[at] ^= 1;
            File.WriteAllBytes(path, changed);
            Assert.Null(cache.Read("name"));
        }

        File.WriteAllBytes(path, [.. whole, 0]);
        Assert.Null(cache.Read("name"));
        cache.Write("name", systems);
        Assert.Equal(systems, cache.Read("name"));
        Assert.Equal(whole, File.ReadAllBytes(Assert.Single(Files)));
    }

    [Fact]
    public void A_damaged_file_is_engraved_again_and_mended()
    {
        var exercise = Played.Of("play the triads");
        using var engraver = new Engraver(new EngravingCache(Folder));
        var fresh = engraver.Engrave(exercise, A4);
        var path = Assert.Single(Files);
        var whole = File.ReadAllBytes(path);
        File.WriteAllBytes(path, whole[..(whole.Length / 2)]);

        Assert.Equal(fresh, engraver.Engrave(exercise, A4));
        Assert.Equal(whole, File.ReadAllBytes(Assert.Single(Files)));
    }

    [Fact]
    public void What_was_not_used_for_longest_goes_when_the_folder_is_full()
    {
        var clock = new HandClock();
        EngravedSystem[] systems = [new(new string('x', 1000), 170, 30, 1, 4)];
        var generous = new EngravingCache(Folder, clock);
        foreach (var name in new[] { "one", "two", "three", "four" })
        {
            generous.Write(name, systems);
            clock.Tick();
        }

        Assert.NotNull(generous.Read("one"));
        clock.Tick();
        var size = new FileInfo(Files[0]).Length;
        new EngravingCache(Folder, clock) { MostBytes = 3 * size }.Write("five", systems);

        Assert.Equal(["five", "four", "one"], Files.Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_long_run_looks_after_the_folder_too()
    {
        var clock = new HandClock();
        EngravedSystem[] systems = [new(new string('x', 1000), 170, 30, 1, 4)];
        var cache = new EngravingCache(Folder, clock) { MostBytes = 20_000 };
        for (var at = 0; at < 1000; at++)
        {
            cache.Write($"{at}", systems);
            clock.Tick();
            Assert.InRange(Files.Length, 1, 20 + 100);
        }

        Assert.NotNull(cache.Read("999"));
        Assert.Null(cache.Read("0"));
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_done_without()
    {
        File.WriteAllText(Folder, "a file stands in its place");
        var exercise = Played.Of("play the triads");
        using var engraver = new Engraver(new EngravingCache(Folder));
        using var without = new Engraver();

        Assert.Equal(without.Engrave(exercise, A4), engraver.Engrave(exercise, A4));
        Assert.Equal("a file stands in its place", File.ReadAllText(Folder));
    }

    [Fact]
    public void A_name_that_is_taken_by_a_folder_is_done_without()
    {
        EngravedSystem[] systems = [new("<svg/>", 170, 30, 1, 4)];
        var cache = new EngravingCache(Folder);
        Directory.CreateDirectory(Path.Combine(Folder, "name"));

        cache.Write("name", systems);

        Assert.Null(cache.Read("name"));
        Assert.Empty(Files);
    }

    [Fact]
    public void The_folder_is_made_for_the_user_alone()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("permissions are those of Unix");
            return;
        }

        new EngravingCache(Folder).Write("name", [new("<svg/>", 170, 30, 1, 4)]);

        Assert.Equal(
            UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute,
            File.GetUnixFileMode(Folder)
        );
    }

    /// <summary>XDG Base Directory Specification 0.8, from memory.</summary>
    [Theory]
    [InlineData("/caches", "/home/ada", "/caches/fretloom/engraving")]
    [InlineData(null, "/home/ada", "/home/ada/.cache/fretloom/engraving")]
    [InlineData("", "/home/ada", "/home/ada/.cache/fretloom/engraving")]
    [InlineData("caches", "/home/ada", "/home/ada/.cache/fretloom/engraving")]
    [InlineData("caches", "", null)]
    [InlineData(null, "", null)]
    public void The_folder_lies_where_the_standard_says(string? cacheHome, string home, string? folder)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "paths are those of Unix");

        Assert.Equal(folder, EngravingCache.UsersFolder(cacheHome, home));
    }

    [Fact]
    public async Task A_folder_is_shared_by_builds_at_once()
    {
        var exercises = Repertoire.Others.Take(4).Select(Played.Of).ToList();
        var builds = await Task.WhenAll(
            Enumerable
                .Range(0, 4)
                .Select(_ =>
                    Task.Run(() =>
                    {
                        using var engraver = new Engraver(new EngravingCache(Folder));
                        return exercises.ConvertAll(exercise => engraver.Engrave(exercise, A4));
                    })
                )
        );

        Assert.All(builds, build => Assert.Equal(builds[0], build));
        Assert.Equal(exercises.Count, Files.Length);
    }

    /// <summary>A clock that goes on by hand, a minute at a time.</summary>
    private sealed class HandClock : TimeProvider
    {
        private DateTimeOffset now = new(2026, 1, 1, 12, 0, 0, TimeSpan.Zero);

        public void Tick() => now += TimeSpan.FromMinutes(1);

        public override DateTimeOffset GetUtcNow() => now;
    }
}
