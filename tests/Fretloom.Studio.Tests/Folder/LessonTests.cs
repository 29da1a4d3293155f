using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using Fretloom.Lessons;
using Fretloom.Studio.Folder;

namespace Fretloom.Studio.Tests.Folder;

public class LessonTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Lessons_are_listed_by_name_with_their_titles()
    {
        await using var studio = await OpenStudio.OpenAsync();
        File.WriteAllText(studio.PathOf("notes.txt"), "no lesson");
        Directory.CreateDirectory(studio.PathOf("folder.md"));
        File.SetLastWriteTimeUtc(studio.PathOf("two.md"), new DateTime(2026, 2, 3, 4, 5, 6, DateTimeKind.Utc));

        var list = await OpenStudio.JsonOf(await studio.GetAsync("/api/lessons"));

        Assert.Equal(
            [("short.md", "A short lesson"), ("two.md", "Two blocks in F major")],
            list.EnumerateArray()
                .Select(one => (one.GetProperty("name").GetString()!, one.GetProperty("title").GetString()!))
        );
        Assert.Equal("2026-02-03T04:05:06Z", list[1].GetProperty("changed").GetString());
    }

    [Fact]
    public async Task A_title_is_read_again_when_the_file_has_changed()
    {
        await using var studio = await OpenStudio.OpenAsync();
        await studio.GetAsync("/api/lessons");
        File.WriteAllText(studio.PathOf("short.md"), "---\ntitle: Another title\n---\n");

        var list = await OpenStudio.JsonOf(await studio.GetAsync("/api/lessons"));

        Assert.Equal("Another title", list[0].GetProperty("title").GetString());
    }

    [Fact]
    public async Task A_lesson_comes_as_it_is_with_the_hash_of_its_bytes()
    {
        await using var studio = await OpenStudio.OpenAsync();
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. "---\r\ntitle: Übung\r\n---\r\n"u8];
        File.WriteAllBytes(studio.PathOf("short.md"), bytes);

        using var answer = await studio.GetAsync("/api/lessons/short.md");
        using var again = await studio.GetAsync("/api/lessons/short.md", ("If-None-Match", $"{answer.Headers.ETag}"));

        Assert.Equal(bytes, await answer.Content.ReadAsByteArrayAsync(Stop));
        Assert.Equal(new MediaTypeHeaderValue("text/markdown", "utf-8"), answer.Content.Headers.ContentType);
        Assert.Equal($"\"{Convert.ToHexStringLower(SHA256.HashData(bytes))}\"", answer.Headers.ETag!.Tag);
        Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
    }

    [Fact]
    public async Task Saving_replaces_what_was_read_and_tells_what_is_there_now()
    {
        await using var studio = await OpenStudio.OpenAsync();
        using var read = await studio.GetAsync("/api/lessons/short.md");

        using var saved = await studio.PutAsync("/api/lessons/short.md", "new ♭", ("If-Match", $"{read.Headers.ETag}"));
        using var after = await studio.GetAsync("/api/lessons/short.md");

        Assert.Equal(HttpStatusCode.NoContent, saved.StatusCode);
        Assert.Equal(saved.Headers.ETag, after.Headers.ETag);
        Assert.Equal("new ♭", File.ReadAllText(studio.PathOf("short.md")));
        Assert.Equal(["short.md", "two.md"], Directory.GetFiles(studio.Lessons).Select(Path.GetFileName).Order());
    }

    [Fact]
    public async Task What_another_program_wrote_is_not_replaced()
    {
        await using var studio = await OpenStudio.OpenAsync();
        using var read = await studio.GetAsync("/api/lessons/short.md");
        File.WriteAllText(studio.PathOf("short.md"), "by hand");

        using var refused = await studio.PutAsync("/api/lessons/short.md", "new", ("If-Match", $"{read.Headers.ETag}"));

        Assert.Equal(HttpStatusCode.PreconditionFailed, refused.StatusCode);
        Assert.Equal(LessonText.TagOf("by hand"u8), refused.Headers.ETag!.Tag);
        Assert.NotEmpty(await OpenStudio.ErrorOf(refused));
        Assert.Equal("by hand", File.ReadAllText(studio.PathOf("short.md")));
    }

    [Fact]
    public async Task A_new_lesson_does_not_replace_one_that_is_there()
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var made = await studio.PutAsync("/api/lessons/new one.md", "one", ("If-None-Match", "*"));
        using var again = await studio.PutAsync("/api/lessons/new one.md", "two", ("If-None-Match", "*"));

        Assert.Equal(HttpStatusCode.NoContent, made.StatusCode);
        Assert.Equal(HttpStatusCode.PreconditionFailed, again.StatusCode);
        Assert.Equal(made.Headers.ETag, again.Headers.ETag);
        Assert.Equal("one", File.ReadAllText(studio.PathOf("new one.md")));
    }

    [Fact]
    public async Task A_lesson_that_is_gone_is_not_replaced()
    {
        await using var studio = await OpenStudio.OpenAsync();
        using var read = await studio.GetAsync("/api/lessons/short.md");
        File.Delete(studio.PathOf("short.md"));

        using var refused = await studio.PutAsync("/api/lessons/short.md", "new", ("If-Match", $"{read.Headers.ETag}"));
        using var any = await studio.PutAsync("/api/lessons/short.md", "new", ("If-Match", "*"));

        Assert.Equal(HttpStatusCode.PreconditionFailed, refused.StatusCode);
        Assert.Null(refused.Headers.ETag);
        Assert.Equal(HttpStatusCode.PreconditionFailed, any.StatusCode);
        Assert.False(File.Exists(studio.PathOf("short.md")));
    }

    [Theory]
    [InlineData(null, null, 428)]
    [InlineData("If-None-Match", "\"abc\"", 428)]
    [InlineData("If-Match", "\"abc\"", 412)]
    [InlineData("If-Match", "TAG-WEAK", 412)]
    [InlineData("If-Match", "\"abc\", TAG", 204)]
    [InlineData("If-Match", "*", 204)]
    public async Task Conditions_are_those_of_HTTP(string? header, string? value, int status)
    {
        await using var studio = await OpenStudio.OpenAsync();
        var tag = LessonText.TagOf(Encoding.UTF8.GetBytes(OpenStudio.Short));
        var said = value
            ?.Replace("TAG-WEAK", $"W/{tag}", StringComparison.Ordinal)
            .Replace("TAG", tag, StringComparison.Ordinal);

        using var answer = header is null
            ? await studio.PutAsync("/api/lessons/short.md", "new")
            : await studio.PutAsync("/api/lessons/short.md", "new", (header, said!));

        Assert.Equal(status, (int)answer.StatusCode);
        Assert.Equal(status == 204 ? "new" : OpenStudio.Short, File.ReadAllText(studio.PathOf("short.md")));
    }

    [Fact]
    public async Task A_lesson_may_have_as_many_bytes_as_lessons_have_and_no_more()
    {
        await using var studio = await OpenStudio.OpenAsync();
        var most = new string('a', SourceText.MaxBytes);

        using var fits = await studio.PutAsync("/api/lessons/most.md", most, ("If-None-Match", "*"));
        var length = most.Length + 1;
        var refused = await studio.SendRawAsync(
            studio.Raw("PUT", "/api/lessons/more.md", $"If-None-Match: *\r\nContent-Length: {length}\r\n")
        );
        var chunked = await studio.SendRawAsync(
            studio.Raw("PUT", "/api/lessons/more.md", "If-None-Match: *\r\nTransfer-Encoding: chunked\r\n")
                + $"{length:x}\r\n{most}a\r\n0\r\n\r\n"
        );

        Assert.Equal(HttpStatusCode.NoContent, fits.StatusCode);
        Assert.StartsWith("HTTP/1.1 413", refused, StringComparison.Ordinal);
        Assert.StartsWith("HTTP/1.1 413", chunked, StringComparison.Ordinal);
        Assert.False(File.Exists(studio.PathOf("more.md")));
    }

    [Fact]
    public async Task A_file_that_is_too_large_or_no_text_is_told()
    {
        await using var studio = await OpenStudio.OpenAsync();
        File.WriteAllText(studio.PathOf("large.md"), new string('a', SourceText.MaxBytes + 1));

        using var large = await studio.GetAsync("/api/lessons/large.md");
        using var binary = await studio.SendAsync(
            HttpMethod.Put,
            "/api/lessons/new.md",
            new ByteArrayContent([0xFF, 0xFE]),
            ("If-None-Match", "*")
        );

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, large.StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, binary.StatusCode);
        Assert.False(File.Exists(studio.PathOf("new.md")));
    }

    [Fact]
    public async Task Saving_keeps_who_may_read_a_file()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("looks at Unix modes");
            return;
        }

        await using var studio = await OpenStudio.OpenAsync();
        var mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite;
        File.SetUnixFileMode(studio.PathOf("short.md"), mode);

        using var saved = await studio.PutAsync("/api/lessons/short.md", "new", ("If-Match", "*"));

        Assert.Equal(HttpStatusCode.NoContent, saved.StatusCode);
        Assert.Equal(mode, File.GetUnixFileMode(studio.PathOf("short.md")));
    }

    [Fact]
    public async Task Of_those_who_save_at_once_one_wins()
    {
        await using var studio = await OpenStudio.OpenAsync();
        using var read = await studio.GetAsync("/api/lessons/short.md");
        var texts = Enumerable.Range(0, 20).Select(number => $"version {number}").ToList();

        var answers = await Task.WhenAll(
            texts.Select(text => studio.PutAsync("/api/lessons/short.md", text, ("If-Match", $"{read.Headers.ETag}")))
        );

        var winner = Assert.Single(answers.Index(), answer => answer.Item.StatusCode == HttpStatusCode.NoContent);
        Assert.Equal(texts[winner.Index], File.ReadAllText(studio.PathOf("short.md")));
        Assert.All(
            answers.Where(answer => answer != winner.Item),
            answer => Assert.Equal(winner.Item.Headers.ETag, answer.Headers.ETag)
        );
    }

    [Fact]
    public async Task Who_reads_while_others_save_reads_a_whole_version()
    {
        await using var studio = await OpenStudio.OpenAsync();
        var versions = Enumerable.Range(0, 30).Select(number => new string((char)('a' + number), 50_000)).ToList();
        File.WriteAllText(studio.PathOf("short.md"), versions[0]);

        var saving = Task.Run(
            async () =>
            {
                foreach (var version in versions)
                {
                    using var saved = await studio.PutAsync("/api/lessons/short.md", version, ("If-Match", "*"));
                    Assert.Equal(HttpStatusCode.NoContent, saved.StatusCode);
                }
            },
            TestContext.Current.CancellationToken
        );
        var seen = new HashSet<string>();
        while (!saving.IsCompleted)
        {
            seen.Add(File.ReadAllText(studio.PathOf("short.md")));
        }

        await saving;
        Assert.Empty(seen.Except(versions));
    }

    [Fact]
    public async Task Drafts_of_killed_programs_are_removed_and_those_of_living_ones_are_not()
    {
        FileStream? living = null;
        await using var studio = await OpenStudio.OpenAsync(options =>
        {
            File.WriteAllText(Path.Combine(options.Lessons, ".fretloom-save-dead"), "half a les");
            var path = Path.Combine(options.Lessons, ".fretloom-save-living");
            living = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.Delete);
            return options;
        });
        using (living)
        {
            Assert.Equal(
                [".fretloom-save-living", "short.md", "two.md"],
                Directory.GetFiles(studio.Lessons).Select(Path.GetFileName).Order(StringComparer.Ordinal)
            );
        }
    }
}
