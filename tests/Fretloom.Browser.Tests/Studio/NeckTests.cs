using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>The neck: it is pointed at, walked, and shapes are put together on it.</summary>
public class NeckTests(Chromium chromium, RunningStudio studio)
{
    private Task<OpenPage> OpenAsync(string sentence = "show the notes of the key, in D major, frets 0-12") =>
        chromium.OpenStudioAsync(studio.Address, sentence);

    private static ILocator Spot(IPage page, string spot) => page.Locator($"#neck-grid [data-spot='{spot}']");

    private static async Task ChooseAsync(IPage page, params string[] spots)
    {
        foreach (var spot in spots)
        {
            await Spot(page, spot).ClickAsync();
            await Assertions.Expect(Spot(page, spot)).ToHaveAttributeAsync("aria-selected", "true");
        }
    }

    [Fact]
    public async Task Every_cell_lies_where_its_mark_is_drawn()
    {
        await using var opened = await OpenAsync();
        // The cells come after the picture.
        await Spot(opened.Page, "1:0").WaitForAsync();

        // The marks of the picture are circles; each has its middle inside the cell of its spot.
        var astray = await opened.Page.EvaluateAsync<int>(
            """
            (() => {
                const cells = [...document.querySelectorAll('#neck-grid [data-spot]')].map(cell => cell.getBoundingClientRect());
                const marks = [...document.querySelectorAll('.dock .now g[data-part="marks"] circle')].map(mark => mark.getBoundingClientRect());
                if (marks.length < 40) return -1;
                return marks.filter(mark => {
                    const [x, y] = [mark.left + mark.width / 2, mark.top + mark.height / 2];
                    return !cells.some(cell => x > cell.left && x < cell.right && y > cell.top + cell.height * 0.3 && y < cell.bottom - cell.height * 0.3);
                }).length;
            })()
            """
        );

        Assert.Equal(0, astray);
    }

