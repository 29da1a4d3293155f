using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>A lesson is written beside its handout, and nothing that is written is lost.</summary>
public sealed partial class WriteTests(Chromium chromium) : IAsyncLifetime
{
    private const string Name = "mine.md";
    private const string Text = "---\ntitle: Mine\nkey: D major\n---\n\nFirst.\n";

    private StartedStudio? _studio;

    private string PathOf => Path.Combine(_studio!.Folder, Name);

    public async ValueTask InitializeAsync()
    {
        if (Chromium.WhyNot is null)
        {
            _studio = await StartedStudio.StartAsync();
            await File.WriteAllTextAsync(PathOf, Text);
        }
    }

    public ValueTask DisposeAsync()
    {
        _studio?.Dispose();
        return ValueTask.CompletedTask;
    }

    private async Task<OpenPage> OpenAsync(int width = 1280)
    {
        var opened = await chromium.OpenStudioAsync($"{_studio!.Address}?lesson={Name}", width: width);
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("First.");
        return opened;
    }

    private static ILocator Editor(OpenPage opened) => opened.Page.Locator(".cm-content");

    private static ILocator Handout(OpenPage opened) => opened.Page.FrameLocator("iframe.handout").Locator("article");

    private static ILocator State(OpenPage opened) => opened.Page.Locator(".lesson-bar .state");

    private static async Task TypeAsync(OpenPage opened, string words)
    {
        await Editor(opened).ClickAsync();
        await opened.Page.Keyboard.PressAsync("Control+End");
        await opened.Page.Keyboard.InsertTextAsync(words);
    }

    private async Task IsOnDiskAsync(string words)
    {
        for (var look = 0; look < 300; look++)
        {
            if (File.Exists(PathOf) && (await File.ReadAllTextAsync(PathOf)).Contains(words, StringComparison.Ordinal))
            {
                return;
            }

            await Task.Delay(100);
        }

        Assert.Contains(words, await File.ReadAllTextAsync(PathOf), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_typed_is_seen_in_the_handout_and_comes_to_the_disk()
    {
        await using var opened = await OpenAsync();
        await TypeAsync(opened, "\nSecond.\n");

        await Assertions.Expect(Handout(opened)).ToContainTextAsync("Second.");
        await IsOnDiskAsync("Second.");
        await Assertions.Expect(State(opened)).ToHaveTextAsync("Saved");
    }

    [Fact]
    public async Task A_mistake_is_pointed_at_and_mended_by_its_button()
    {
        await using var opened = await OpenAsync();
        await TypeAsync(opened, "\n```show\nthe nots of the key\n```\n");
        await Assertions.Expect(opened.Page.Locator(".problems summary")).ToHaveTextAsync("1 problem");
        await Assertions.Expect(opened.Page.Locator(".cm-lintRange-error")).ToBeVisibleAsync();

        await opened.Page.ClickAsync(".problems summary");
        await opened.Page.ClickAsync(".problems .framed");

        await Assertions.Expect(Handout(opened).Locator("figure svg").First).ToBeVisibleAsync();
        await Assertions.Expect(opened.Page.Locator(".problems")).ToHaveTextAsync("No problems");
    }

    [Fact]
    public async Task A_block_that_cannot_be_read_says_why_in_its_place_and_leads_to_its_line()
    {
        await using var opened = await OpenAsync();
        await TypeAsync(opened, "\n```show\nthe nots of the key\n```\n");
        var told = Handout(opened).Locator(".problem");
        await Assertions.Expect(told).ToContainTextAsync("nots");
        await opened.Page.Keyboard.PressAsync("Control+Home");

        await told.GetByRole(AriaRole.Button).ClickAsync();
        await opened.Page.Keyboard.InsertTextAsync("Here: ");
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("the Here: nots");
    }

    [Fact]
    public async Task The_key_for_the_next_problem_tells_it_beside_its_words()
    {
        await using var opened = await OpenAsync();
        await TypeAsync(opened, "\n```show\nthe notes of the key, on a gutar\n```\n");
        await Assertions.Expect(opened.Page.Locator(".cm-lintRange-error")).ToBeVisibleAsync();
        // What is pointed at is told too.
        await opened.Page.Mouse.MoveAsync(0, 0);
        await opened.Page.Keyboard.PressAsync("F8");

        await opened.Page.Locator(".cm-tooltip .cm-diagnosticAction").ClickAsync();
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("on a guitar");
        await Assertions.Expect(opened.Page.Locator(".problems")).ToHaveTextAsync("No problems");
    }

    [Fact]
    public async Task The_heading_names_the_lesson_and_follows_its_title()
    {
        await using var opened = await OpenAsync();
        var heading = opened.Page.GetByRole(AriaRole.Heading, new() { Level = 1 });
        await Assertions.Expect(heading).ToHaveTextAsync("Mine");
        await Editor(opened).ClickAsync();
        await opened.Page.Keyboard.PressAsync("Control+Home");
        await opened.Page.Keyboard.PressAsync("ArrowDown");
        await opened.Page.Keyboard.PressAsync("End");
        await opened.Page.Keyboard.InsertTextAsync(" and yours");

        await Assertions.Expect(heading).ToHaveTextAsync("Mine and yours");
    }

    [Fact]
    public async Task The_keys_go_where_one_goes_on_when_a_form_is_gone()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await page.ClickAsync("text=New lesson");
        await Assertions.Expect(page.Locator(".naming input")).ToBeFocusedAsync();
        await page.ClickAsync("text=Cancel");
        await Assertions.Expect(page.GetByText("New lesson")).ToBeFocusedAsync();

        await page.ClickAsync(".lesson-bar >> text=Keys");
        await page.ClickAsync(".write-help >> text=Close");
        await Assertions.Expect(page.Locator(".lesson-bar >> text=Keys")).ToBeFocusedAsync();

        await page.ClickAsync("text=New lesson");
        await page.Keyboard.InsertTextAsync("A study");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Editor(opened)).ToBeFocusedAsync();
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("title: A study");
    }

