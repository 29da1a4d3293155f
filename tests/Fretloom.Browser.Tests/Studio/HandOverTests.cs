using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>A lesson is handed over in every key: its progress is told, it can be stopped, and what comes is whole.</summary>
public sealed partial class HandOverTests(Chromium chromium) : IAsyncLifetime
{
    private const string Name = "two-things.md";

    private const string Text = """
        ---
        title: Two things
        key: D major
        ---

        ```show
        the triads, on strings 4-1
        ```

        ```play
        the scale, up, in one octave
        ```
        """;

    private StartedStudio? _studio;

    public async ValueTask InitializeAsync()
    {
        if (Chromium.WhyNot is null)
        {
            _studio = await StartedStudio.StartAsync();
            await File.WriteAllTextAsync(Path.Combine(_studio.Folder, Name), Text);
        }
    }

    // The lesson with what can be made of it.
    private async Task<OpenPage> OpenAsync()
    {
        var opened = await chromium.OpenStudioAsync($"{_studio!.Address}?lesson={Name}");
        await Assertions.Expect(opened.Page.Locator(".cm-content")).ToContainTextAsync("Two things");
        await opened.Page.ClickAsync("text=Make files");
        return opened;
    }

    private async Task ChangeAsync(string before, string after) =>
        await File.WriteAllTextAsync(
            Path.Combine(_studio!.Folder, Name),
            Text.Replace(before, after, StringComparison.Ordinal),
            TestContext.Current.CancellationToken
        );

    public ValueTask DisposeAsync()
    {
        _studio?.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Every_key_is_made_with_progress_can_be_stopped_and_comes_as_one_whole_ZIP()
    {
        await using var opened = await OpenAsync();
        var (page, files) = (opened.Page, opened.Page.Locator(".files"));
        await files.GetByLabel("In the key of").SelectOptionAsync("all");

        await files.GetByText("All of them").ClickAsync();
        var progress = files.GetByRole(AriaRole.Progressbar);
        await Assertions.Expect(progress).ToHaveAttributeAsync("value", Moved());
        Assert.NotEqual("1", await progress.GetAttributeAsync("max"));
        await files.GetByText("Stop").ClickAsync();
        await Assertions.Expect(progress).ToHaveCountAsync(0);
        await Assertions.Expect(files.GetByRole(AriaRole.Status)).ToContainTextAsync("Stopped");

        var download = await page.RunAndWaitForDownloadAsync(
            () => files.GetByText("All of them").ClickAsync(),
            new() { Timeout = 400_000 }
        );
        using var zip = await ZipFile.OpenReadAsync(
            (await download.PathAsync())!,
            TestContext.Current.CancellationToken
        );

        // Twelve keys, each with every kind, and one sheet of all of them.
        Assert.Single(zip.Entries, entry => entry.Name.EndsWith("-keys.pdf", StringComparison.Ordinal));
        Assert.EndsWith(".zip", download.SuggestedFilename, StringComparison.Ordinal);
        foreach (var (ending, head) in Heads)
        {
            var entries = zip
                .Entries.Where(entry => entry.Name.EndsWith(ending, StringComparison.Ordinal))
                .Where(entry => entry.Name.Contains("-in-", StringComparison.Ordinal))
                .ToList();
            Assert.Equal(12, entries.Count);
            Assert.Equal(12, entries.Select(entry => entry.FullName).Distinct().Count());
            Assert.All(entries, entry => Assert.StartsWith(head, Beginning(entry), StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task A_lesson_in_minor_is_made_in_the_key_of_one_student_spelled_as_players_meet_it()
    {
        await ChangeAsync("D major", "A minor");
        await using var opened = await OpenAsync();
        var (page, files) = (opened.Page, opened.Page.Locator(".files"));

        var keys = files.GetByLabel("In the key of");
        await Assertions.Expect(keys.Locator("option")).ToHaveCountAsync(13);
        await keys.SelectOptionAsync(new SelectOptionValue { Label = "F♯ minor" });
        var download = await page.RunAndWaitForDownloadAsync(() => files.GetByText("PDF").ClickAsync());

        using var pdf = UglyToad.PdfPig.PdfDocument.Open((await download.PathAsync())!);
        Assert.Contains("F♯ minor", pdf.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_keeps_a_lesson_from_being_made_is_told_and_led_to()
    {
        await ChangeAsync("the triads", "the tirads");
        await using var opened = await OpenAsync();
        var (page, files) = (opened.Page, opened.Page.Locator(".files"));

        await files.GetByText("PDF").ClickAsync();
        await Assertions.Expect(files.GetByRole(AriaRole.Status)).ToContainTextAsync("Nothing was made");
        await files.GetByText("Go to line 7").ClickAsync();
        await page.Keyboard.InsertTextAsync("Here: ");

        await Assertions.Expect(page.Locator(".cm-content")).ToContainTextAsync("the Here: tirads");

        // It is not so of another lesson.
        await page.Locator("select.lessons").SelectOptionAsync("the-cloth-of-a-key.md");
        await Assertions.Expect(files.GetByText("Nothing was made")).ToHaveCountAsync(0);
    }

    // What files of each kind begin with, by their standards.
    private static readonly (string Ending, string Head)[] Heads =
    [
        (".pdf", "%PDF-"),
        (".html", "<!doctype html>"),
        (".musicxml", "<?xml"),
        (".mid", "MThd"),
        (".wav", "RIFF"),
    ];

    private static string Beginning(ZipArchiveEntry entry)
    {
        using var stream = entry.Open();
        var bytes = new byte[16];
        return Encoding
            .UTF8.GetString(bytes, 0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false))
            .TrimStart('\uFEFF');
    }

    [GeneratedRegex("^[1-9]")]
    private static partial Regex Moved();
}
