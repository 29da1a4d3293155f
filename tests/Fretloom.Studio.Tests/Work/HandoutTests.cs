using System.IO.Compression;
using System.Net;
using System.Text.Json;
using Fretloom.Pages.Documents;
using Fretloom.Studio.Folder;
using Fretloom.Studio.Work;

namespace Fretloom.Studio.Tests.Work;

public class HandoutTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task One_file_is_given_as_it_is()
    {
        await using var studio = await OpenStudio.OpenAsync();

        var status = await MadeAsync(studio, """{"name":"two.md","formats":["html"]}""");
        using var file = await studio.GetAsync(status.GetProperty("file").GetString()!);

        Assert.Equal("done", status.GetProperty("state").GetString());
        Assert.Equal(1, status.GetProperty("of").GetInt32());
        Assert.EndsWith("/file/two.html", status.GetProperty("file").GetString(), StringComparison.Ordinal);
        Assert.Equal("attachment", file.Content.Headers.ContentDisposition!.DispositionType);
        Assert.Equal("two.html", file.Content.Headers.ContentDisposition.FileName);
        Assert.Contains("Two blocks in F major", await file.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Http.SecurityTests.AssertSecure(file);
    }

    [Fact]
    public async Task Several_files_are_given_in_one_ZIP_and_the_same_lesson_gives_the_same_bytes()
    {
        await using var studio = await OpenStudio.OpenAsync();
        const string Order = """{"name":"two.md","formats":["svg","midi","musicxml"],"key":"D","paper":"letter"}""";

        var first = await BytesAsync(studio, await MadeAsync(studio, Order));
        var again = await BytesAsync(studio, await MadeAsync(studio, Order));

        Assert.Equal(first, again);
        await using var zip = new ZipArchive(new MemoryStream(first));
        Assert.Equal(
            [
                "two-in-D-major-1-cards-2.svg",
                "two-in-D-major-1-cards.svg",
                "two-in-D-major-exercise-1.mid",
                "two-in-D-major-exercise-1.musicxml",
                "two-in-D-major-exercise-1.svg",
            ],
            zip.Entries.Select(entry => entry.FullName).Order(StringComparer.Ordinal)
        );
        Assert.All(zip.Entries, entry => Assert.Equal(1980, entry.LastWriteTime.Year));
    }

    [Fact]
    public async Task What_is_not_saved_is_made_and_stays_unsaved()
    {
        await using var studio = await OpenStudio.OpenAsync();
        var text = JsonSerializer.Serialize("---\ntitle: Unsaved words\n---\n");

        var status = await MadeAsync(studio, $$"""{"name":"new.md","text":{{text}},"formats":["html"]}""");
        var page = await studio.Client.GetStringAsync(status.GetProperty("file").GetString()!, Stop);

        Assert.Contains("Unsaved words", page, StringComparison.Ordinal);
        Assert.Equal(["short.md", "two.md"], Directory.GetFiles(studio.Lessons).Select(Path.GetFileName).Order());
    }

    [Fact]
    public async Task Twelve_keys_are_made_with_their_overview()
    {
        await using var studio = await OpenStudio.OpenAsync();

        var status = await MadeAsync(
            studio,
            """{"name":"short.md","formats":["html"],"keys":"all","order":"half-steps"}"""
        );

        Assert.Equal(13, status.GetProperty("of").GetInt32());
        Assert.EndsWith("/file/short-html.zip", status.GetProperty("file").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lesson_with_errors_fails_with_its_findings()
    {
        await using var studio = await OpenStudio.OpenAsync();
        var text = JsonSerializer.Serialize("---\ntitle: x\n---\n\n```show\nthe kee\n```\n");

        var status = await MadeAsync(studio, $$"""{"name":"x.md","text":{{text}}}""");

        Assert.Equal("failed", status.GetProperty("state").GetString());
        Assert.Equal(JsonValueKind.Null, status.GetProperty("file").ValueKind);
        var found = Assert.Single(status.GetProperty("diagnostics").EnumerateArray());
        Assert.Equal(
            (6, 5, "error"),
            (
                found.GetProperty("line").GetInt32(),
                found.GetProperty("column").GetInt32(),
                found.GetProperty("severity").GetString()
            )
        );
    }

    [Theory]
    [InlineData("""{"name":"two.md","formats":["docx"]}""", 400)]
    [InlineData("""{"name":"two.md","formats":[]}""", 400)]
    [InlineData("""{"name":"two.md","keys":"some"}""", 400)]
    [InlineData("""{"name":"two.md","key":"H sharp"}""", 400)]
    [InlineData("""{"name":"two.md","keys":"all","order":"random"}""", 400)]
    [InlineData("""{"name":"two.md","paper":"a3"}""", 400)]
    [InlineData("""{"name":"none.md"}""", 404)]
    [InlineData("""{"name":"../two.md"}""", 404)]
    [InlineData("""{"name":"../x.md","text":"---\ntitle: x\n---\n"}""", 404)]
    public async Task A_wrong_order_is_told(string order, int status)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.PostAsync("/api/handouts", order);

        Assert.Equal(status, (int)answer.StatusCode);
        Assert.NotEmpty(await OpenStudio.ErrorOf(answer));
    }

    [Fact]
    public async Task A_text_that_is_too_large_is_refused()
    {
        await using var studio = await OpenStudio.OpenAsync();
        var text = new string('ä', 500_001);

        using var answer = await studio.PostAsync("/api/handouts", $$"""{"name":"x.md","text":"{{text}}"}""");

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    [Fact]
    public async Task A_job_that_waits_is_stopped_and_one_that_is_over_is_forgotten()
    {
        await using var studio = await OpenStudio.OpenAsync();
        var first = await OrderAsync(studio, """{"name":"two.md","formats":["pdf","html","svg"],"keys":"all"}""");
        var second = await OrderAsync(studio, """{"name":"two.md","formats":["html"]}""");

        using var stopped = await studio.SendAsync(HttpMethod.Delete, second, null);
        using var stoppedToo = await studio.SendAsync(HttpMethod.Delete, first, null);
        var (after, afterToo) = (await EndAsync(studio, second), await EndAsync(studio, first));
        using var forgotten = await studio.SendAsync(HttpMethod.Delete, second, null);
        using var gone = await studio.GetAsync(second);

        Assert.Equal(HttpStatusCode.NoContent, stopped.StatusCode);
        Assert.Equal("stopped", after.GetProperty("state").GetString());
        Assert.Equal(HttpStatusCode.NoContent, stoppedToo.StatusCode);
        Assert.Equal("stopped", afterToo.GetProperty("state").GetString());
        Assert.Equal(HttpStatusCode.NoContent, forgotten.StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, gone.StatusCode);
    }

    [Fact]
    public async Task The_last_ones_are_kept_and_all_go_with_the_studio()
    {
        string location;
        await using (var scratch = new ScratchFolder())
        {
            location = scratch.Location;
            await using var workshop = new Workshop();
            await using var desk = new HandoutDesk(workshop, scratch);
            var jobs = new List<HandoutJob>();
            for (var at = 0; at < HandoutDesk.MostKept + 2; at++)
            {
                var job = desk.Take(
                    "x.md",
                    "---\ntitle: x\n---\n"u8.ToArray(),
                    folder => new BuildOptions(folder) { Formats = [HandoutFormat.Html] }
                );
                jobs.Add(job!);
                while (!job!.IsOver)
                {
                    await Task.Delay(5, Stop);
                }
            }

            Assert.Equal([.. jobs.Skip(2)], jobs.Where(job => desk.Find(job.Id) is not null));
            Assert.Equal(
                jobs.Skip(2).Select(job => job.Id).Order(),
                Directory.GetDirectories(location).Select(Path.GetFileName).Order()
            );
        }

        Assert.False(Directory.Exists(location));
    }

    [Fact]
    public async Task No_more_may_wait_than_can_be_made_soon()
    {
        await using var scratch = new ScratchFolder();
        await using var workshop = new Workshop();
        await using var desk = new HandoutDesk(workshop, scratch);
        var lesson = System.Text.Encoding.UTF8.GetBytes(OpenStudio.Two);
        HandoutJob? Take() =>
            desk.Take(
                "x.md",
                lesson,
                folder => new BuildOptions(folder) { Keys = KeyChoice.All(Theory.KeyOrder.Fourths) }
            );

        var jobs = Enumerable.Range(0, HandoutDesk.MostWaiting).Select(_ => Take()).ToList();

        Assert.DoesNotContain(null, jobs);
        Assert.Null(Take());
        jobs.ForEach(job => job!.Stop());
    }

    [Fact]
    public async Task What_a_killed_studio_left_behind_is_removed()
    {
        var left = Directory.CreateTempSubdirectory("fretloom-studio-");
        File.WriteAllText(Path.Combine(left.FullName, "lock"), "");
        await using var living = new ScratchFolder();

        await using var next = new ScratchFolder();

        Assert.False(Directory.Exists(left.FullName));
        Assert.True(Directory.Exists(living.Location));
    }

    private static async Task<string> OrderAsync(OpenStudio studio, string order)
    {
        using var answer = await studio.PostAsync("/api/handouts", order);
        Assert.Equal(HttpStatusCode.Accepted, answer.StatusCode);
        var id = (await OpenStudio.JsonOf(answer)).GetProperty("id").GetString();
        return $"/api/handouts/{id}";
    }

    private static async Task<JsonElement> EndAsync(OpenStudio studio, string job)
    {
        while (true)
        {
            using var answer = await studio.GetAsync(job);
            var status = await OpenStudio.JsonOf(answer);
            if (status.GetProperty("state").GetString() != "working")
            {
                return status;
            }

            await Task.Delay(20, Stop);
        }
    }

    private static async Task<JsonElement> MadeAsync(OpenStudio studio, string order) =>
        await EndAsync(studio, await OrderAsync(studio, order));

    private static async Task<byte[]> BytesAsync(OpenStudio studio, JsonElement status) =>
        await studio.Client.GetByteArrayAsync(status.GetProperty("file").GetString()!, Stop);
}
