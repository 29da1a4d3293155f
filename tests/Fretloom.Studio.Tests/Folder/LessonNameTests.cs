using System.Net;
using Fretloom.Studio.Folder;

namespace Fretloom.Studio.Tests.Folder;

public class LessonNameTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public static TheoryData<string> Bad =>
        [
            "",
            ".md",
            "x",
            "x.txt",
            "x.MD",
            "x.md/",
            "a/x.md",
            "a\\x.md",
            "..\\x.md",
            "../x.md",
            "/etc/x.md",
            "..md",
            ".hidden.md",
            " x.md",
            "x\0.md",
            "x\n.md",
            "x\u007f.md",
            "x\u0085.md",
            "x%2Fy.md",
            "x%2fy.md",
            "C:x.md",
            "x*.md",
            "x?.md",
            "nul.md",
            "CON.md",
            "com1.notes.md",
            "lpt9 .md",
            "x\ud800.md",
            new string('a', 198) + ".md",
            new string('ä', 99) + ".md",
        ];

    [Theory]
    [MemberData(nameof(Bad))]
    public void These_are_not(string name) => Assert.False(LessonName.IsFine(name));

    [Theory]
    [InlineData("x.md")]
    [InlineData("the cloth of a key.md")]
    [InlineData("Tonleiter für Gitarre.md")]
    [InlineData("a..b.md")]
    [InlineData("100%.md")]
    [InlineData("console.md")]
    [InlineData("日本.md")]
    [InlineData("𝄞.md")]
    public void These_are(string name) => Assert.True(LessonName.IsFine(name));

    // As they are written in a request: a client would resolve dots and encode what must be.
    [Theory]
    [InlineData("/api/lessons/../../secret.md")]
    [InlineData("/api/lessons/..%2f..%2fsecret.md")]
    [InlineData("/api/lessons/..%2Fsecret.md")]
    [InlineData("/api/lessons/%2e%2e%2fsecret.md")]
    [InlineData("/api/lessons/%2e%2e/secret.md")]
    [InlineData("/api/lessons/..\\secret.md")]
    [InlineData("/api/lessons/..%5csecret.md")]
    [InlineData("/api/lessons/%252e%252e%252fsecret.md")]
    [InlineData("/api/lessons/%c0%ae%c0%ae%c0%afsecret.md")]
    [InlineData("/api/lessons/secret.md%00.md")]
    [InlineData("/api/lessons/.%00./secret.md")]
    [InlineData("/api/lessons//secret.md")]
    [InlineData("/api/lessons/./../secret.md")]
    [InlineData("/api/lessons/.secret.md")]
    [InlineData("/secret.md")]
    [InlineData("/../lessons/short.md")]
    [InlineData("/%2e%2e/lessons/short.md")]
    [InlineData("/..%2flessons/short.md")]
    [InlineData("/assets/../secret.md")]
    [InlineData("/assets/verovio/..%2f..%2fsecret.md")]
    public async Task No_address_leads_out_of_the_folders(string target)
    {
        await using var studio = await OpenStudio.OpenAsync();
        File.WriteAllText(Path.Combine(studio.Root, "secret.md"), "SECRET");
        File.WriteAllText(Path.Combine(studio.Lessons, ".secret.md"), "SECRET");

        var read = await studio.SendRawAsync(studio.Raw("GET", target));
        var written = await studio.SendRawAsync(
            studio.Raw("PUT", target, "If-Match: *\r\nContent-Length: 3\r\n") + "bad"
        );

        Assert.Matches("^HTTP/1.1 (400|404) ", read);
        Assert.Matches("^HTTP/1.1 (400|404|405|412) ", written);
        Assert.DoesNotContain("SECRET", read, StringComparison.Ordinal);
        Assert.DoesNotContain("short lesson", read, StringComparison.Ordinal);
        Assert.Equal("SECRET", File.ReadAllText(Path.Combine(studio.Root, "secret.md")));
        Assert.Equal(OpenStudio.Short, File.ReadAllText(studio.PathOf("short.md")));
        Assert.Equal(4, Directory.GetFiles(studio.Root, "*.md", SearchOption.AllDirectories).Length);
    }

    [Fact]
    public async Task Links_are_followed_within_the_folder_and_not_out_of_it()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "not every user may make links");
        await using var studio = await OpenStudio.OpenAsync();
        var secret = Path.Combine(studio.Root, "secret.md");
        File.WriteAllText(secret, "SECRET");
        Directory.CreateSymbolicLink(Path.Combine(studio.Lessons, "folder"), studio.Root);
        File.CreateSymbolicLink(studio.PathOf("out.md"), secret);
        File.CreateSymbolicLink(studio.PathOf("through.md"), "folder/secret.md");
        File.CreateSymbolicLink(studio.PathOf("twice.md"), "out.md");
        File.CreateSymbolicLink(studio.PathOf("round.md"), "round.md");
        File.CreateSymbolicLink(studio.PathOf("device.md"), "/dev/zero");
        File.CreateSymbolicLink(studio.PathOf("within.md"), "short.md");

        foreach (var name in new[] { "out.md", "through.md", "twice.md", "round.md", "device.md" })
        {
            using var read = await studio.GetAsync($"/api/lessons/{name}");
            using var write = await studio.PutAsync($"/api/lessons/{name}", "bad", ("If-Match", "*"));
            Assert.Equal((name, HttpStatusCode.NotFound), (name, read.StatusCode));
            Assert.Equal((name, HttpStatusCode.NotFound), (name, write.StatusCode));
        }

        using var within = await studio.GetAsync("/api/lessons/within.md");
        using var saved = await studio.PutAsync(
            "/api/lessons/within.md",
            "new",
            ("If-Match", $"{within.Headers.ETag}")
        );
        var list = await OpenStudio.JsonOf(await studio.GetAsync("/api/lessons"));

        Assert.Equal(HttpStatusCode.NoContent, saved.StatusCode);
        Assert.Equal("new", File.ReadAllText(studio.PathOf("short.md")));
        Assert.Equal("short.md", new FileInfo(studio.PathOf("within.md")).LinkTarget);
        Assert.Equal("SECRET", File.ReadAllText(secret));
        Assert.Equal(
            ["short.md", "two.md", "within.md"],
            list.EnumerateArray().Select(lesson => lesson.GetProperty("name").GetString()!)
        );
    }

    [Fact]
    public async Task A_folder_that_is_itself_a_link_is_used()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "not every user may make links");
        await using var studio = await OpenStudio.OpenAsync(options =>
        {
            var link = options.Lessons + "-link";
            Directory.CreateSymbolicLink(link, options.Lessons);
            File.CreateSymbolicLink(
                Path.Combine(options.Lessons, "whole.md"),
                Path.Combine(options.Lessons, "short.md")
            );
            return options with { Lessons = link };
        });

        using var plain = await studio.GetAsync("/api/lessons/short.md");
        using var linked = await studio.GetAsync("/api/lessons/whole.md");

        Assert.Equal(HttpStatusCode.OK, plain.StatusCode);
        Assert.Equal(HttpStatusCode.OK, linked.StatusCode);
    }

    [Fact]
    public async Task A_pipe_keeps_nobody_waiting()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes a Unix pipe");
        await using var studio = await OpenStudio.OpenAsync();
        await Testing.Run.ProgramAsync("mkfifo", [studio.PathOf("pipe.md")]);

        using var list = await studio.GetAsync("/api/lessons");
        using var read = await studio.GetAsync("/api/lessons/pipe.md");

        Assert.Equal(HttpStatusCode.OK, list.StatusCode);
        Assert.Equal("", await read.Content.ReadAsStringAsync(Stop));
    }
}
