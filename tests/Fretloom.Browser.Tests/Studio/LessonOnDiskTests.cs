using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>Nothing that is written is lost, whatever becomes of the file, the page or the host.</summary>
public sealed partial class LessonOnDiskTests(Chromium chromium) : OneLesson(chromium)
{
    [Fact]
    public async Task A_file_that_is_gone_comes_back_only_when_it_is_chosen()
    {
        await using var opened = await OpenAsync();
        await Assertions.Expect(State(opened)).ToHaveTextAsync("Saved");
        File.Delete(LessonPath);
        var gone = opened.Page.GetByText("is gone from the folder");
        await Assertions.Expect(gone).ToBeVisibleAsync();
        await TypeAsync(opened, "\nMore.\n");
        await Task.Delay(LessonRest, TestContext.Current.CancellationToken);
        Assert.False(File.Exists(LessonPath));

        await opened.Page.ClickAsync("text=Put it back into the folder");
        await IsOnDiskAsync("More.");

        File.Delete(LessonPath);
        await Assertions.Expect(gone).ToBeVisibleAsync();
        await opened.Page.ClickAsync("text=Let it go");
        await Assertions.Expect(opened.Page.GetByText("Choose a lesson above")).ToBeVisibleAsync();
        Assert.False(File.Exists(LessonPath));
    }

    [Fact]
    public async Task While_one_looks_elsewhere_it_is_told_that_something_of_the_lesson_is_to_be_chosen()
    {
        await using var opened = await OpenAsync();
        await Lesson(opened).ClickAsync();
        File.Delete(LessonPath);
        await Assertions
            .Expect(opened.Page.GetByRole(AriaRole.Button, new() { NameRegex = Choose() }))
            .ToBeVisibleAsync();

        await File.WriteAllTextAsync(LessonPath, Text, TestContext.Current.CancellationToken);
        await Assertions.Expect(Lesson(opened)).ToBeVisibleAsync();
    }

    [GeneratedRegex("^Lesson.*something to choose")]
    private static partial Regex Choose();

    /// <summary>Words that come and go would move the buttons away under the hand.</summary>
    [Fact]
    public async Task What_keeps_a_lesson_from_being_saved_stays_said_while_it_is_tried_again()
    {
        await using var opened = await Browser.OpenStudioAsync(
            $"{Studio.Address}?lesson={Name}",
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
        File.Delete(LessonPath);
        await Assertions.Expect(page.GetByText("is gone from the folder")).ToBeVisibleAsync();
        await TypeAsync(opened, "\nOnly here.\n");
        await list.SelectOptionAsync("the-cloth-of-a-key.md");
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("The cloth of a key");

        await list.SelectOptionAsync(new SelectOptionValue { Label = $"{Name} (not in the folder)" });
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("Only here.");
        await Assertions.Expect(page.GetByText("is gone from the folder")).ToBeVisibleAsync();
        Assert.False(File.Exists(LessonPath));
    }

    [Fact]
    public async Task The_list_names_the_lesson_that_is_open_whatever_comes_into_the_folder()
    {
        await using var opened = await OpenAsync();
        var chosen = opened.Page.Locator("select.lessons option:checked");
        await Assertions.Expect(chosen).ToHaveTextAsync("Mine");
        await File.WriteAllTextAsync(
            Path.Combine(Studio.Folder, "aaa.md"),
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
        await File.WriteAllTextAsync(LessonPath, Text + "\nFrom elsewhere.\n", TestContext.Current.CancellationToken);

        await Assertions.Expect(Editor(opened)).ToContainTextAsync("From elsewhere.");
        await Editor(opened).ClickAsync();
        await opened.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(Editor(opened)).Not.ToContainTextAsync("From elsewhere.");
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
            texts = [.. Directory.GetFiles(Studio.Folder, "mine*.md").Select(File.ReadAllText)];
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

        Studio.Kill();
        await TypeAsync(opened, "\nAfter the end.\n");
        await Assertions.Expect(State(opened)).ToContainTextAsync("Kept in this browser");
        Assert.StartsWith(
            Text,
            await File.ReadAllTextAsync(LessonPath, TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );

        var port = new Uri(Studio.Address).Port;
        using var again = await StartedStudio.StartAsync(Studio.Folder, port);
        await IsOnDiskAsync("After the end.");
    }
}