    [Fact]
    public async Task A_new_lesson_is_written_below_its_title()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await page.ClickAsync("text=New lesson");
        await page.Keyboard.InsertTextAsync("A study");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Editor(opened)).ToBeFocusedAsync();
        await page.Keyboard.InsertTextAsync("Said first.");

        await Assertions.Expect(Handout(opened).GetByText("Said first.")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".problems")).ToHaveTextAsync("No problems");
        // The list knows it by its title.
        await Assertions.Expect(page.Locator("select.lessons option:checked")).ToHaveTextAsync("A study");
    }

    [Fact]
    public async Task The_list_of_lessons_follows_a_title_that_is_written()
    {
        await using var opened = await OpenAsync();
        var chosen = opened.Page.Locator("select.lessons option:checked");
        await Assertions.Expect(chosen).ToHaveTextAsync("Mine");
        await Editor(opened).ClickAsync();
        await opened.Page.Keyboard.PressAsync("Control+Home");
        await opened.Page.Keyboard.PressAsync("ArrowDown");
        await opened.Page.Keyboard.PressAsync("End");
        await opened.Page.Keyboard.InsertTextAsync(" and yours");

        await Assertions.Expect(chosen).ToHaveTextAsync("Mine and yours");
    }

    [Fact]
    public async Task What_is_put_in_from_the_view_comes_where_one_wrote_last_and_one_goes_on_below_it()
    {
        await File.WriteAllTextAsync(PathOf, Text + "\nSecond.\n\nLast.\n", TestContext.Current.CancellationToken);
        await using var opened = await OpenAsync();
        await Editor(opened).GetByText("Second.").ClickAsync();
        await Lesson(opened).ClickAsync();
        await Assertions.Expect(Editor(opened)).ToBeHiddenAsync();

        await opened.Page.GetByRole(AriaRole.Button, new() { Name = "Put into the lesson" }).First.ClickAsync();
        await Assertions.Expect(Editor(opened)).ToBeFocusedAsync();
        await opened.Page.Keyboard.InsertTextAsync("Below.");

        await IsOnDiskAsync("Below.");
        var text = await File.ReadAllTextAsync(PathOf, TestContext.Current.CancellationToken);
        // It can be taken back, as what was typed before one looked elsewhere.
        await opened.Page.Keyboard.PressAsync("Control+Z");
        await opened.Page.Keyboard.PressAsync("Control+Z");
        await Assertions.Expect(Editor(opened)).Not.ToContainTextAsync("```show");
        Assert.True(
            System.Text.RegularExpressions.Regex.IsMatch(text, "Second\\.\n\n```show\n[^`]*\n```\nBelow\\.\n\nLast\\."),
            text
        );
    }

    /// <summary>What was said beside a lesson is not nailed down by loading the page again.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_page_that_is_loaded_again_says_what_was_said_and_leaves_unsaid_what_was_not(bool isWriting)
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await Assertions.Expect(Handout(opened)).ToContainTextAsync("First.");
        await Lesson(opened).ClickAsync();
        await page.PickAsync("the strings", "4-1");
        await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("D%20major|D\\+major"));
        var said = await page.SentenceAsync();
        if (isWriting)
        {
            await Lesson(opened).ClickAsync();
        }

        await page.ReloadAsync();
        await page.Locator("html[data-ready]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        if (isWriting)
        {
            await Assertions.Expect(Editor(opened)).ToContainTextAsync("First.");
            await Lesson(opened).ClickAsync();
        }

        Assert.Equal(said, await page.SentenceAsync());
        await Assertions
            .Expect(page.Locator("#sentence .phrase.unsaid", new() { HasText = "D major" }))
            .ToBeVisibleAsync();
    }

    private static ILocator Lesson(OpenPage opened) =>
        opened.Page.GetByRole(AriaRole.Button, new() { Name = "Lesson", Exact = true });

    [Fact]
    public async Task A_file_that_is_gone_comes_back_only_when_it_is_chosen()
    {
        await using var opened = await OpenAsync();
        await Assertions.Expect(State(opened)).ToHaveTextAsync("Saved");
        File.Delete(PathOf);
        var gone = opened.Page.GetByText("is gone from the folder");
        await Assertions.Expect(gone).ToBeVisibleAsync();
        await TypeAsync(opened, "\nMore.\n");
        await Task.Delay(LessonRest, TestContext.Current.CancellationToken);
        Assert.False(File.Exists(PathOf));

        await opened.Page.ClickAsync("text=Put it back into the folder");
        await IsOnDiskAsync("More.");

        File.Delete(PathOf);
        await Assertions.Expect(gone).ToBeVisibleAsync();
        await opened.Page.ClickAsync("text=Let it go");
        await Assertions.Expect(opened.Page.GetByText("Choose a lesson above")).ToBeVisibleAsync();
        Assert.False(File.Exists(PathOf));
    }

    [Fact]
    public async Task While_one_looks_elsewhere_it_is_told_that_something_of_the_lesson_is_to_be_chosen()
    {
        await using var opened = await OpenAsync();
        await Lesson(opened).ClickAsync();
        File.Delete(PathOf);
        await Assertions
            .Expect(opened.Page.GetByRole(AriaRole.Button, new() { NameRegex = Choose() }))
            .ToBeVisibleAsync();

        await File.WriteAllTextAsync(PathOf, Text, TestContext.Current.CancellationToken);
        await Assertions.Expect(Lesson(opened)).ToBeVisibleAsync();
    }

    [System.Text.RegularExpressions.GeneratedRegex("^Lesson.*something to choose")]
    private static partial System.Text.RegularExpressions.Regex Choose();

    /// <summary>Words that come and go would move the buttons away under the hand.</summary>
    [Fact]
    public async Task What_keeps_a_lesson_from_being_saved_stays_said_while_it_is_tried_again()
    {
        await using var opened = await chromium.OpenStudioAsync(
            $"{_studio!.Address}?lesson={Name}",
            options: new() { ServiceWorkers = ServiceWorkerPolicy.Block }
        );
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("First.");
        await opened.Page.RouteAsync(
            "**/api/lessons/*",
            route =>
                route.Request.Method == "PUT"
                    ? route.FulfillAsync(
                        new()
                        {
                            Status = 500,
                            ContentType = "application/json",
                            Body = """{"error":{"message":"The disk is full."}}""",
                        }
                    )
                    : route.ContinueAsync()
        );
        await TypeAsync(opened, "More.");
        await Assertions.Expect(State(opened)).ToContainTextAsync("The disk is full.");

        var said = await opened.Page.EvaluateAsync<string[]>(
            """
            async () => {
              const [state, heard] = [document.querySelector(".lesson-bar .state"), new Set()];
              const watch = new MutationObserver(() => heard.add(state.textContent));
              watch.observe(state, { subtree: true, childList: true, characterData: true });
              document.querySelector(".cm-content").focus();
              document.querySelector("select.lessons").focus();
              await new Promise(done => setTimeout(done, 5000));
              return [...heard];
            }
            """
        );
        Assert.All(said, words => Assert.Contains("The disk is full.", words, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_was_written_of_a_file_that_is_gone_is_in_the_list_when_one_went_elsewhere()
    {
        await using var opened = await OpenAsync();
        var (page, list) = (opened.Page, opened.Page.Locator("select.lessons"));
        File.Delete(PathOf);
        await Assertions.Expect(page.GetByText("is gone from the folder")).ToBeVisibleAsync();
        await TypeAsync(opened, "\nOnly here.\n");
        await list.SelectOptionAsync("the-cloth-of-a-key.md");
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("The cloth of a key");

        await list.SelectOptionAsync(new SelectOptionValue { Label = $"{Name} (not in the folder)" });
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("Only here.");
        await Assertions.Expect(page.GetByText("is gone from the folder")).ToBeVisibleAsync();
        Assert.False(File.Exists(PathOf));
    }

    [Fact]
    public async Task The_list_names_the_lesson_that_is_open_whatever_comes_into_the_folder()
    {
        await using var opened = await OpenAsync();
        var chosen = opened.Page.Locator("select.lessons option:checked");
        await Assertions.Expect(chosen).ToHaveTextAsync("Mine");
        await File.WriteAllTextAsync(
            Path.Combine(_studio!.Folder, "aaa.md"),
            "---\ntitle: Aaa\n---\n",
            TestContext.Current.CancellationToken
        );
        await Assertions
            .Expect(opened.Page.Locator("select.lessons option", new() { HasText = "Aaa" }))
            .ToHaveCountAsync(1);

        await Assertions.Expect(chosen).ToHaveTextAsync("Mine");
    }

    // Longer than the keys rest before a lesson is saved.
    private static readonly TimeSpan LessonRest = TimeSpan.FromSeconds(2);

    [Fact]
    public async Task What_can_be_written_begins_with_what_there_is_to_play_and_has_every_kind_of_phrase()
    {
        await using var opened = await OpenAsync();
        await TypeAsync(opened, "\n```play\n\n```\n");
        await opened.Page.Keyboard.PressAsync("ArrowUp");
        await opened.Page.Keyboard.PressAsync("ArrowUp");
        await opened.Page.Keyboard.PressAsync("Control+Space");
        var list = opened.Page.Locator(".cm-tooltip-autocomplete");

        await Assertions.Expect(list.Locator("completion-section").First).ToHaveTextAsync("what to play");
        await Assertions.Expect(list.Locator("li[aria-selected=true]")).ToHaveTextAsync("the scale");
        await Assertions.Expect(list.GetByText("in Bb major", new() { Exact = true })).ToHaveCountAsync(1);
        await Assertions.Expect(list.GetByText("title", new() { Exact = true })).ToHaveCountAsync(1);
        await opened.Page.Keyboard.InsertTextAsync("the sca");
        await Assertions.Expect(list.Locator("li").First).ToHaveTextAsync("the scale");
        // A list that has only just changed takes no Enter: who presses it may have meant another.
        await opened.Page.WaitForTimeoutAsync(150);
        await opened.Page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(Editor(opened)).ToContainTextAsync("the scale");

        // What there is to play is said; behind a comma comes how.
        await opened.Page.Keyboard.InsertTextAsync(", ");
        await opened.Page.Keyboard.PressAsync("Control+Space");
        await Assertions.Expect(list.Locator("completion-section").First).Not.ToHaveTextAsync("what to play");
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task No_picture_of_the_handout_is_cut_off(int width)
    {
        await using var opened = await OpenAsync(width);
        await TypeAsync(opened, "\n```show\nthe notes of the key, on all strings, frets 0-22\n```\n");
        if (width < 900)
        {
            await opened.Page.ClickAsync(".faces >> text=Handout");
        }

        var picture = Handout(opened).Locator(".picture").First;
        await Assertions.Expect(picture.Locator("svg")).ToBeVisibleAsync();
        Assert.True(
            await picture.EvaluateAsync<bool>(
                """
                box => {
                  const drawn = box.querySelector("svg").getBoundingClientRect();
                  const room = box.getBoundingClientRect();
                  const isReached = drawn.right <= room.right + 1 || box.scrollWidth >= drawn.width - 1;
                  return isReached && room.right <= innerWidth && document.documentElement.scrollWidth <= innerWidth;
                }
                """
            )
        );
    }

    [Fact]
    public async Task A_page_that_is_loaded_again_at_once_has_lost_nothing()
    {
        await using var opened = await OpenAsync();
        await TypeAsync(opened, "\nJust typed.\n");
        await opened.Page.ReloadAsync();
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("First.");

        var takeUp = opened.Page.Locator("text=Take it up");
        await Assertions.Expect(takeUp.Or(Editor(opened).GetByText("Just typed.")).First).ToBeVisibleAsync();
        if (await takeUp.CountAsync() > 0)
        {
            await takeUp.ClickAsync();
        }

        await IsOnDiskAsync("Just typed.");
    }

    [Fact]
    public async Task A_file_that_is_changed_elsewhere_comes_here_and_can_be_taken_back()
    {
        await using var opened = await OpenAsync();
        await File.WriteAllTextAsync(PathOf, Text + "\nFrom elsewhere.\n", TestContext.Current.CancellationToken);

        await Assertions.Expect(Editor(opened)).ToContainTextAsync("From elsewhere.");
        await Editor(opened).ClickAsync();
        await opened.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(Editor(opened)).Not.ToContainTextAsync("From elsewhere.");
    }

    [Fact]
    public async Task The_list_of_lessons_opens_one_only_when_it_is_chosen()
    {
        await using var opened = await OpenAsync();
        var list = opened.Page.Locator("select.lessons");
        await Assertions.Expect(list.Locator("option")).Not.ToHaveCountAsync(1);
        await list.FocusAsync();

        foreach (var key in new[] { "ArrowDown", "End", "t" })
        {
            await list.PressAsync(key);
            await Assertions.Expect(list).ToHaveValueAsync(Name);
            await opened.Page.Keyboard.PressAsync("Escape");
        }

        await list.PressAsync("ArrowUp");
        await opened.Page.Keyboard.PressAsync("Home");
        await opened.Page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(list).Not.ToHaveValueAsync(Name);
        await Assertions.Expect(Editor(opened)).Not.ToContainTextAsync("First.");
    }

    [Fact]
    public async Task Two_windows_on_one_file_keep_both_texts()
    {
        await using var one = await OpenAsync();
        await using var other = await OpenAsync();
        await TypeAsync(one, "\nFrom one.\n");
        await TypeAsync(other, "\nFrom the other.\n");

        var choice = "text=Keep both";
        var late = await LateAsync(one, other, choice);
        await late.Page.ClickAsync(choice);

        var texts = await SettledAsync("From one.", "From the other.");
        Assert.Contains(texts, text => text.Contains("From one.", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.Contains("From the other.", StringComparison.Ordinal));
    }

    private static async Task<OpenPage> LateAsync(OpenPage one, OpenPage other, string choice)
    {
        for (var look = 0; look < 300; look++)
        {
            foreach (var opened in new[] { one, other })
            {
                if (await opened.Page.Locator(choice).CountAsync() > 0)
                {
                    return opened;
                }
            }

            await Task.Delay(100);
        }

        throw new InvalidOperationException("Neither window was asked what to keep.");
    }

    private async Task<List<string>> SettledAsync(params string[] words)
    {
        List<string> texts = [];
        for (var look = 0; look < 300; look++)
        {
            texts = [.. Directory.GetFiles(_studio!.Folder, "mine*.md").Select(File.ReadAllText)];
            if (words.All(word => texts.Exists(text => text.Contains(word, StringComparison.Ordinal))))
            {
                break;
            }

            await Task.Delay(100);
        }

        return texts;
    }

    [Fact]
    public async Task A_host_that_is_killed_while_it_saves_leaves_a_whole_file_and_the_text_in_the_browser()
    {
        await using var opened = await OpenAsync();
        for (var line = 0; line < 5; line++)
        {
            await TypeAsync(opened, FormattableString.Invariant($"\nLine {line}.\n"));
            await opened.Page.Keyboard.PressAsync("Control+s");
        }

        _studio!.Kill();
        await TypeAsync(opened, "\nAfter the end.\n");
        await Assertions.Expect(State(opened)).ToContainTextAsync("Kept in this browser");
        Assert.StartsWith(
            Text,
            await File.ReadAllTextAsync(PathOf, TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );

        var port = new Uri(_studio.Address).Port;
        using var again = await StartedStudio.StartAsync(_studio.Folder, port);
        await IsOnDiskAsync("After the end.");
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task Nothing_keeps_people_from_reading_and_writing(int width)
    {
        await using var opened = await OpenAsync(width);

        Assert.Equal("", string.Join('\n', await opened.AxeAsync()));
    }
}
