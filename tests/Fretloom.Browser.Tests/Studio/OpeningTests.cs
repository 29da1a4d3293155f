using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>What is seen of the studio before its program has come.</summary>
public class OpeningTests(Chromium chromium, RunningStudio studio)
{
    [Theory]
    [InlineData("")]
    [InlineData("?show=the%20seventh%20chords%2C%20in%20Bb%20major%2C%20for%20a%20left-handed%20player&names=German")]
    public async Task The_neck_is_seen_at_once_where_the_program_then_draws_the_same(string asked)
    {
        Assert.SkipWhen(Chromium.WhyNot is not null, Chromium.WhyNot ?? "");
        await using var context = await chromium.ContextAsync(1280, Colours.Light);
        context.SetDefaultTimeout(60_000);
        await using var opened = new OpenPage(await context.NewPageAsync());
        var page = opened.Page;
        var program = new TaskCompletionSource();
        await page.RouteAsync(
            "**/dotnet.native.wasm",
            async route =>
            {
                await program.Task;
                await route.ContinueAsync();
            }
        );
        await page.GotoAsync(studio.Address + asked);

        var early = page.Locator(".opening-neck svg");
        await early.WaitForAsync();
        var (labels, at) = (await LabelsOf(early), await early.BoundingBoxAsync());
        await page.EvaluateAsync(
            """
            () => {
              globalThis.without = 0;
              const look = () => {
                if (!document.querySelector(".opening-neck svg, .opened svg, .dock .now svg")) without++;
                requestAnimationFrame(look);
              };
              look();
            }
            """
        );
        program.SetResult();
        await page.Locator("html[data-ready]").WaitForAsync(new() { State = WaitForSelectorState.Attached });

        var neck = page.Locator(".dock .now svg");
        await neck.WaitForAsync();
        Assert.Equal(labels, await LabelsOf(neck));
        var now = await neck.BoundingBoxAsync();
        Assert.Equal(at!.X, now!.X, 1.5);
        Assert.Equal(at.Width, now.Width, 1.5);
        Assert.Equal(at.Y, now.Y, 1.5);
        Assert.Equal(1, await page.Locator(".dock svg").CountAsync());
        Assert.Equal(0, await page.EvaluateAsync<int>("without"));
    }

    // Letters in the order of the alphabet: the program writes those of one kind together.
    private static async Task<string> LabelsOf(ILocator svg) =>
        string.Concat((await svg.Locator("text").AllTextContentsAsync()).SelectMany(text => text).Order());
}
