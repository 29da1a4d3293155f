using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Fretloom.Studio.Folder;

namespace Fretloom.Studio.Tests.Folder;

public class ChangesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Changes_by_anybody_are_told_as_events()
    {
        await using var studio = await OpenStudio.OpenAsync();
        using var answer = await studio.GetAsync("/api/changes");
        using var events = new StreamReader(await answer.Content.ReadAsStreamAsync(Stop));
        Assert.Equal("text/event-stream", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal(": watching", await events.ReadLineAsync(Stop));

        using var saved = await studio.PutAsync("/api/lessons/short.md", "saved", ("If-Match", "*"));
        Assert.Equal(("short.md", saved.Headers.ETag!.Tag.Trim('"')), await NextAsync(events));

        File.WriteAllText(studio.PathOf("two.md"), "by hand");
        Assert.Equal(("two.md", HashOf("by hand")), await LastAsync(events, "by hand"));

        File.Delete(studio.PathOf("short.md"));
        Assert.Equal(("short.md", null), await NextAsync(events));

        File.WriteAllText(studio.PathOf("no lesson.txt"), "x");
        File.Move(studio.PathOf("two.md"), studio.PathOf("three.md"));
        (string, string?)[] moved = [await NextAsync(events), await NextAsync(events)];
        Assert.Equal([("two.md", null), ("three.md", HashOf("by hand"))], moved);
    }

    [Fact]
    public async Task An_own_save_is_told_once()
    {
        await using var studio = await OpenStudio.OpenAsync();
        using var answer = await studio.GetAsync("/api/changes");
        using var events = new StreamReader(await answer.Content.ReadAsStreamAsync(Stop));

        using var first = await studio.PutAsync("/api/lessons/short.md", "one", ("If-Match", "*"));
        Assert.Equal("short.md", (await NextAsync(events)).Name);
        using var second = await studio.PutAsync("/api/lessons/two.md", "two", ("If-Match", "*"));

        Assert.Equal("two.md", (await NextAsync(events)).Name);
    }

    [Fact]
    public async Task Without_messages_of_the_system_changes_are_found_by_looking()
    {
        var folder = Directory.CreateTempSubdirectory("fretloom-looks-");
        try
        {
            await using var changes = new FolderChanges(new LessonFolder(folder.FullName), TimeProvider.System)
            {
                AsksSystem = false,
                Between = TimeSpan.FromMilliseconds(20),
            };
            changes.Begin();
            var news = await changes.ListenAsync(Stop);

            File.WriteAllText(Path.Combine(folder.FullName, "x.md"), "text");
            var change = await news.ReadAsync(Stop);

            Assert.Equal("x.md", change.Name);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task The_studio_closes_while_somebody_listens()
    {
        var studio = await OpenStudio.OpenAsync();
        using var answer = await studio.GetAsync("/api/changes");
        using var events = new StreamReader(await answer.Content.ReadAsStreamAsync(Stop));
        await events.ReadLineAsync(Stop);

        var closing = studio.DisposeAsync();
        var rest = await ReadToEndAsync(events);
        await closing;

        Assert.DoesNotContain("data:", rest, StringComparison.Ordinal);
    }

    private static string HashOf(string text) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private static async Task<string> ReadToEndAsync(StreamReader events)
    {
        try
        {
            return await events.ReadToEndAsync(Stop);
        }
        catch (Exception problem) when (problem is IOException or ObjectDisposedException)
        {
            // Whoever listened was closed with it.
            return "";
        }
    }

    private static async Task<(string Name, string? Tag)> NextAsync(StreamReader events)
    {
        while (true)
        {
            var line = await events.ReadLineAsync(Stop);
            Assert.NotNull(line);
            if (line.StartsWith("data: ", StringComparison.Ordinal))
            {
                var change = JsonDocument.Parse(line["data: ".Length..]).RootElement;
                return (change.GetProperty("name").GetString()!, change.GetProperty("etag").GetString());
            }
        }
    }

    // A file that is written in place may be seen empty before.
    private static async Task<(string Name, string? Tag)> LastAsync(StreamReader events, string text)
    {
        var change = await NextAsync(events);
        return change.Tag == HashOf("") ? await NextAsync(events)
            : change.Tag == HashOf(text) ? change
            : throw new InvalidOperationException($"{change} is neither empty nor '{text}'.");
    }
}
