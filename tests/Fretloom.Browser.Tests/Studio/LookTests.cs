using System.Text.Json;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>What is seen is what the visual language of the house fixes: colours, type, places and forms.</summary>
public class LookTests(Chromium chromium, RunningStudio studio)
{
    private const string Sevenths = "show the seventh chords, on strings 4-1, in D major";

    // Tokens of the palette, light and dark; print differs by its white paper alone.
    private static readonly (string Token, string Light, string Dark)[] Palette =
    [
        ("--paper", "#FDFBF6", "#1D1B17"),
        ("--desk", "#EFEBE1", "#131210"),
        ("--ink", "#1B1A17", "#EDE7DA"),
        ("--quiet", "#5F594D", "#B0A794"),
        ("--line", "#8A8272", "#837A69"),
        ("--focus", "#0072B2", "#56B4E9"),
        ("--band", "#D5E7F3", "#12354A"),
        ("--full", "#F6EBC8", "#37311C"),
        ("--fail", "#D55E00", "#E69F00"),
    ];

    // The theme that is chosen, and the colours of the system.
    private static readonly (string Theme, Colours System)[] Themes =
    [
        ("light", Colours.Light),
        ("light", Colours.Dark),
        ("dark", Colours.Light),
        ("auto", Colours.Light),
        ("auto", Colours.Dark),
        ("print", Colours.Dark),
    ];

