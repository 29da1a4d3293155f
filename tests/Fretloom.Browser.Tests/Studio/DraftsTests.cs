using System.Text.Json;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>The browser keeps what was written and never came to the disk, by lesson and tab.</summary>
public sealed class DraftsTests(Chromium chromium, RunningStudio studio)
{
    private const string Script = "import('/write/editor.js')";
    private const string Name = "a lesson of mine.md";

    private async Task<(OpenPage One, IPage Other)> TwoTabsAsync()
    {
        var one = await chromium.OpenStudioAsync(studio.Address);
        var other = await one.Page.Context.NewPageAsync();
        await other.GotoAsync(studio.Address);
        return (one, other);
    }

    private static Task<bool> KeepAsync(IPage page, string text, string name = Name) =>
        page.EvaluateAsync<bool>(
            $"([name, text]) => {Script}.then(drafts => drafts.keep(name, 'tag', text))",
            new[] { name, text }
        );

    private static async Task AskAsync(IPage page, string what, string argument) =>
        await page.EvaluateAsync($"argument => {Script}.then(drafts => drafts.{what}(argument))", argument);

    private static async Task<List<(string Key, string Text, string ETag)>> LeftAsync(IPage page, string name = Name)
    {
        var json = await page.EvaluateAsync<string>($"name => {Script}.then(drafts => drafts.leftBehind(name))", name);
        using var drafts = JsonDocument.Parse(json);
        return
        [
            .. drafts
                .RootElement.EnumerateArray()
                .Select(draft => (Said(draft, "key"), Said(draft, "text"), Said(draft, "etag"))),
        ];

        static string Said(JsonElement draft, string name) => draft.GetProperty(name).GetString()!;
    }

    [Fact]
    public async Task What_a_living_tab_keeps_is_its_own_and_what_a_closed_one_kept_is_offered()
    {
        var (one, other) = await TwoTabsAsync();
        await using var opened = one;
        Assert.True(await KeepAsync(other, "First."));
        Assert.True(await KeepAsync(other, "Second."));
        Assert.Empty(await LeftAsync(one.Page));
        Assert.Empty(await LeftAsync(other));

        await other.CloseAsync();
        var left = await LeftAsync(one.Page);
        // A tab takes a moment to be gone.
        for (var look = 0; look < 300 && left.Count == 0; look++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
            left = await LeftAsync(one.Page);
        }

        Assert.Equal([("Second.", "tag")], left.Select(draft => (draft.Text, draft.ETag)));
        Assert.Empty(await LeftAsync(one.Page, "another.md"));

        await AskAsync(one.Page, "discard", left[0].Key);
        Assert.Empty(await LeftAsync(one.Page));
    }

    [Fact]
    public async Task What_is_set_aside_is_offered_the_newest_first_and_no_longer_touched()
    {
        var (one, other) = await TwoTabsAsync();
        await using var opened = one;
        await KeepAsync(one.Page, "Old.");
        await AskAsync(one.Page, "setAside", Name);
        await Task.Delay(20, TestContext.Current.CancellationToken);
        await KeepAsync(one.Page, "New.");
        await AskAsync(one.Page, "setAside", Name);
        await KeepAsync(one.Page, "Newest.");
        await AskAsync(one.Page, "drop", Name);

        Assert.Equal(["New.", "Old."], (await LeftAsync(one.Page)).Select(draft => draft.Text));
        Assert.Equal(["New.", "Old."], (await LeftAsync(other)).Select(draft => draft.Text));
    }

    [Fact]
    public async Task What_came_to_the_disk_is_not_offered()
    {
        var (one, other) = await TwoTabsAsync();
        await using var opened = one;
        await KeepAsync(other, "Saved.");
        await KeepAsync(other, "Not saved.", "another.md");
        await AskAsync(other, "drop", Name);
        await other.CloseAsync();

        for (var look = 0; look < 300 && (await LeftAsync(one.Page, "another.md")).Count == 0; look++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.Equal(["Not saved."], (await LeftAsync(one.Page, "another.md")).Select(draft => draft.Text));
        Assert.Empty(await LeftAsync(one.Page));
    }

    [Fact]
    public async Task A_browser_that_has_no_room_says_so_once()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address);
        await opened.Page.EvaluateAsync(
            """
            globalThis.told = 0;
            addEventListener("fretloom-not-kept", () => told++);
            Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); };
            true;
            """
        );

        Assert.False(await KeepAsync(opened.Page, "One."));
        Assert.False(await KeepAsync(opened.Page, "Two."));
        Assert.Equal(1, await opened.Page.EvaluateAsync<int>("told"));
    }

    [Fact]
    public async Task What_cannot_be_read_is_passed_over()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address);
        await opened.Page.EvaluateAsync($"localStorage.setItem('fretloom draft gone {Name}', '{{broken')");

        Assert.Empty(await LeftAsync(opened.Page));
    }
}
