using UglyToad.PdfPig;

namespace Fretloom.Browser.Tests;

public class HandoutTests(Chromium chromium, Handouts handouts, OpenHandouts open) : IClassFixture<OpenHandouts>
{
    public static TheoryData<string> Names => [.. Handouts.Names];

    public static TheoryData<string> WithPictures => [.. Handouts.WithPictures];

    public static MatrixTheoryData<string, int> NamesAndWidths => new(Handouts.Names, [390, 1280]);

    [Theory]
    [MemberData(nameof(Names))]
    public async Task A_page_asks_for_nothing_and_complains_of_nothing(string name)
    {
        var opened = await open.AtAsync(name);

        Assert.Empty(opened.Requests);
        Assert.Empty(opened.Complaints);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Axe_finds_no_fault_in_any_colour(string name)
    {
        await using var opened = await chromium.OpenAsync(handouts.PathOf(name));

        await opened.OpenTablesAsync();

        Assert.Equal("", await opened.AxeInAsync(Enum.GetValues<Colours>()));
    }

    [Fact]
    public async Task Axe_finds_a_fault_where_there_is_one()
    {
        await using var opened = await chromium.OpenAsync(handouts.PathOf(Handouts.Names[0]));

        await opened.Page.EvaluateAsync("document.querySelector('h1').style.color = 'gainsboro'");

        Assert.StartsWith("color-contrast", Assert.Single(await opened.AxeAsync()), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Axe_finds_no_fault_on_a_phone(string name)
    {
        var opened = await open.AtAsync(name, 390);

        Assert.Equal("", string.Join('\n', await opened.AxeAsync()));
    }

    [Theory]
    [MemberData(nameof(NamesAndWidths))]
    public async Task A_page_is_no_wider_than_the_window(string name, int width)
    {
        var opened = await open.AtAsync(name, width);

        Assert.Equal(width, await opened.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task A_browser_prints_a_page(string name)
    {
        await using var opened = await chromium.OpenAsync(handouts.PathOf(name));

        var bytes = await opened.Page.PdfAsync(new() { PreferCSSPageSize = true });

        using var pdf = PdfDocument.Open(bytes);
        Assert.InRange(pdf.NumberOfPages, 1, 12);
        Assert.Contains("Made with Fretloom", pdf.GetPage(pdf.NumberOfPages).Text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Every_letter_and_accidental_is_drawn_with_the_fonts_in_the_page(string name)
    {
        var opened = await open.AtAsync(name);

        var fonts = await opened.FontsAsync();

        Assert.Empty(fonts[false]);
        Assert.Contains("Source Serif 4", fonts[true]);
        if ("♭♮♯".Any((await opened.Page.Locator("body").InnerTextAsync()).Contains))
        {
            Assert.Contains("Fretloom Accidentals", fonts[true]);
        }
    }

    [Theory]
    [MemberData(nameof(WithPictures))]
    public async Task Every_picture_has_a_name_for_those_who_do_not_see_it(string name)
    {
        var opened = await open.AtAsync(name);

        var pictures = await opened.Page.Locator(".picture svg").CountAsync();
        var names = await opened.PictureNamesAsync();

        Assert.True(pictures > 0);
        Assert.True(names.Count >= pictures);
        Assert.All(names, Assert.NotEmpty);
    }

    [Theory]
    [MemberData(nameof(WithPictures))]
    public async Task Every_picture_has_its_content_as_a_table(string name)
    {
        var opened = await open.AtAsync(name);

        var counts = await opened.Page.EvaluateAsync<int[][]>(
            """
            [...document.querySelectorAll('figure')].map(figure =>
                [figure.querySelectorAll('.picture').length, figure.querySelectorAll('details table').length])
            """
        );

        Assert.NotEmpty(counts);
        Assert.All(counts, count => Assert.Equal(count[0], count[1]));
    }

    [Theory]
    [MemberData(nameof(WithPictures))]
    public async Task On_a_phone_wide_pictures_are_reached_and_moved_with_the_keyboard(string name)
    {
        await using var opened = await chromium.OpenAsync(handouts.PathOf(name), 390);
        var page = opened.Page;
        var wide = await page.EvaluateAsync<int>(
            "[...document.querySelectorAll('.picture')].filter(one => one.scrollWidth > one.clientWidth).length"
        );

        var reached = 0;
        for (var at = 0; at < 120 && reached < wide; at++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (
                !await page.EvaluateAsync<bool>(
                    "(one => one.matches('.picture') && one.scrollWidth > one.clientWidth)(document.activeElement)"
                )
            )
            {
                continue;
            }

            reached++;
            Assert.Equal("solid 3px", await page.EvaluateAsync<string>(Ring));
            await page.Keyboard.PressAsync("ArrowRight");
            await page.EvaluateAsync(Moved);
        }

        Assert.Equal(wide, reached);
    }

    // Scrolling takes some frames.
    private const string Moved = """
        new Promise((done, failed) => {
            const look = left => document.activeElement.scrollLeft > 0 ? done(true)
                : left > 0 ? requestAnimationFrame(() => look(left - 1)) : failed(new Error('It does not move.'));
            look(200);
        })
        """;

    private const string Ring =
        "(style => `${style.outlineStyle} ${style.outlineWidth}`)(getComputedStyle(document.activeElement))";
}
