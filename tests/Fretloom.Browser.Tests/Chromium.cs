using Fretloom.Testing;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Fretloom.Browser.Tests.Chromium))]

namespace Fretloom.Browser.Tests;

/// <summary>The browser of the system, started once for all tests. It downloads nothing.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string? Executable = Run.Find("chromium");

    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Why a test that needs the browser cannot run here; null when it can.</summary>
    public static string? WhyNot => Executable is null ? "skipped: Chromium is not installed" : Oracle.WhyNot;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (WhyNot is not null)
        {
            return;
        }

        // A busy machine draws late; what never comes fails all the same.
        Assertions.SetDefaultExpectTimeout(60_000);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = Executable,
                Args =
                [
                    .. Environment.UserName == "root" ? ["--no-sandbox"] : Array.Empty<string>(),
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--no-first-run",
                ],
            }
        );
    }

    /// <summary>Opens a file in a window of its own. The test skips when there is no browser.</summary>
    /// <param name="path">An HTML file.</param>
    /// <param name="width">The width of the window in CSS pixels.</param>
    /// <param name="colours">Light, dark or forced colours.</param>
    /// <param name="before">A script that runs before those of the page; null for none.</param>
    public async Task<OpenPage> OpenAsync(
        string path,
        int width = 1280,
        Colours colours = Colours.Light,
        string? before = null
    )
    {
        var context = await ContextAsync(width, colours);
        if (before is not null)
        {
            await context.AddInitScriptAsync(before);
        }

        var opened = new OpenPage(await context.NewPageAsync());
        await opened.GoToAsync(path);
        return opened;
    }

    /// <summary>Opens a window of its own, with nothing in it. The test skips when there is no browser.</summary>
    /// <param name="width">Its width in CSS pixels.</param>
    /// <param name="colours">Light, dark or forced colours.</param>
    /// <param name="options">What else the window is to be like; null for nothing.</param>
    public async Task<IBrowserContext> ContextAsync(
        int width = 1280,
        Colours colours = Colours.Light,
        BrowserNewContextOptions? options = null
    )
    {
        Assert.SkipWhen(WhyNot is not null, WhyNot ?? "");
        options ??= new() { ServiceWorkers = ServiceWorkerPolicy.Block };
        options.ViewportSize = new() { Width = width, Height = 900 };
        options.ColorScheme = colours == Colours.Dark ? ColorScheme.Dark : ColorScheme.Light;
        options.ForcedColors = colours == Colours.Forced ? ForcedColors.Active : ForcedColors.None;
        var context = await _browser!.NewContextAsync(options);
        context.SetDefaultTimeout(10_000);
        return context;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _playwright?.Dispose();
    }
}

/// <summary>In which colours a page is shown.</summary>
public enum Colours
{
    /// <summary>Dark on light.</summary>
    Light,

    /// <summary>Light on dark.</summary>
    Dark,

    /// <summary>The reader's own.</summary>
    Forced,
}
