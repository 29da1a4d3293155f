using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>A lesson is written beside its handout.</summary>
public sealed class WriteTests(Chromium chromium) : OneLesson(chromium)
{
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
        await TypeInTitleAsync(opened, " and yours");

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
        await TypeInTitleAsync(opened, " and yours");

        await Assertions.Expect(chosen).ToHaveTextAsync("Mine and yours");
    }

    [Fact]
    public async Task What_is_put_in_from_the_view_comes_where_one_wrote_last_and_one_goes_on_below_it()
    {
        await File.WriteAllTextAsync(LessonPath, Text + "\nSecond.\n\nLast.\n", TestContext.Current.CancellationToken);
        await using var opened = await OpenAsync();
        await Editor(opened).GetByText("Second.").ClickAsync();
        await Lesson(opened).ClickAsync();
        await Assertions.Expect(Editor(opened)).ToBeHiddenAsync();

        await opened.Page.GetByRole(AriaRole.Button, new() { Name = "Put into the lesson" }).First.ClickAsync();
        await Assertions.Expect(Editor(opened)).ToBeFocusedAsync();
        await opened.Page.Keyboard.InsertTextAsync("Below.");

        await IsOnDiskAsync("Below.");
        var text = await File.ReadAllTextAsync(LessonPath, TestContext.Current.CancellationToken);
        // It can be taken back, as what was typed before one looked elsewhere.
        await opened.Page.Keyboard.PressAsync("Control+Z");
        await opened.Page.Keyboard.PressAsync("Control+Z");
        await Assertions.Expect(Editor(opened)).Not.ToContainTextAsync("```show");
        Assert.True(Regex.IsMatch(text, "Second\\.\n\n```show\n[^`]*\n```\nBelow\\.\n\nLast\\."), text);
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
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("D%20major|D\\+major"));
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

    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task Nothing_keeps_people_from_reading_and_writing(int width)
    {
        await using var opened = await OpenAsync(width);

        Assert.Equal("", string.Join('\n', await opened.AxeAsync()));
    }
}
