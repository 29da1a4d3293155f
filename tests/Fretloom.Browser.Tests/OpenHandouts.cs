namespace Fretloom.Browser.Tests;

/// <summary>The pages of handouts that are open, with all their tables: each is opened once for the tests that only look.</summary>
/// <param name="chromium">The browser.</param>
/// <param name="handouts">The files.</param>
public sealed class OpenHandouts(Chromium chromium, Handouts handouts) : IAsyncDisposable
{
    private readonly Dictionary<(string Name, int Width), OpenPage> _pages = [];

    /// <summary>A page in a window of a width. The test skips when there is no browser.</summary>
    /// <param name="name">The name of the page.</param>
    /// <param name="width">The width of the window in CSS pixels.</param>
    public async Task<OpenPage> AtAsync(string name, int width = 1280)
    {
        if (!_pages.TryGetValue((name, width), out var page))
        {
            page = _pages[(name, width)] = await chromium.OpenAsync(handouts.PathOf(name), width);
            await page.OpenTablesAsync();
        }

        return page;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        foreach (var page in _pages.Values)
        {
            await page.DisposeAsync();
        }
    }
}
