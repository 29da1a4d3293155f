using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>A studio of its own with a small lesson that is opened and written.</summary>
public abstract class OneLesson(Chromium chromium) : IAsyncLifetime
{
    /// <summary>The file of the lesson.</summary>
    protected const string Name = "mine.md";

    /// <summary>What it says at first.</summary>
    protected const string Text = "---\ntitle: Mine\nkey: D major\n---\n\nFirst.\n";

    private StartedStudio? _studio;

    /// <summary>The browser.</summary>
    protected Chromium Browser => chromium;

    /// <summary>The studio.</summary>
    protected StartedStudio Studio => _studio!;

    /// <summary>Where it is.</summary>
    protected string LessonPath => Path.Combine(Studio.Folder, Name);

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (Chromium.WhyNot is null)
        {
            _studio = await StartedStudio.StartAsync();
            await File.WriteAllTextAsync(LessonPath, Text);
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        _studio?.Dispose();
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    /// <summary>Opens it.</summary>
    protected async Task<OpenPage> OpenAsync(int width = 1280)
    {
        var opened = await chromium.OpenStudioAsync($"{Studio.Address}?lesson={Name}", width: width);
        await Assertions.Expect(Editor(opened)).ToContainTextAsync("First.");
        return opened;
    }

    /// <summary>The text that is written.</summary>
    protected static ILocator Editor(OpenPage opened) => opened.Page.Locator(".cm-content");

    /// <summary>The handout beside it.</summary>
    protected static ILocator Handout(OpenPage opened) => opened.Page.FrameLocator("iframe.handout").Locator("article");

    /// <summary>Whether it is saved.</summary>
    protected static ILocator State(OpenPage opened) => opened.Page.Locator(".lesson-bar .state");

    /// <summary>Types words at the end.</summary>
    protected static async Task TypeAsync(OpenPage opened, string words)
    {
        await Editor(opened).ClickAsync();
        await opened.Page.Keyboard.PressAsync("Control+End");
        await opened.Page.Keyboard.InsertTextAsync(words);
    }

    /// <summary>Waits until words are in the file, half a minute at most.</summary>
    protected async Task IsOnDiskAsync(string words)
    {
        for (var look = 0; look < 300; look++)
        {
            if (
                File.Exists(LessonPath)
                && (await File.ReadAllTextAsync(LessonPath)).Contains(words, StringComparison.Ordinal)
            )
            {
                return;
            }

            await Task.Delay(100);
        }

        Assert.Contains(words, await File.ReadAllTextAsync(LessonPath), StringComparison.Ordinal);
    }

    /// <summary>The button that goes to the lesson and back.</summary>
    protected static ILocator Lesson(OpenPage opened) =>
        opened.Page.GetByRole(AriaRole.Button, new() { Name = "Lesson", Exact = true });

    /// <summary>Types words at the end of its title.</summary>
    protected static async Task TypeInTitleAsync(OpenPage opened, string words)
    {
        await Editor(opened).ClickAsync();
        foreach (var key in (string[])["Control+Home", "ArrowDown", "End"])
        {
            await opened.Page.Keyboard.PressAsync(key);
        }

        await opened.Page.Keyboard.InsertTextAsync(words);
    }
}