    [Fact]
    public async Task A_shape_is_put_together_named_measured_and_fingered()
    {
        await using var opened = await OpenAsync("show the notes of the key, in C major, frets 0-5");
        var page = opened.Page;

        // The C chord of first position: common practice, no source.
        await ChooseAsync(page, "5:3", "4:2", "3:0", "2:1", "1:0");

        var words = await page.Locator(".built [role=status]").InnerTextAsync();
        Assert.StartsWith("C", words, StringComparison.Ordinal);
        Assert.Contains("3-fret span", words, StringComparison.Ordinal);
        Assert.Contains("fingers 3 2 0 1 0", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shape_is_carried_turned_mirrored_and_put_down()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await ChooseAsync(page, "4:5", "3:4", "2:3");

        async Task<string[]> ChosenAsync() =>
            await page.EvaluateAsync<string[]>(
                "[...document.querySelectorAll('#neck-grid [aria-selected=true]')].map(cell => cell.dataset.spot).sort()"
            );

        await page.ClickAsync("text=One fret up");
        await Assertions.Expect(Spot(page, "4:6")).ToHaveAttributeAsync("aria-selected", "true");
        Assert.Equal(["2:4", "3:5", "4:6"], await ChosenAsync());
        await page.ClickAsync("text=To nearer strings");
        await Assertions.Expect(Spot(page, "1:4")).ToHaveAttributeAsync("aria-selected", "true");
        Assert.Equal(["1:4", "2:5", "3:6"], await ChosenAsync());
        await page.ClickAsync("text=Mirror");
        await Assertions.Expect(Spot(page, "1:6")).ToHaveAttributeAsync("aria-selected", "true");
        Assert.Equal(["1:6", "2:5", "3:4"], await ChosenAsync());
        await page.ClickAsync(".built >> text=Half-turn");
        Assert.Equal(["1:6", "2:5", "3:4"], await ChosenAsync());
        await page.ClickAsync("text=Put it down");
        await Assertions.Expect(page.Locator(".built")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task What_is_pointed_at_is_told_with_its_distance_from_the_last_one()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await ChooseAsync(page, "4:7");

        await Spot(page, "3:9").HoverAsync();

        // The note of the third string, ninth fret, and the triads of D major that have an E.
        var words = page.Locator(".pointed");
        await Assertions.Expect(words).ToContainTextAsync("String 3, fret 9: E (E4) · degree 2 · ");
        await Assertions.Expect(words).ToContainTextAsync("mm from 4:7");
        await Assertions.Expect(words).ToContainTextAsync("in ii, V, vii°; in ii7, ");
    }

    [Fact]
    public async Task The_neck_is_one_stop_of_the_tab_key_and_walked_with_arrows()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.Locator("#neck-grid [tabindex='0']").FocusAsync();
        Assert.Equal(1, await page.Locator("#neck-grid [tabindex='0']").CountAsync());
        foreach (var key in new[] { "ArrowDown", "ArrowDown", "ArrowRight", "ArrowRight", "Enter" })
        {
            await page.Keyboard.PressAsync(key);
        }

        await Assertions.Expect(Spot(page, "3:2")).ToHaveAttributeAsync("aria-selected", "true");
        await Assertions.Expect(Spot(page, "3:2")).ToBeFocusedAsync();
        Assert.Equal("fret 2: A3, degree 5", await Spot(page, "3:2").GetAttributeAsync("aria-label"));
        Assert.Equal(1, await page.Locator("#neck-grid [tabindex='0']").CountAsync());
    }

    [Fact]
    public async Task A_left_handed_neck_runs_from_the_right_and_arrows_go_where_they_point()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.ClickAsync("text=Left-handed");
        await Assertions.Expect(page.Locator("#neck-grid")).ToHaveAttributeAsync("data-mirrored", "true");
        var open = (await Spot(page, "1:0").BoundingBoxAsync())!;
        var twelfth = (await Spot(page, "1:12").BoundingBoxAsync())!;
        Assert.True(open.X > twelfth.X);

        await Spot(page, "1:3").FocusAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        await Assertions.Expect(Spot(page, "1:4")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task The_neck_grows_shrinks_and_folds_away()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var before = (await Spot(page, "1:5").BoundingBoxAsync())!.Width;

        await page.ClickAsync("[aria-label='Larger neck']");
        await Assertions.Expect(page.GetByText("125 %")).ToBeVisibleAsync();
        Assert.True((await Spot(page, "1:5").BoundingBoxAsync())!.Width > before * 1.2);
        await page.ClickAsync("text=Fold the neck away");
        await Assertions.Expect(page.Locator("#neck")).ToBeHiddenAsync();
        await page.ClickAsync("text=Open the neck");
        await Assertions.Expect(page.Locator("#neck")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_card_brings_its_shape_out_on_the_neck()
    {
        await using var opened = await OpenAsync("show the seventh chords, on strings 4-1, in D major");
        var page = opened.Page;

        await page.Locator("main .shape").Nth(1).ClickAsync();

        await Assertions.Expect(page.Locator("#dock-name")).ToHaveTextAsync("F♯m7");
        await Assertions.Expect(page.Locator("main .shape").Nth(1)).ToHaveAttributeAsync("aria-pressed", "true");
    }

    [Fact]
    public async Task Strings_that_are_left_out_are_stepped_over_and_Undo_leaves_the_focus_where_it_was()
    {
        await using var opened = await OpenAsync("show the notes of the key, on strings 6, 4 and 2, frets 0-5");
        var page = opened.Page;

        await Spot(page, "2:3").FocusAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(Spot(page, "4:3")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Spot(page, "4:3")).ToHaveAttributeAsync("aria-selected", "true");
        await page.Keyboard.PressAsync("Control+z");

        await Assertions.Expect(Spot(page, "4:3")).ToHaveAttributeAsync("aria-selected", "false");
        await Assertions.Expect(Spot(page, "4:3")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Spots_that_another_instrument_lacks_are_let_go_with_the_next_choice()
    {
        await using var opened = await OpenAsync("show the notes of the key, on a guitar");
        var page = opened.Page;
        await ChooseAsync(page, "6:3");
        await page.PickAsync("the instrument", "on a ukulele");
        await Assertions.Expect(page.Locator(".built")).ToHaveCountAsync(0);

        await ChooseAsync(page, "4:2");

        await Assertions.Expect(page.Locator(".built")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task The_switch_at_the_neck_says_the_labels_in_the_sentence()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var names = page.GetByRole(AriaRole.Radio, new() { Name = "Names", Exact = true });
        var degrees = page.GetByRole(AriaRole.Radio, new() { Name = "Degrees", Exact = true });

        await Assertions.Expect(degrees).ToBeCheckedAsync();
        await page.Locator("fieldset label", new() { HasText = "Names" }).ClickAsync();
        Assert.EndsWith("as names", await page.SentenceAsync(), StringComparison.Ordinal);
        await Assertions
            .Expect(page.Locator(".dock .now g[data-part='marks'] text").First)
            .ToHaveTextAsync(new Regex("^E[A-G]+$"));
        await Assertions
            .Expect(page.GetByRole(AriaRole.Radio, new() { Name = "Fingers", Exact = true }))
            .ToBeDisabledAsync();
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(degrees).ToBeCheckedAsync();
        await degrees.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");

        await Assertions.Expect(names).ToBeCheckedAsync();
        Assert.EndsWith("as names", await page.SentenceAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_spot_tells_its_triads_and_seventh_chords_to_eyes_and_ears()
    {
        await using var opened = await OpenAsync("show the notes of the key, in C major, frets 0-12");
        var page = opened.Page;

        await Spot(page, "4:3").FocusAsync();

        const string Chords = "in ii, IV, vii°; in ii7, IVmaj7, V7, viiø7";
        await Assertions.Expect(page.Locator(".pointed")).ToContainTextAsync(Chords);
        await Assertions.Expect(page.Locator(".dock [role=status].unseen")).ToHaveTextAsync(Chords);
    }

    [Fact]
    public async Task T_shows_the_twin_of_a_shape_and_takes_it_away()
    {
        await using var opened = await OpenAsync("show the chord V7, in C major, on strings 4-1, frets 0-12");
        var page = opened.Page;
        await ChooseAsync(page, "4:5", "3:4", "2:3", "1:1");

        await Spot(page, "4:5").FocusAsync();
        await page.Keyboard.PressAsync("t");
        await Assertions.Expect(page.Locator(".dock .now g[data-part='twin']")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".pointed")).ToContainTextAsync("4:9 3:7 2:6 1:5");
        await page.Keyboard.PressAsync("t");

        await Assertions.Expect(page.Locator(".dock .now g[data-part='twin']")).ToHaveCountAsync(0);
    }

    [Theory]
    [InlineData(868)]
    [InlineData(700)]
    public async Task The_neck_leaves_the_sheet_at_least_its_own_height(int height)
    {
        await using var opened = await OpenAsync();
        await opened.Page.SetViewportSizeAsync(1280, height);

        var (neck, whole) = ((await opened.Page.Locator(".dock").BoundingBoxAsync())!.Height, (double)height);

        Assert.InRange(neck, 100, 0.47 * whole);
    }
}
