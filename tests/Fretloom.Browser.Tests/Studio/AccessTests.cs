using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>Everybody can use the studio: in every theme, on a phone, in German, by keyboard, and without anything from elsewhere.</summary>
public class AccessTests(Chromium chromium, RunningStudio studio)
{
    private const string Sevenths = "show the seventh chords, on strings 4-1, in D major";
    private static readonly Colours[] All = [Colours.Light, Colours.Dark, Colours.Forced];

    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task Axe_has_nothing_against_a_view_with_all_of_it_open(int width)
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths, width);
        var page = opened.Page;
        await page.Locator("#neck-grid [data-spot='4:7']").ClickAsync();
        if (width < 700)
        {
            await page.ClickAsync(".truths-open");
        }

        await page.FillAsync("#claim", "In every major key, on guitar strings 6-1, there are exactly 4 full frets.");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".claims .verdict").WaitForAsync();
        await opened.OpenTablesAsync();

        Assert.Equal("", await opened.AxeInAsync(All));
        await page.Keyboard.PressAsync("Escape");
        await page.ClickAsync("button.phrase[aria-label^='the key']");
        await page.Locator(".pop").WaitForAsync();
        Assert.Equal("", await opened.AxeInAsync(All));
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task Axe_has_nothing_against_what_a_class_sees(int width)
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths, width);
        await opened.Page.ShowToClassAsync();
        await opened.Page.Locator("#class h2").WaitForAsync();

        Assert.Equal("", await opened.AxeInAsync(All));
        await opened.Page.Keyboard.PressAsync("b");
        await opened.Page.Locator("#class .blank").WaitForAsync();
        Assert.Equal("", await opened.AxeInAsync(All));
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task Axe_has_nothing_against_the_lesson_nor_the_choice_after_a_clash(int width)
    {
        const string Name = "clash.md";
        var (path, cancel) = (Path.Combine(studio.Folder, Name), TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(path, "---\ntitle: Clash\nkey: D major\n---\n\nFirst.\n", cancel);
        await using var opened = await chromium.OpenStudioAsync($"{studio.Address}?lesson={Name}", width: width);
        var page = opened.Page;
        await Assertions.Expect(page.Locator(".cm-content")).ToContainTextAsync("First.");
        await page.FrameLocator("iframe.handout")
            .Locator("article p")
            .First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        Assert.Equal("", await opened.AxeInAsync(All));

        // Saves are held back, so that both change.
        await page.RouteAsync(
            "**/api/lessons/*",
            async route =>
            {
                if (route.Request.Method == "PUT")
                {
                    await route.AbortAsync();
                }
                else
                {
                    await route.ContinueAsync();
                }
            }
        );
        await page.Locator(".cm-content").ClickAsync();
        await page.Keyboard.InsertTextAsync("Mine.");
        await File.WriteAllTextAsync(path, "---\ntitle: Clash\nkey: D major\n---\n\nTheirs.\n", cancel);

        await page.GetByText("Theirs.").First.WaitForAsync();
        Assert.Equal("", await opened.AxeInAsync(All));
    }

    [Fact]
    public async Task In_the_colours_of_print_the_ground_is_white_on_a_dark_system_too()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths, colours: Colours.Dark);
        var page = opened.Page;

        await page.Locator("select").First.SelectOptionAsync("print");

        Assert.Equal(
            "rgb(255, 255, 255)",
            await page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor")
        );
        Assert.Equal("", string.Join('\n', await opened.AxeAsync()));
    }

    [Fact]
    public async Task German_is_spoken_where_it_is_asked_for_and_remembered()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths);
        var page = opened.Page;

        await page.Locator("select").Nth(1).SelectOptionAsync("de");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Was hier gilt" })).ToBeVisibleAsync();
        Assert.Equal("de", await page.EvaluateAsync<string>("document.documentElement.lang"));
        await page.ReloadAsync();

        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Was hier gilt" })).ToBeVisibleAsync();
        Assert.Equal("", string.Join('\n', await opened.AxeAsync()));
    }

    [Fact]
    public async Task A_view_is_changed_by_keys_alone()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths);
        var page = opened.Page;

        // From the link that skips to the sentence, on by the Tab key to the key.
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        for (var press = 0; press < 12 && !await IsOnKeyAsync(); press++)
        {
            await page.Keyboard.PressAsync("Tab");
        }

        Assert.True(await IsOnKeyAsync());
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Locator(".pop input").WaitForAsync();
        await page.Keyboard.TypeAsync("in Eb major");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#dock-name")).ToHaveTextAsync("E♭ major");

        Task<bool> IsOnKeyAsync() =>
            page.EvaluateAsync<bool>(
                "document.activeElement.getAttribute('aria-label')?.startsWith('the key') ?? false"
            );
    }

    [Fact]
    public async Task Nothing_is_asked_of_any_address_but_the_host()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths);

        Assert.NotEmpty(opened.Requests);
        Assert.All(opened.Requests, address => Assert.StartsWith(studio.Address, address, StringComparison.Ordinal));
    }
}
