using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>The studio on a phone that is 390 CSS pixels wide.</summary>
public class PhoneTests(Chromium chromium, RunningStudio studio)
{
    private const string Sevenths = "show the seventh chords, on strings 4-1, in D major";
    private const string Landmarks = "show the notes of the key and the landmarks";

    private Task<OpenPage> OpenAsync(string? sentence, string language = "en") =>
        chromium.OpenStudioAsync(
            studio.Address,
            sentence,
            width: 390,
            options: new()
            {
                ServiceWorkers = ServiceWorkerPolicy.Block,
                HasTouch = true,
                IsMobile = true,
                Locale = language,
            }
        );

    // Every control that is seen, and every spot of the neck, that is smaller than a finger needs.
    private static Task<string[]> TooSmallAsync(IPage page) =>
        page.EvaluateAsync<string[]>(
            """
            [...document.querySelectorAll("button, a[href], select, textarea, summary, [role=gridcell], [role=option], label:has(input)")]
                .map(one => [one, one.getBoundingClientRect()])
                .filter(([one, box]) => box.width > 1 && (box.height < 43.5 || box.width < 43.5) && one.checkVisibility())
                .map(([one, box]) => `${one.outerHTML.slice(0, 90)} ${box.width.toFixed(1)}x${box.height.toFixed(1)}`)
            """
        );

    // What is still being laid out may be wider for a moment.
    private static async Task FitsAsync(IPage page)
    {
        await page.WaitForFunctionAsync("document.documentElement.scrollWidth === 390");
        Assert.Empty(await TooSmallAsync(page));
    }

    [Theory]
    [InlineData(Sevenths, "en")]
    [InlineData(Sevenths, "de")]
    [InlineData(Landmarks, "en")]
    [InlineData(Landmarks, "de")]
    [InlineData("show the notes of the key, on a bass, frets 0-24", "de")]
    public async Task Nothing_is_wider_than_the_screen_and_everything_is_large_enough_to_touch(
        string sentence,
        string language
    )
    {
        await using var opened = await OpenAsync(sentence, language);
        var page = opened.Page;
        await page.Locator("#neck-grid [role=gridcell]").First.WaitForAsync();

        await FitsAsync(page);
        await page.Locator("#neck-grid [role=gridcell]").Nth(3).TapAsync();
        await page.Locator(".built").WaitForAsync();
        await page.Locator(".truths-open").TapAsync();
        await page.Locator("#truths.is-sheet").WaitForAsync();
        await opened.OpenTablesAsync();
        await FitsAsync(page);
        await page.Locator("#truths .fold").TapAsync();
        await page.Locator("button.phrase").First.TapAsync();
        await page.Locator(".pop [role=option]").First.WaitForAsync();
        await FitsAsync(page);
    }

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public async Task The_lesson_and_the_class_view_fit_too(string language)
    {
        await using var opened = await OpenAsync(Sevenths, language);
        var page = opened.Page;
        await page.Locator("header .action:has-text('class'), header .action:has-text('Klasse')").First.TapAsync();
        await page.Locator("#class h2").WaitForAsync();
        await FitsAsync(page);
        await page.Keyboard.PressAsync("Escape");

        await page.GotoAsync($"{studio.Address}?lesson=the-cloth-of-a-key.md");
        await page.Locator(".cm-content").WaitForAsync();
        await FitsAsync(page);
    }

    [Fact]
    public async Task The_sentence_folds_to_one_line_that_scrolls_along_and_its_pickers_still_open()
    {
        await using var opened = await OpenAsync(Sevenths);
        var page = opened.Page;
        await page.SetViewportSizeAsync(390, 640);
        var line = page.Locator("#asking .line");
        var whole = (await line.BoundingBoxAsync())!.Height;
        Assert.True(whole > 80);

        await page.EvaluateAsync("scrollTo(0, 600)");
        await page.Locator("#asking.is-folded").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        var folded = (await line.BoundingBoxAsync())!;
        Assert.Equal(0, folded.Y);
        Assert.InRange(folded.Height, 44, 60);
        Assert.True(
            await page.EvaluateAsync<bool>(
                "(one => one.scrollWidth > one.clientWidth)(document.querySelector('#asking .said'))"
            )
        );
        await page.Locator("button.phrase").First.TapAsync();
        await Assertions.Expect(page.Locator(".pop")).ToBeInViewportAsync();
        await page.Keyboard.PressAsync("Escape");

        await page.EvaluateAsync("scrollTo(0, 0)");
        await Assertions.Expect(page.Locator("#asking.is-folded")).ToHaveCountAsync(0);
        Assert.Equal(whole, (await line.BoundingBoxAsync())!.Height);
    }

    [Fact]
    public async Task What_is_true_is_a_sheet_over_the_page_that_closes_by_button_and_key()
    {
        await using var opened = await OpenAsync(Sevenths);
        var page = opened.Page;
        var (sheet, open) = (page.Locator("#truths"), page.Locator(".truths-open"));
        await Assertions.Expect(sheet).ToBeHiddenAsync();

        await open.TapAsync();
        await Assertions.Expect(sheet).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#truths .fold")).ToBeFocusedAsync();
        Assert.Equal("", string.Join('\n', await opened.AxeAsync()));
        var box = (await sheet.BoundingBoxAsync())!;
        Assert.Equal((0, 390, 900), (box.X, box.Width, box.Y + box.Height));
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(sheet).ToBeHiddenAsync();
        await Assertions.Expect(open).ToBeFocusedAsync();

        await open.TapAsync();
        // It can be closed when the phone was turned meanwhile.
        await page.SetViewportSizeAsync(844, 390);
        await page.Locator("#truths .fold").TapAsync();
        await page.SetViewportSizeAsync(390, 900);
        await Assertions.Expect(sheet).ToBeHiddenAsync();
    }
}
