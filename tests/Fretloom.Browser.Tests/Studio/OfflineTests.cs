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
}
