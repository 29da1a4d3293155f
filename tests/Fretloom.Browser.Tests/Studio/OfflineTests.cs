using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>After the first visit the studio works without its host.</summary>
public class OfflineTests(Chromium chromium)
{
    [Fact]
    public async Task Without_its_host_it_opens_again_and_answers()
    {
        Assert.SkipWhen(Chromium.WhyNot is not null, Chromium.WhyNot ?? "");
        using var studio = await StartedStudio.StartAsync();
        await using var opened = await chromium.OpenStudioAsync(
            studio.Address,
            options: new() { ServiceWorkers = ServiceWorkerPolicy.Allow }
        );
        var page = opened.Page;
        await page.EvaluateAsync("navigator.serviceWorker.ready.then(() => true)");

        studio.Kill();
        await page.ReloadAsync();
        await page.Locator("html[data-ready]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.PickAsync("the key", "in F major");

        await Assertions.Expect(page.Locator("#dock-name")).ToHaveTextAsync("F major");
        await page.ClickAsync("text=Print one sheet (PDF)");
        await Assertions.Expect(page.GetByText("The host cannot be reached.")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task An_engraver_that_was_used_once_engraves_without_its_host()
    {
        Assert.SkipWhen(Chromium.WhyNot is not null, Chromium.WhyNot ?? "");
        using var studio = await StartedStudio.StartAsync();
        await using var opened = await chromium.OpenStudioAsync(
            studio.Address + "?lesson=f-without-the-barre.md",
            options: new() { ServiceWorkers = ServiceWorkerPolicy.Allow }
        );
        var page = opened.Page;
        var staves = page.FrameLocator("iframe.handout").Locator("[data-note]");
        await Assertions.Expect(staves.First).ToBeVisibleAsync();
        await page.WaitForFunctionAsync(
            "async () => (await caches.match('assets/verovio/verovio-toolkit-wasm.js')) !== undefined"
        );

        studio.Kill();
        // What is typed now is kept by the browser, and is the lesson when the page is loaded again.
        await page.ClickAsync(".cm-content");
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.InsertTextAsync("\nWithout a host.\n");
        await Assertions.Expect(page.Locator(".lesson-bar .state")).ToContainTextAsync("Kept in this browser");
        await page.ReloadAsync();

        await Assertions.Expect(page.Locator(".cm-content")).ToContainTextAsync("F without the barre");
        await Assertions.Expect(staves.First).ToBeVisibleAsync();
    }
}
