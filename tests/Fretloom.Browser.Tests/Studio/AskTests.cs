using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>The sentence bar: every phrase is picked or typed, and what is seen follows.</summary>
public class AskTests(Chromium chromium, RunningStudio studio)
{
    private const string InD = "show the notes of the key, on a guitar, in D major, on strings 4-1, frets 0-12";

    private Task<OpenPage> OpenAsync(string sentence = InD) => chromium.OpenStudioAsync(studio.Address, sentence);

    private static ILocator FullFrets(IPage page) => page.Locator(".findings dd").First;

    [Fact]
    public async Task A_phrase_that_is_picked_changes_sentence_neck_findings_and_address()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await Assertions.Expect(FullFrets(page)).ToHaveTextAsync("0, 2, 7, 12");

        await page.PickAsync("the key", "in F major");

        await Assertions.Expect(FullFrets(page)).ToHaveTextAsync("3, 5, 10");
        Assert.Contains("in F major", await page.SentenceAsync(), StringComparison.Ordinal);
        await Assertions.Expect(page.Locator("#dock-name")).ToHaveTextAsync("F major");
        Assert.Contains(
            "in F major",
            Uri.UnescapeDataString(new Uri(page.Url).Query.Replace('+', ' ')),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_picker_is_opened_walked_and_left_by_keys()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var key = page.Locator("button.phrase[aria-label^='the key']");

        await key.FocusAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Locator(".pop input").WaitForAsync();
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Locator(".pop")).ToHaveCountAsync(0);
        await Assertions.Expect(key).ToBeFocusedAsync();

        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".pop input")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Enter");

        // After D the next in fifths.
        await Assertions.Expect(key.Locator(".words")).ToHaveTextAsync("in A major");
        await Assertions.Expect(key).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Another_instrument_takes_away_the_strings_it_lacks()
    {
        await using var opened = await OpenAsync(
            "show the notes of the key, on a guitar, in D major, on strings 6-3, frets 0-20"
        );
        var page = opened.Page;

        await page.PickAsync("the instrument", "on a ukulele");

        await Assertions
            .Expect(page.Locator("button.phrase[aria-label^='the instrument'] .words"))
            .ToHaveTextAsync("on a ukulele");
        Assert.DoesNotContain("6-3", await page.SentenceAsync(), StringComparison.Ordinal);
        await Assertions.Expect(page.Locator("#neck-grid [role=row]")).ToHaveCountAsync(5);
    }

    [Fact]
    public async Task A_typed_sentence_with_an_error_points_at_the_word_and_can_be_mended()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.ClickAsync("text=Type it");
        await page.FillAsync("#whole", "show the notes of the key, on a gitar, in D major");
        await Assertions.Expect(page.Locator("#sentence-error mark")).ToHaveTextAsync("gitar");
        await page.Locator("#sentence-error button").First.ClickAsync();
        await Assertions.Expect(page.Locator("#sentence-error mark")).ToHaveCountAsync(0);
        await page.FocusAsync("#whole");
        await page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(page.GetByText("Type it")).ToBeFocusedAsync();
        Assert.Contains("on a guitar", await page.SentenceAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_a_chord_has_no_shape_with_its_root_lowest_a_button_asks_for_inversions()
    {
        // 3333, whose lowest note is E flat: common practice, no source.
        await using var opened = await OpenAsync("show the chord Cm7, one note per string, on a ukulele");
        var page = opened.Page;
        await Assertions.Expect(page.Locator(".view")).ToContainTextAsync("No shape of Cm7 fits");

        await page.ClickAsync(".view button:text-is('in every inversion')");

        await Assertions.Expect(page.Locator("#sentence .said")).ToContainTextAsync("in every inversion");
        await Assertions.Expect(page.Locator(".view .row").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Steps_are_named_and_taken_back_and_done_again_by_keys()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.PickAsync("the key", "in F major");
        await page.PickAsync("the strings", "on strings 3-1");
        await Assertions.Expect(page.GetByText("Undo “on strings 3-1”")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("Control+z");
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(page.Locator("#sentence .said")).ToContainTextAsync("in D major, on strings 4-1");
        await page.Keyboard.PressAsync("Control+Shift+Z");

        await Assertions.Expect(page.Locator("#sentence .said")).ToContainTextAsync("in F major, on strings 4-1");
    }

    [Fact]
    public async Task More_can_be_said_and_left_unsaid_again()
    {
        await using var opened = await OpenAsync("show the seventh chords, on strings 4-1");
        var page = opened.Page;

        await page.PickAsync("Say more", "in drop 2");
        Assert.Contains("in drop 2", await page.SentenceAsync(), StringComparison.Ordinal);
        await page.ClickAsync("button.phrase[aria-label*='drop 2']");
        await page.ClickAsync(".pop .leave");

        Assert.DoesNotContain("drop 2", await page.SentenceAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("show the seventh chords, on a low-G ukulele, in Bb major")]
    [InlineData("show C, F and G7, on a ukulele, strummed")]
    [InlineData("show the symmetries, on a bass, in E minor")]
    [InlineData("show every A, on a banjo")]
    [InlineData("show the notes of the key, on a banjo, on string 5, frets 0-3")]
    [InlineData("show the scale, 3 notes a string, on a mandolin, in G major, for a left-handed player")]
    public async Task A_link_shows_its_view_without_complaint(string sentence)
    {
        await using var opened = await OpenAsync(sentence);

        await Assertions.Expect(opened.Page.Locator("#sentence-error mark")).ToHaveCountAsync(0);
        await Assertions.Expect(opened.Page.Locator(".dock .now svg")).ToBeVisibleAsync();
        await Assertions.Expect(opened.Page.Locator("#blazor-error-ui")).ToBeHiddenAsync();
        Assert.DoesNotContain(
            opened.Complaints,
            words => !words.StartsWith("Service Worker registration blocked", StringComparison.Ordinal)
        );
    }

    private static string Shown(IPage page) =>
        System.Web.HttpUtility.ParseQueryString(new Uri(page.Url).Query)["show"] ?? "";

    // The address follows what is seen.
    private static async Task ShownAsync(IPage page, string words) =>
        await page.WaitForFunctionAsync(
            "words => new URLSearchParams(location.search).get('show')?.includes(words)",
            words
        );

    // All that is written on the neck and said of its spots; how wide it is hangs on the room.
    private static async Task<string> NeckAsync(IPage page)
    {
        await page.Locator("#neck-grid [role=gridcell]")
            .First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        return await page.EvaluateAsync<string>(
            "[...document.querySelectorAll('.dock .now text, .dock .now title, #neck-grid [role]')].map(one => one.ariaLabel ?? one.textContent).join('\\n')"
        );
    }

    [Fact]
    public async Task Back_and_forward_step_through_the_views()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var said = page.Locator("#sentence .said");

        await page.PickAsync("the key", "in F major");
        await ShownAsync(page, "in F major");
        await page.PickAsync("the strings", "on strings 3-1");
        await ShownAsync(page, "on strings 3-1");
        await page.GoBackAsync();
        await Assertions.Expect(said).ToContainTextAsync("in F major, on strings 4-1");
        await Assertions.Expect(page.Locator("#dock-name")).ToHaveTextAsync("F major");
        await page.GoBackAsync();
        await Assertions.Expect(said).ToContainTextAsync("in D major, on strings 4-1");
        await page.GoForwardAsync();
        await Assertions.Expect(said).ToContainTextAsync("in F major, on strings 4-1");
        // What came back by the browser's button can be taken back like any step.
        await page.Keyboard.PressAsync("Control+z");

        await Assertions.Expect(said).ToContainTextAsync("in D major, on strings 4-1");
    }

    [Fact]
    public async Task Walking_a_list_and_typing_leave_one_view_behind()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var before = await page.EvaluateAsync<int>("history.length");

        await page.Locator("button.phrase[aria-label^='the key']").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        for (var step = 0; step < 5; step++)
        {
            await page.Keyboard.PressAsync("ArrowDown");
        }

        await page.Keyboard.PressAsync("Escape");
        Assert.Equal(before, await page.EvaluateAsync<int>("history.length"));
        await page.ClickAsync("text=Type it");
        await page.FillAsync("#whole", "show the thirds");
        await page.FillAsync("#whole", "show the thirds, in G major");
        Assert.Equal(before, await page.EvaluateAsync<int>("history.length"));
        await page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(page.Locator("#sentence .said")).ToContainTextAsync("in G major");
        // The address follows what is seen.
        await page.WaitForFunctionAsync("length => history.length === length", before + 1);
        await page.GoBackAsync();
        await Assertions.Expect(page.Locator("#sentence .said")).ToContainTextAsync("in D major");
    }

    [Fact]
    public async Task A_link_made_beside_a_lesson_shows_the_same_without_it()
    {
        var lesson = Path.Combine(studio.Folder, "linked.md");
        await File.WriteAllTextAsync(
            lesson,
            "---\ntitle: Linked\ninstrument: drop D guitar\nkey: E minor\nnote-names: german\n---\n",
            TestContext.Current.CancellationToken
        );
        await using var opened = await chromium.OpenStudioAsync(studio.Address + "?lesson=linked.md");
        var page = opened.Page;
        await Assertions.Expect(page.Locator("#sentence .said")).ToContainTextAsync("on a drop D guitar, in E minor");
        await page.PickAsync("what to show", "the thirds");
        await ShownAsync(page, "the thirds");
        var (neck, sentence, address) = (await NeckAsync(page), await page.SentenceAsync(), new UriBuilder(page.Url));
        Assert.Contains("on a drop D guitar, in E minor", Shown(page), StringComparison.Ordinal);
        // The link alone, without the lesson that is open here.
        var query = System.Web.HttpUtility.ParseQueryString(address.Query);
        query.Remove("lesson");
        address.Query = query.ToString();

        await using var other = await chromium.OpenStudioAsync(address.Uri.ToString());

        Assert.Equal(sentence, await other.Page.SentenceAsync());
        Assert.Equal(neck, await NeckAsync(other.Page));
        Assert.Contains("H", neck, StringComparison.Ordinal);
        File.Delete(lesson);
    }

    [Fact]
    public async Task A_choice_that_is_rested_on_is_tried_on_the_neck_alone()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var title = page.Locator(".dock .now title").First;
        var address = page.Url;

        await page.ClickAsync("button.phrase[aria-label^='the key']");
        await page.FillAsync(".pop input", "in F major");
        await Assertions.Expect(title).ToContainTextAsync("F major");
        await Assertions.Expect(page.Locator("#dock-name")).ToHaveTextAsync("F major");
        await Assertions.Expect(page.Locator("#sentence .said")).ToContainTextAsync("in D major");
        // The cells that are read aloud are of what is said, and named so.
        Assert.StartsWith("D major", await page.Locator("#neck-grid").GetAttributeAsync("aria-label"));
        Assert.Equal(address, page.Url);
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(title).ToContainTextAsync("D major");
        await Assertions.Expect(page.Locator("#dock-name")).ToHaveTextAsync("D major");

        await page.ClickAsync("button.phrase[aria-label^='the key']");
        await page.HoverAsync(".pop [role=option] >> text='in G major'");
        await Assertions.Expect(title).ToContainTextAsync("G major");
        await page.Locator("#claim").FocusAsync();
        await Assertions.Expect(title).ToContainTextAsync("D major");
        await Assertions.Expect(page.GetByText("Undo", new() { Exact = false }).First).ToBeDisabledAsync();
    }

    [Fact]
    public async Task What_more_can_be_said_stands_in_groups_inside_the_window()
    {
        await using var opened = await OpenAsync("show the seventh chords, on strings 4-1");
        var page = opened.Page;

        await page.ClickAsync("button.phrase[aria-label^='Say more']");

        await Assertions
            .Expect(page.Locator(".pop [role=group] .heading"))
            .ToHaveTextAsync([
                "Place on the neck",
                "How chords are laid out",
                "What stands on the marks",
                "Hand and player",
            ]);
        Assert.True(
            await page.EvaluateAsync<bool>(
                "document.querySelector('.pop').getBoundingClientRect().right <= document.documentElement.clientWidth && document.scrollingElement.scrollLeft === 0"
            )
        );
        await page.FillAsync(".pop input", "hand");
        await Assertions.Expect(page.Locator(".pop [role=group]")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_plain_wording_is_put_into_phrases_at_a_click()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.ClickAsync("text=Type it");
        await page.FillAsync("#whole", "barre chords in F");
        await page.Locator("#sentence-error button").ClickAsync();
        await page.FocusAsync("#whole");
        await page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(page.Locator("#sentence .said")).ToContainTextAsync("the triads");
        await Assertions.Expect(page.Locator("#sentence .said")).ToContainTextAsync("in F major");
    }
}