    [Fact]
    public async Task The_colours_of_every_theme_are_those_of_the_palette()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths);
        foreach (var (theme, system) in Themes)
        {
            await opened.SeeInAsync(system);
            await opened.Page.Locator("select").First.SelectOptionAsync(theme);
            await IsOfThePaletteAsync(opened.Page, theme, system);
        }
    }

    private static async Task IsOfThePaletteAsync(IPage page, string theme, Colours system)
    {
        var isDark = theme == "dark" || (theme == "auto" && system == Colours.Dark);

        foreach (var (token, light, dark) in Palette)
        {
            var isWhite = theme == "print" && token is "--paper" or "--desk" && theme == "print";
            Assert.Equal(
                isWhite ? "#FFF"
                    : isDark ? dark
                    : light,
                (
                    await page.EvaluateAsync<string>(
                        $"getComputedStyle(document.documentElement).getPropertyValue('{token}').trim()"
                    )
                ).ToUpperInvariant()
            );
        }

        // The tokens are what is drawn with.
        foreach (var (selector, property, token) in Drawn)
        {
            Assert.True(
                await page.EvaluateAsync<bool>(
                    """
                    ([selector, property, token]) => {
                        const probe = document.createElement("i");
                        probe.style.color = `var(${token})`;
                        document.body.append(probe);
                        const wanted = getComputedStyle(probe).color;
                        probe.remove();
                        return getComputedStyle(document.querySelector(selector))[property] === wanted;
                    }
                    """,
                    new[] { selector, property, token }
                ),
                $"{selector} {property} {token} {theme}"
            );
        }
    }

    private static readonly (string Selector, string Property, string Token)[] Drawn =
    [
        ("body", "backgroundColor", "--desk"),
        ("body", "color", "--ink"),
        ("main", "backgroundColor", "--paper"),
        (".dock", "backgroundColor", "--paper"),
        (".phrase:not(.unsaid) .words", "borderBottomColor", "--focus"),
        (".phrase.unsaid .words", "color", "--quiet"),
    ];

    [Fact]
    public async Task Type_has_the_faces_and_sizes_of_the_house()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths);
        foreach (var (selector, face, size, line) in Type)
        {
            var style = await opened.Page.EvaluateAsync<JsonElement>(
                "selector => (one => ({ face: one.fontFamily, size: one.fontSize, line: one.lineHeight }))(getComputedStyle(document.querySelector(selector)))",
                selector
            );
            Assert.StartsWith($"\"{face}\"", style.GetProperty("face").GetString(), StringComparison.Ordinal);
            Assert.Equal(size, style.GetProperty("size").GetString());
            Assert.Equal(line, style.GetProperty("line").GetString());
        }

        // Nothing is smaller than 12 pixels.
        Assert.Empty(
            await opened.Page.EvaluateAsync<string[]>(
                """
                [...document.querySelectorAll("body *")]
                    .filter(one => [...one.childNodes].some(node => node.nodeType === 3 && node.data.trim()) && one.checkVisibility() && !one.closest("svg, style, script"))
                    .filter(one => parseFloat(getComputedStyle(one).fontSize) < 12)
                    .map(one => one.outerHTML.slice(0, 90))
                """
            )
        );
    }

    private static readonly (string Selector, string Face, string Size, string Line)[] Type =
    [
        ("#sentence .said", "Source Serif 4", "27px", "44px"),
        ("main h1", "Source Serif 4", "31px", "38px"),
        ("body", "Source Serif 4", "17px", "24px"),
        (".data", "Source Sans 3", "15px", "20px"),
    ];

    [Fact]
    public async Task The_sentence_lies_above_the_sheet_what_is_true_beside_it_and_the_neck_along_the_bottom()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths);
        var page = opened.Page;
        var (sentence, sheet, truths, neck) = (
            (await page.Locator("#sentence").BoundingBoxAsync())!,
            (await page.Locator("main").BoundingBoxAsync())!,
            (await page.Locator("#truths").BoundingBoxAsync())!,
            (await page.Locator(".dock").BoundingBoxAsync())!
        );

        Assert.True(sentence.Y + sentence.Height <= sheet.Y + 1);
        Assert.True(sheet.X + sheet.Width <= truths.X);
        Assert.InRange(sheet.Width, 2 * truths.Width, 4 * truths.Width);
        Assert.True(sheet.Y + sheet.Height <= neck.Y + 1);
        Assert.Equal((0, 1280, 900), (neck.X, neck.Width, neck.Y + neck.Height));
    }

    [Theory]
    [InlineData(Colours.Light)]
    [InlineData(Colours.Dark)]
    [InlineData(Colours.Forced)]
    public async Task Marks_have_their_forms_in_every_colour(Colours colours)
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths, colours: colours);
        var page = opened.Page;
        await page.Locator(".shape").First.ClickAsync();
        await page.Locator("#neck path[stroke-dasharray]").First.WaitForAsync();

        // S, the distance of two strings, is 24 in the units of the picture.
        var radii = (
            await page.EvaluateAsync<double[]>(
                "[...document.querySelectorAll('#neck svg circle')].map(one => one.r.baseVal.value)"
            )
        ).ToHashSet();
        Assert.Contains(radii, radius => Math.Abs(radius - 0.33 * 24) < 0.05);
        Assert.Contains(radii, radius => Math.Abs(radius - 0.43 * 24) < 0.05);
    }

    [Fact]
    public async Task The_ring_of_the_focus_is_three_wide_and_three_off()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Sevenths);
        await opened.Page.Keyboard.PressAsync("Tab");
        await opened.Page.Keyboard.PressAsync("Tab");

        Assert.Equal(
            "3px 3px solid",
            await opened.Page.EvaluateAsync<string>(
                "(one => `${one.outlineWidth} ${one.outlineOffset} ${one.outlineStyle}`)(getComputedStyle(document.activeElement))"
            )
        );
    }

    [Fact]
    public async Task Nothing_moves_where_less_motion_is_asked_for()
    {
        await using var opened = await chromium.OpenStudioAsync(
            studio.Address,
            Sevenths,
            options: new() { ServiceWorkers = ServiceWorkerPolicy.Block, ReducedMotion = ReducedMotion.Reduce }
        );

        Assert.Empty(
            await opened.Page.EvaluateAsync<string[]>(
                """
                [...document.querySelectorAll("body *")]
                    .filter(one => (style => style.transitionDuration !== "0s" || style.animationName !== "none")(getComputedStyle(one)))
                    .map(one => one.outerHTML.slice(0, 90))
                """
            )
        );
    }
}
