using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>The pictures of what is shown: those that may be wanted next stand in the page and are not seen.</summary>
public class CardsTests(Chromium chromium, RunningStudio studio)
{
    private const string Triads = "show the triads, on a guitar, in D major, frets 0-7";

    [Theory]
    [InlineData(1280)]
    [InlineData(960)]
    [InlineData(560)]
    public async Task What_may_be_wanted_next_is_out_of_sight_and_takes_no_room(int width)
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Triads);
        var page = opened.Page;
        await page.SetViewportSizeAsync(width, 800);
        await page.Locator(".view .now svg").First.WaitForAsync();
        var before = await RoomAsync(page);

        await page.ClickAsync("button.phrase[aria-label^='what to show']");
        await page.Locator(".view .near svg").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.WaitForTimeoutAsync(1000);

        Assert.Equal(before, await RoomAsync(page));
        Assert.True(
            await page.EvaluateAsync<bool>(
                """
                () => {
                  const seen = document.querySelector(".pictures").getBoundingClientRect();
                  return [...document.querySelectorAll(".view .near svg")].every(svg => svg.getBoundingClientRect().right < seen.left);
                }
                """
            )
        );
    }

    [Fact]
    public async Task Each_shape_is_pressed_where_it_is_drawn_and_only_one_set_of_pictures_is_seen()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Triads);
        var page = opened.Page;
        var shape = page.Locator(".view .shape").Nth(2);

        await shape.FocusAsync();
        await page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(shape).ToHaveAttributeAsync("aria-pressed", "true");
        await Assertions.Expect(shape).ToBeFocusedAsync();
        await Assertions.Expect(page.Locator(".view .now")).ToHaveCountAsync(1);
        Assert.Equal(
            await PlacesAsync(page, ".view .now .board"),
            await PlacesAsync(page, ".view .pictures > .row .board")
        );

        await page.Keyboard.PressAsync("Control+z");

        await Assertions.Expect(shape).ToHaveAttributeAsync("aria-pressed", "false");
        await Assertions
            .Expect(page.Locator(".view .pictures svg"))
            .ToHaveCountAsync(await page.Locator(".view .pictures > .row").CountAsync());
    }

    [Fact]
    public async Task What_was_foreseen_is_there_when_the_pick_has_been_handled()
    {
        await using var opened = await chromium.OpenStudioAsync(
            studio.Address,
            "show the notes of the key, on a guitar, in D major"
        );
        var page = opened.Page;
        await page.ClickAsync("button.phrase[aria-label^='the key']");
        await page.Locator(".view .near svg title", new() { HasText = "G major" })
            .First.WaitForAsync(new() { State = WaitForSelectorState.Attached });

        // Asked before anything else can happen in the page.
        var seen = await page.EvaluateAsync<string>(
            """
            () => {
              const option = [...document.querySelectorAll(".pop [role=option]")].find(one => one.textContent === "in G major");
              option.dispatchEvent(new MouseEvent("mousedown", { bubbles: true, button: 0 }));
              return [".dock .now title", ".view .now title", ".dock h2"].map(one => document.querySelector(one).textContent).join("; ");
            }
            """
        );

        Assert.Equal(3, seen.Split("G major").Length - 1);
    }

    private static Task<double[]> RoomAsync(IPage page) =>
        page.EvaluateAsync<double[]>(
            "() => [document.querySelector('main'), document.documentElement].flatMap(one => [one.scrollWidth, one.scrollHeight])"
        );

    private static Task<string> PlacesAsync(IPage page, string boards) =>
        page.EvaluateAsync<string>(
            $$"""
            () => [...document.querySelectorAll("{{boards}}")]
              .map(board => board.getBoundingClientRect())
              .map(at => [at.left, at.top, at.width, at.height].map(Math.round).join(" "))
              .join("; ")
            """
        );
}
