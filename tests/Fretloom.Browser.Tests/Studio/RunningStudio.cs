using Fretloom.Testing;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Fretloom.Browser.Tests.Studio.RunningStudio))]

namespace Fretloom.Browser.Tests.Studio;

/// <summary>The studio as a teacher starts it, on a folder of its own with the demo lessons, for all tests that do not end it.</summary>
public sealed class RunningStudio : IAsyncLifetime
{
    private StartedStudio? _studio;

    /// <summary>Its address.</summary>
    public string Address => _studio!.Address;

    /// <summary>Its folder of lessons.</summary>
    public string Folder => _studio!.Folder;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (Chromium.WhyNot is null)
        {
            _studio = await StartedStudio.StartAsync();
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        _studio?.Dispose();
        return ValueTask.CompletedTask;
    }
}

/// <summary>A studio that was started, on a folder that goes with it.</summary>
public sealed class StartedStudio : IDisposable
{
    private readonly StartedProgram _program;

    private StartedStudio(StartedProgram program, string folder, string address) =>
        (_program, Folder, Address) = (program, folder, address);

    /// <summary>Its folder of lessons.</summary>
    public string Folder { get; }

    /// <summary>Its address, with a slash at the end.</summary>
    public string Address { get; }

    /// <summary>Starts one.</summary>
    /// <param name="folder">The folder; null for a new one with the demo lessons.</param>
    /// <param name="port">The port; 0 for one that is free.</param>
    public static async Task<StartedStudio> StartAsync(string? folder = null, int port = 0)
    {
        if (folder is null)
        {
            folder = Directory.CreateTempSubdirectory("fretloom-studio-").FullName;
            foreach (var lesson in Directory.GetFiles(Repository.PathTo("lessons"), "*.md"))
            {
                File.Copy(lesson, Path.Combine(folder, Path.GetFileName(lesson)));
            }
        }

        var program = new StartedProgram(
            Repository.PathTo("fretloom"),
            ["studio", "--port", FormattableString.Invariant($"{port}"), "--lessons", folder]
        );
        while (await program.ReadLineAsync() is { } line)
        {
            if (line.IndexOf("http://", StringComparison.Ordinal) is >= 0 and var at)
            {
                return new StartedStudio(program, folder, line[at..].Trim());
            }
        }

        var end = await program.ExitAsync();
        throw new InvalidOperationException($"The studio did not start: {end.Error}");
    }

    /// <summary>Ends it without asking, as a power cut would. Its folder stays.</summary>
    public void Kill() => _program.Kill();

    /// <inheritdoc/>
    public void Dispose()
    {
        _program.Dispose();
        if (Directory.Exists(Folder))
        {
            Directory.Delete(Folder, recursive: true);
        }
    }
}

/// <summary>Opens the studio in the browser.</summary>
internal static class StudioPages
{
    /// <summary>Opens the studio and waits until it can be used.</summary>
    /// <param name="chromium">The browser.</param>
    /// <param name="address">The studio's address.</param>
    /// <param name="sentence">What is to be seen; null for what a new studio begins with.</param>
    /// <param name="width">The width of the window in CSS pixels.</param>
    /// <param name="colours">Light, dark or forced colours.</param>
    /// <param name="options">What else the window is to be like.</param>
    public static async Task<OpenPage> OpenStudioAsync(
        this Chromium chromium,
        string address,
        string? sentence = null,
        int width = 1280,
        Colours colours = Colours.Light,
        BrowserNewContextOptions? options = null
    )
    {
        var context = await chromium.ContextAsync(width, colours, options);
        // A slow machine takes a while to start the program in the page.
        context.SetDefaultTimeout(60_000);
        var opened = new OpenPage(await context.NewPageAsync());
        await opened.GoToAsync(sentence is null ? address : $"{address}?show={Uri.EscapeDataString(sentence)}");
        await opened.Page.Locator("html[data-ready]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        return opened;
    }

    /// <summary>Picks a phrase in the sentence, by what it names.</summary>
    public static async Task PickAsync(this IPage page, string name, string words)
    {
        await page.ClickAsync($"button.phrase[aria-label^='{name}']");
        await page.FillAsync(".pop input", words);
        await page.Keyboard.PressAsync("Enter");
    }

    /// <summary>Shows to a class, and waits until keys are heard there.</summary>
    public static async Task ShowToClassAsync(this IPage page)
    {
        await page.ClickAsync("text=Show to a class");
        await page.Locator("#class[open]").WaitForAsync();
    }

    /// <summary>The sentence as it is shown.</summary>
    public static async Task<string> SentenceAsync(this IPage page) =>
        (await page.Locator("#sentence .said").InnerTextAsync()).ReplaceLineEndings(" ").Split('.')[0].Trim();
}
