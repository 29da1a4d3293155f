using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>Everybody can use the studio: in every theme, on a phone, in German, by keyboard, and without anything from elsewhere.</summary>
public class AccessTests(Chromium chromium, RunningStudio studio)
{
    private const string Sevenths = "show the seventh chords, on strings 4-1, in D major";

    [Theory]
    [InlineData(1280, Colours.Light)]
    [InlineData(1280, Colours.Dark)]
    [InlineData(1280, Colours.Forced)]
    [InlineData(390, Colours.Light)]
    [InlineData(390, Colours.Dark)]
    public async Task Axe_has_nothing_against_a_view_with_all_of_it_open(int width, Colours colours)
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths, width, colours);
        var page = opened.Page;
        await page.Locator("#neck-grid [data-spot='4:7']").ClickAsync();
        await page.FillAsync("#claim", "In every major key, on guitar strings 6-1, there are exactly 4 full frets.");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".claims .verdict").WaitForAsync();
        await opened.OpenTablesAsync();

        Assert.Equal("", string.Join('\n', await opened.AxeAsync()));
        await page.ClickAsync("button.phrase[aria-label^='the key']");
        await page.Locator(".pop").WaitForAsync();
        Assert.Equal("", string.Join('\n', await opened.AxeAsync()));
    }

    [Theory]
    [InlineData(Colours.Light)]
    [InlineData(Colours.Dark)]
    public async Task Axe_has_nothing_against_what_a_class_sees(Colours colours)
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths, colours: colours);
        await opened.Page.ClickAsync("text=Show to a class");
        await opened.Page.Locator("#class h2").WaitForAsync();

        Assert.Equal("", string.Join('\n', await opened.AxeAsync()));
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

    [Theory]
    [InlineData(Sevenths)]
    [InlineData("show the notes of the key and the landmarks")]
    public async Task On_a_phone_nothing_is_wider_than_the_screen_and_everything_is_large_enough_to_touch(
        string sentence
    )
    {
        await using var opened = await chromium.OpenStudioAsync(
            studio.Address,
            sentence,
            width: 390,
            options: new()
            {
                ServiceWorkers = ServiceWorkerPolicy.Block,
                HasTouch = true,
                IsMobile = true,
            }
        );
        var page = opened.Page;

        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        // A phrase in the sentence is as wide as its words, and as high as its line (WCAG 2.2, 2.5.8: inline).
        var small = await page.EvaluateAsync<string[]>(
            """
            [...document.querySelectorAll('button:not(.phrase), select, textarea')]
                .map(one => [one, one.getBoundingClientRect()])
                .filter(([, box]) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
                .map(([one, box]) => `${one.outerHTML.slice(0, 90)} ${box.width}x${box.height}`)
            """
        );
        Assert.Empty(small);
    }

    [Fact]
    public async Task German_is_spoken_where_it_is_asked_for_and_remembered()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths);
        var page = opened.Page;

        await page.Locator("select").Nth(1).SelectOptionAsync("de");
        await Assertions.Expect(page.GetByText("Was hier gilt")).ToBeVisibleAsync();
        Assert.Equal("de", await page.EvaluateAsync<string>("document.documentElement.lang"));
        await page.ReloadAsync();

        await Assertions.Expect(page.GetByText("Was hier gilt")).ToBeVisibleAsync();
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
