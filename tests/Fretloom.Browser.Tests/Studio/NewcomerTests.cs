using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>The way of somebody who opens the studio for the first time, from the sentence to the printed sheet.</summary>
public sealed class NewcomerTests(Chromium chromium) : IAsyncLifetime
{
    private StartedStudio? _studio;

    public async ValueTask InitializeAsync()
    {
        if (Chromium.WhyNot is null)
        {
            _studio = await StartedStudio.StartAsync();
        }
    }

    public ValueTask DisposeAsync()
    {
        _studio?.Dispose();
        return ValueTask.CompletedTask;
    }

    private static ILocator Handout(IPage page) => page.FrameLocator(".write iframe.handout").Locator("article");

    private async Task NewLessonAsync(IPage page, string title)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Lesson", Exact = true }).ClickAsync();
        await page.ClickAsync("text=New lesson");
        await page.FillAsync(".naming input", title);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".cm-content")).ToContainTextAsync(title);
    }

    [Fact]
    public async Task From_a_sentence_to_a_sheet_and_nothing_is_lost()
    {
        await using var opened = await chromium.OpenStudioAsync(_studio!.Address);
        var page = opened.Page;
        await NewLessonAsync(page, "Three chords");
        await page.GetByRole(AriaRole.Button, new() { Name = "Lesson", Exact = true }).ClickAsync();

        await page.PickAsync("what to show", "the triads");
        await page.PickAsync("the instrument", "on a ukulele");
        await page.PickAsync("the strings", "on strings 3-1");
        await page.Locator("main").GetByText("Put into the lesson").ClickAsync();
        await Assertions.Expect(page.Locator(".cm-content")).ToContainTextAsync("on a ukulele");
        await page.Locator(".cm-content").ClickAsync();
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.InsertTextAsync("\n\nPlay them slowly.\n\n```show\nthe landmaks, on a ukulele\n```\n");
        await Assertions.Expect(Handout(page)).ToContainTextAsync("Play them slowly.");
        await Assertions.Expect(page.Locator(".problems summary")).ToHaveTextAsync("1 problem");
        await page.ClickAsync(".problems summary");
        await page.ClickAsync(".problems .framed");
        await Assertions.Expect(page.Locator(".problems")).ToHaveTextAsync("No problems");

        await page.Locator(".cm-content").ClickAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => page.Keyboard.PressAsync("Control+Enter"));
        using (var pdf = PdfDocument.Open((await download.PathAsync())!))
        {
            var text = string.Concat(pdf.GetPages().Select(sheet => sheet.Text));
            Assert.Contains("Three chords", text, StringComparison.Ordinal);
            Assert.Contains("slowly", text, StringComparison.Ordinal);
        }

        await Assertions.Expect(page.Locator(".lesson-bar .state")).ToHaveTextAsync("Saved");
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator(".cm-content")).ToContainTextAsync("Play them slowly.");
        var file = Path.Combine(_studio.Folder, "three-chords.md");
        var saved = await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken);
        Assert.Contains("the landmarks, on a ukulele", saved, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lesson_is_shown_to_a_class_picture_by_picture()
    {
        await using var opened = await chromium.OpenStudioAsync($"{_studio!.Address}?lesson=the-cloth-of-a-key.md");
        var page = opened.Page;
        await Assertions.Expect(Handout(page)).ToContainTextAsync("The cloth of a key");

        await page.ShowToClassAsync();
        var (title, picture) = (page.Locator("#class h2"), page.Locator("#class .picture svg"));
        await Assertions.Expect(title).ToHaveTextAsync("The cloth of a key");
        var first = await picture.InnerHTMLAsync();
        await page.Keyboard.PressAsync("PageDown");

        await Assertions.Expect(title).ToHaveTextAsync("The cloth of a key");
        await Assertions.Expect(picture).ToBeVisibleAsync();
        Assert.NotEqual(first, await picture.InnerHTMLAsync());
    }

    [Fact]
    public async Task What_stands_in_a_lesson_cannot_run_as_a_script()
    {
        const string Hostile = """
            ---
            title: <img src=x onerror="top.wronged=1">
            subtitle: "</style><script>top.wronged=1</script>"
            ---

            <script>top.wronged = 1</script>
            <img src="x" onerror="top.wronged = 1">

            [Click](javascript:top.wronged=1) and [here](data:text/html,<script>top.wronged=1</script>)

            ```show
            the landmarks
            caption: <svg onload="top.wronged=1">
            alt: "\"><script>top.wronged=1</script>"
            ```

            """;
        await File.WriteAllTextAsync(
            Path.Combine(_studio!.Folder, "hostile.md"),
            Hostile,
            TestContext.Current.CancellationToken
        );
        await using var opened = await chromium.OpenStudioAsync($"{_studio.Address}?lesson=hostile.md");
        var page = opened.Page;
        await Assertions.Expect(Handout(page).Locator("figure svg").First).ToBeVisibleAsync();
        foreach (var link in await Handout(page).Locator("a").AllAsync())
        {
            Assert.DoesNotMatch("^(javascript|data):", await link.GetAttributeAsync("href") ?? "");
        }

        Assert.Equal(0, await Handout(page).Locator("script, img, [onerror], [onload]").CountAsync());
        Assert.Null(await page.EvaluateAsync<int?>("window.wronged ?? null"));
    }

    [Fact]
    public async Task A_long_job_tells_how_far_it_is_and_can_be_stopped()
    {
        await using var opened = await chromium.OpenStudioAsync(
            $"{_studio!.Address}?lesson=when-a-shape-is-too-wide.md"
        );
        var page = opened.Page;
        await Assertions.Expect(Handout(page).Locator("h1")).ToBeVisibleAsync();

        await page.GetByText("Make files").ClickAsync();
        await page.GetByLabel("In the key of").SelectOptionAsync("all");
        await page.ClickAsync("text=All of them (ZIP)");
        await page.GetByRole(AriaRole.Progressbar).WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Stop", Exact = true }).ClickAsync();

        await Assertions.Expect(page.GetByText("Stopped; nothing was made.")).ToBeVisibleAsync();
    }
}
