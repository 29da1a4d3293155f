using System.Text.Json;
using Fretloom.Testing;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests;

/// <summary>A page in the browser, with what it asked for and what it complained of.</summary>
/// <param name="page">An empty page in a context of its own.</param>
public sealed class OpenPage(IPage page) : IAsyncDisposable
{
    private static readonly Lazy<string> Axe = new(() =>
        File.ReadAllText(Repository.PathTo("tests", "oracles", "node_modules", "axe-core", "axe.min.js"))
    );

    private readonly List<string> _requests = [];
    private readonly List<string> _complaints = [];

    /// <summary>The page.</summary>
    public IPage Page => page;

    /// <summary>The addresses of everything the page asked for, without its own and without what stands in the page itself.</summary>
    public IEnumerable<string> Requests =>
        _requests.Where(address => !address.StartsWith("data:", StringComparison.Ordinal)).Skip(1);

    /// <summary>Messages in the console, and errors.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    /// <summary>Loads a file or a page and waits for its fonts.</summary>
    /// <param name="path">A path, or an address.</param>
    public async Task GoToAsync(string path)
    {
        page.Request += (_, request) => _requests.Add(request.Url);
        page.Console += (_, message) => _complaints.Add(message.Text);
        page.PageError += (_, message) => _complaints.Add(message);
        page.RequestFailed += (_, request) => _complaints.Add($"failed: {request.Url}");
        await page.GotoAsync(new Uri(path).AbsoluteUri);
        await page.EvaluateAsync("document.fonts.ready.then(() => true)");
    }

    /// <summary>Opens everything that can be opened, and waits for the fonts that this needs.</summary>
    public Task OpenTablesAsync() =>
        page.EvaluateAsync(
            """
            document.querySelectorAll('details').forEach(one => one.open = true);
            new Promise(requestAnimationFrame).then(() => document.fonts.ready).then(() => true)
            """
        );

    /// <summary>What axe-core has against the page: a line for each rule, with the elements.</summary>
    public async Task<IReadOnlyList<string>> AxeAsync()
    {
        await page.EvaluateAsync(Axe.Value + "; true");
        return await page.EvaluateAsync<string[]>(
            "axe.run().then(found => found.violations.map(one => `${one.id}: ${one.help}: ${one.nodes.map(node => node.html.slice(0, 160)).join(' | ')}`))"
        );
    }

    /// <summary>What axe-core has against the page in each of some colours, a line for each rule; empty when it has nothing.</summary>
    public async Task<string> AxeInAsync(params IReadOnlyList<Colours> colours)
    {
        var found = new List<string>();
        foreach (var colour in colours)
        {
            await SeeInAsync(colour);
            found.AddRange((await AxeAsync()).Select(line => $"{colour}: {line}"));
        }

        return string.Join('\n', found);
    }

    /// <summary>Goes on in other colours of the system.</summary>
    public Task SeeInAsync(Colours colours) =>
        page.EmulateMediaAsync(
            new()
            {
                ColorScheme = colours == Colours.Dark ? ColorScheme.Dark : ColorScheme.Light,
                ForcedColors = colours == Colours.Forced ? ForcedColors.Active : ForcedColors.None,
            }
        );

    /// <summary>The families that draw the text of the page; after one that did not come with the page, what it draws.</summary>
    public async Task<ILookup<bool, string>> FontsAsync()
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("DOM.enable");
        await session.SendAsync("CSS.enable");
        var root = (await Ask("DOM.getDocument", [])).GetProperty("root").GetProperty("nodeId").GetInt32();
        var texts = (
            await Ask("DOM.querySelectorAll", new() { ["nodeId"] = root, ["selector"] = "body *:not(svg, g, path)" })
        ).GetProperty("nodeIds");
        var fonts = await Task.WhenAll(texts.EnumerateArray().Select(node => DrawnAsync(node.GetInt32())));
        return fonts.SelectMany(drawn => drawn).Distinct().ToLookup(font => font.IsOurs, font => font.Name);

        async Task<JsonElement> Ask(string method, Dictionary<string, object> arguments) =>
            (await session.SendAsync(method, arguments))!.Value;

        async Task<IReadOnlyList<(bool IsOurs, string Name)>> DrawnAsync(int node)
        {
            var drawn = new List<(bool, string)>();
            var found = await Ask("CSS.getPlatformFontsForNode", new() { ["nodeId"] = node });
            foreach (var font in found.GetProperty("fonts").EnumerateArray())
            {
                var isOurs = font.GetProperty("isCustomFont").GetBoolean();
                var family = font.GetProperty("familyName").GetString()!;
                var text = isOurs ? default : await Ask("DOM.getOuterHTML", new() { ["nodeId"] = node });
                drawn.Add((isOurs, isOurs ? family : $"{family}: {text.GetProperty("outerHTML")}"));
            }

            return drawn;
        }
    }

    /// <summary>The names that readers aloud give the pictures of the page, as the browser works them out.</summary>
    public async Task<IReadOnlyList<string>> PictureNamesAsync()
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        var tree = (await session.SendAsync("Accessibility.getFullAXTree"))!.Value.GetProperty("nodes");
        return
        [
            .. tree.EnumerateArray()
                .Where(node => ValueOf(node, "role") is "image" or "img")
                .Select(node => ValueOf(node, "name")),
        ];

        static string ValueOf(JsonElement node, string property) =>
            node.TryGetProperty(property, out var found) ? found.GetProperty("value").GetString() ?? "" : "";
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await page.Context.CloseAsync();
}
