using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>The findings: landmarks, related shapes, and claims with their verdict.</summary>
public class KnowTests(Chromium chromium, RunningStudio studio)
{
    private Task<OpenPage> OpenAsync() =>
        chromium.OpenStudioAsync(studio.Address, "show the notes of the key, on a guitar, in D major, on strings 4-1");

    [Fact]
    public async Task A_claim_that_holds_is_told_so()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.FillAsync("#claim", "In every major key, on guitar strings 4-1, there are exactly 3 full frets.");
        await page.ClickAsync("text=Check it");

        await Assertions.Expect(page.Locator(".claims .verdict")).ToHaveTextAsync("Holds in 12 of 12 keys");
    }

    [Fact]
    public async Task A_claim_that_fails_shows_its_counterexample_on_the_neck()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.FillAsync("#claim", "In every major key, on guitar strings 6-1, there are exactly 4 full frets.");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".claims .verdict")).ToContainTextAsync("Fails");
        await page.ClickAsync("text=See the counterexample on the neck");

        Assert.Contains("on strings 6-1", await page.SentenceAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_claim_that_cannot_be_read_points_at_the_word()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.FillAsync("#claim", "In every major key, on guitar strings 4-1, there are exactly 3 fool frets.");
        await page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(page.Locator("#claim-error mark")).ToContainTextAsync("fool");
    }

    [Fact]
    public async Task Shapes_that_are_each_others_image_are_listed_whenever_their_list_is_opened()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var list = page.Locator(".findings details");

        await list.Locator("summary").ClickAsync();
        await list.Locator("li").First.WaitForAsync();
        // Where there are none, the list is taken away.
        await page.PickAsync("the strings", "on string 1");
        await Assertions.Expect(list).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("Control+z");
        await list.Locator("summary").ClickAsync();
        await list.Locator("li button").First.ClickAsync();

        Assert.StartsWith("Show the chords", await page.SentenceAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_related_can_be_looked_at()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.Locator(".findings li button", new() { HasText = "the seventh chords" }).First.ClickAsync();

        Assert.StartsWith("Show the seventh chords", await page.SentenceAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_long_claim_is_tried_slice_by_slice_and_can_be_stopped()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address);
        var page = opened.Page;

        await page.FillAsync("#claim", Long);
        await page.ClickAsync("text=Check it");
        var stop = page.Locator(".claims button", new() { HasText = "Stop" });
        await stop.WaitForAsync();
        // The page can be used meanwhile.
        await page.PickAsync("the key", "in F major");
        await Assertions.Expect(page.Locator("#dock-name")).ToHaveTextAsync("F major");
        await stop.ClickAsync();

        await Assertions.Expect(page.Locator("#claim-error")).ToContainTextAsync("Stopped");
        await Assertions.Expect(page.Locator("#verdict")).ToHaveCountAsync(0);
    }

    private const string Long =
        "In every major key, on every 8-string tuning with steps 1 to 11, there are exactly 3 full frets.";

    [Fact]
    public async Task What_takes_too_long_is_told_as_a_command()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address);
        var page = opened.Page;

        await page.FillAsync(
            "#claim",
            "in every mode, on every 8-string tuning with steps 1 to 11, there are exactly 3 full frets."
        );
        await page.ClickAsync("text=Check it");

        await Assertions
            .Expect(page.Locator("#claim-error code"))
            .ToContainTextAsync("./fretloom check \"In every mode, on every 8 string tuning");
    }

    [Fact]
    public async Task What_is_no_claim_can_be_shown()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address);
        var page = opened.Page;

        await page.FillAsync("#claim", "drop D tuning");
        await page.ClickAsync("text=Check it");
        await page.ClickAsync("#claim-error button");

        Assert.Contains("on a drop D guitar", await page.SentenceAsync(), StringComparison.Ordinal);
    }
}
