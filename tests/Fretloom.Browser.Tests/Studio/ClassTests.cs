using System.Text.RegularExpressions;
using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>What is shown to a class, and what is handed over of a view.</summary>
public class ClassTests(Chromium chromium, RunningStudio studio)
{
    private Task<OpenPage> OpenAsync() => chromium.OpenStudioAsync(studio.Address, Sentence);

    private const string Sentence = "show the seventh chords, on strings 4-1, in D major";

    private const string Lesson = """
        ---
        title: For the class
        key: D major
        ---

        Said aloud.

        ```show
        the triads, on strings 4-2
        title: The triads
        ```

        ```play
        the scale, up, in one octave
        title: The scale
        ```
        """;

    [Fact]
    public async Task Pictures_go_on_and_back_by_the_keys_of_a_clicker_and_end_with_Escape()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var (name, at) = (page.Locator("#class .what"), page.Locator("#class-at"));

        await page.ShowToClassAsync();
        await Assertions.Expect(name).ToHaveTextAsync("D major");
        await Assertions
            .Expect(page.Locator("#class h2"))
            .ToHaveTextAsync("Show the seventh chords, in D major, on strings 4-1");
        await Assertions.Expect(at).ToHaveTextAsync(new Regex("^1 of \\d+$"));
        foreach (var (key, shown) in Keys)
        {
            await page.Keyboard.PressAsync(key);
            await Assertions.Expect(name).ToHaveTextAsync(shown);
        }

        await page.Keyboard.PressAsync("End");
        await Assertions
            .Expect(page.GetByRole(AriaRole.Button, new() { Name = "Next", Exact = true }))
            .ToBeDisabledAsync();
        await page.Keyboard.PressAsync("Escape");

        await Assertions.Expect(page.Locator("#class")).ToBeHiddenAsync();
    }

    /// <summary>A page in full screen is drawn over everything else in the window: the dialog must lie over it.</summary>
    [Fact]
    public async Task The_screen_is_taken_given_back_by_F_and_the_picture_lies_over_the_page()
    {
        const string IsOver = "document.elementFromPoint(innerWidth / 2, innerHeight / 2).closest('#class') !== null";
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var full = page.Locator("html:fullscreen");

        await page.ShowToClassAsync();
        await Assertions.Expect(full).ToHaveCountAsync(1);
        Assert.True(await page.EvaluateAsync<bool>(IsOver));
        var taken = page.GetByRole(AriaRole.Button, new() { Name = "Full screen", Pressed = true });
        await Assertions.Expect(taken).ToBeVisibleAsync();

        await page.Keyboard.PressAsync("f");
        await Assertions.Expect(full).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("#class")).ToBeVisibleAsync();
        await Assertions.Expect(taken).ToHaveCountAsync(0);

        await page.ClickAsync("#class >> text=Full screen");
        await Assertions.Expect(full).ToHaveCountAsync(1);
        Assert.True(await page.EvaluateAsync<bool>(IsOver));

        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(full).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("#class")).ToBeHiddenAsync();
    }

    private static readonly (string Key, string Name)[] Keys =
    [
        ("PageDown", "Dmaj7"),
        ("ArrowRight", "F♯m7"),
        ("PageUp", "Dmaj7"),
        ("ArrowLeft", "D major"),
        ("Space", "Dmaj7"),
        ("ArrowDown", "F♯m7"),
        ("ArrowUp", "Dmaj7"),
        ("Home", "D major"),
    ];

    [Theory]
    [InlineData("b")]
    [InlineData(".")]
    public async Task A_key_of_a_clicker_blanks_the_screen_and_any_key_shows_the_same_again(string key)
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await page.ShowToClassAsync();
        await page.Keyboard.PressAsync("PageDown");
        var blank = page.Locator("#class .blank");

        await page.Keyboard.PressAsync(key);
        await Assertions.Expect(blank).ToBeVisibleAsync();
        Assert.Equal("rgb(0, 0, 0)", await blank.EvaluateAsync<string>("one => getComputedStyle(one).backgroundColor"));
        var (box, screen) = ((await blank.BoundingBoxAsync())!, page.ViewportSize!);
        Assert.Equal((0, 0, screen.Width, screen.Height), (box.X, box.Y, box.Width, box.Height));
        await page.Keyboard.PressAsync("PageDown");

        await Assertions.Expect(blank).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("#class .what")).ToHaveTextAsync("Dmaj7");
    }

    [Theory]
    [InlineData(1280, 720, false)]
    [InlineData(1920, 1080, false)]
    [InlineData(1024, 768, false)]
    [InlineData(1280, 720, true)]
    [InlineData(1024, 768, true)]
    public async Task The_picture_fills_the_screen_of_a_beamer_and_explains_its_marks(
        int width,
        int height,
        bool isWholeNeck
    )
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, isWholeNeck ? null : Sentence);
        var page = opened.Page;
        await page.SetViewportSizeAsync(width, height);
        await page.ShowToClassAsync();
        await page.Locator("#class svg [data-part='legend']").WaitForAsync();
        await page.EvaluateAsync("studio.seen()");

        // The drawn part of the picture: it touches two sides of its room, which has most of the screen.
        var drawn = await page.EvaluateAsync<double[]>(
            """
            () => {
                const svg = document.querySelector("#class .picture svg");
                const [box, room] = [svg.viewBox.baseVal, svg.getBoundingClientRect()];
                const scale = Math.min(room.width / box.width, room.height / box.height);
                return [box.width * scale / innerWidth, box.height * scale / innerHeight, document.querySelector("#class").scrollWidth];
            }
            """
        );

        Assert.Equal(width, drawn[2]);
        Assert.InRange(drawn[0] * drawn[1], 0.5, 1);
        var legend = await page.Locator("#class svg [data-part='legend']").TextContentAsync();
        Assert.Contains("tonic", legend, StringComparison.Ordinal);
    }

    [Fact]
    public async Task From_opposite_the_neck_is_mirrored_and_its_words_are_not()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await page.ShowToClassAsync();
        var nut = page.Locator("#class svg [data-part='string names'] text").First;
        var before = (await nut.BoundingBoxAsync())!.X;

        await page.Keyboard.PressAsync("m");

        await page.GetByRole(AriaRole.Button, new() { Name = "As seen from opposite", Pressed = true }).WaitForAsync();
        Assert.True((await nut.BoundingBoxAsync())!.X > before + 500);
        Assert.Equal(
            0,
            await page.EvaluateAsync<int>(
                "[...document.querySelectorAll('#class .picture text')].filter(one => one.getScreenCTM().a <= 0).length"
            )
        );
    }

    [Fact]
    public async Task A_lesson_follows_and_keys_work_in_its_frame_and_its_staves_are_not_mirrored()
    {
        await File.WriteAllTextAsync(
            Path.Combine(studio.Folder, "class.md"),
            Lesson,
            TestContext.Current.CancellationToken
        );
        await using var opened = await chromium.OpenStudioAsync($"{studio.Address}?lesson=class.md");
        var page = opened.Page;
        await Assertions.Expect(page.Locator(".cm-content")).ToContainTextAsync("Said aloud");
        var (title, name, facing) = (
            page.Locator("#class h2"),
            page.Locator("#class .what"),
            page.Locator("#class button", new() { HasText = "As seen from opposite" })
        );

        await page.ShowToClassAsync();
        await Assertions.Expect(title).ToHaveTextAsync("For the class");
        await Assertions.Expect(name).ToHaveTextAsync("The triads");
        var before = await page.Locator("#class .picture svg").InnerHTMLAsync();
        await facing.ClickAsync();
        await Assertions.Expect(facing).ToHaveAttributeAsync("aria-pressed", "true");
        Assert.NotEqual(before, await page.Locator("#class .picture svg").InnerHTMLAsync());

        await page.Keyboard.PressAsync("End");
        await Assertions.Expect(name).ToHaveTextAsync("The scale");
        await Assertions.Expect(facing).ToBeDisabledAsync();
        await Assertions.Expect(page.GetByText("they are not mirrored")).ToBeVisibleAsync();
        var staves = page.FrameLocator("#class iframe").Locator(".staves svg").First;
        await staves.WaitForAsync();
        // All of the exercise is seen without scrolling.
        var (bottom, room) = await BottomAsync(staves);
        Assert.InRange(bottom, 100, room);
        var download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("text=Still (PNG)"));
        await IsPictureOnNothingAsync(page, download);

        // Whoever clicked into the frame is in it with the keys.
        await page.Locator("#class iframe").ClickAsync();
        Assert.Equal("IFRAME", await page.EvaluateAsync<string>("document.activeElement.tagName"));
        await page.Keyboard.PressAsync("PageUp");
        await Assertions.Expect(name).ToHaveTextAsync("The triads");
        await page.Keyboard.PressAsync("Home");
        await Assertions.Expect(name).ToHaveTextAsync("D major");
        await page.Keyboard.PressAsync("End");
        // Keys are heard in the frame once its page is there.
        await staves.WaitForAsync();
        await page.Locator("#class iframe").ClickAsync();
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Locator("#class")).ToBeHiddenAsync();
    }

    private static async Task<(double Bottom, double Room)> BottomAsync(ILocator staves)
    {
        var measured = await staves.EvaluateAsync<double[]>(
            "one => [one.closest('.staves').getBoundingClientRect().bottom, one.ownerDocument.documentElement.clientHeight]"
        );
        return (measured[0], measured[1]);
    }

    [Fact]
    public async Task A_still_has_a_transparent_ground()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await page.ShowToClassAsync();

        var download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("text=Still (PNG)"));

        Assert.Equal("d-major-1.png", download.SuggestedFilename);
        await IsPictureOnNothingAsync(page, download);
    }

    private static async Task IsPictureOnNothingAsync(IPage page, IDownload download)
    {
        var bytes = await File.ReadAllBytesAsync((await download.PathAsync())!, TestContext.Current.CancellationToken);
        var alphas = await page.EvaluateAsync<int[]>(
            """
            async text => {
                const image = new Image();
                image.src = 'data:image/png;base64,' + text;
                await image.decode();
                const canvas = document.createElement('canvas');
                [canvas.width, canvas.height] = [image.width, image.height];
                const context = canvas.getContext('2d');
                context.drawImage(image, 0, 0);
                const { data } = context.getImageData(0, 0, image.width, image.height);
                let inked = 0;
                for (let at = 3; at < data.length; at += 4) inked += data[at] > 200 ? 1 : 0;
                return [data[3], inked > 10000 ? 1 : 0];
            }
            """,
            Convert.ToBase64String(bytes)
        );
        Assert.Equal([0, 1], alphas);
    }

    /// <summary>A program that opens the file has none of our fonts.</summary>
    [Fact]
    public async Task What_is_seen_is_saved_as_one_picture_that_carries_its_fonts()
    {
        const string Triads = "show the triads, in D major";
        await using var opened = await chromium.OpenStudioAsync(studio.Address, Triads);
        var page = opened.Page;

        var download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("text=Picture (SVG)"));
        Assert.Equal("the-triads-in-d-major.svg", download.SuggestedFilename);
        await Assertions.Expect(page.GetByText("the-triads-in-d-major.svg is saved")).ToBeVisibleAsync();
        var svg = System.Xml.Linq.XDocument.Load((await download.PathAsync())!);
        var pictures = PicturePlan.For(ShowQuestion.Answer(Triads, ShowDefaults.Standard).Value!).Count;
        Assert.True(pictures > 1);
        Assert.Equal(pictures, svg.Root!.Elements().Count(one => one.Name.LocalName == "svg"));
        Assert.Equal(6, Regex.Count(svg.ToString(), "@font-face"));

        download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("text=Picture (PNG)"));
        Assert.Equal("the-triads-in-d-major.png", download.SuggestedFilename);
        await IsPictureOnNothingAsync(page, download);
    }

    /// <summary>The fonts in a picture come a little after it: the first one that is saved has all its words too.</summary>
    [Fact]
    public async Task The_first_picture_that_is_saved_is_like_every_later_one()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, "show the triads, in D major");
        var pictures = new List<string>();
        for (var time = 0; time < 3; time++)
        {
            var download = await opened.Page.RunAndWaitForDownloadAsync(() =>
                opened.Page.ClickAsync("text=Picture (PNG)")
            );
            var bytes = await File.ReadAllBytesAsync(
                (await download.PathAsync())!,
                TestContext.Current.CancellationToken
            );
            pictures.Add(Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(bytes)));
        }

        Assert.Single(pictures.Distinct());
    }

    [Fact]
    public async Task One_sheet_is_printed_without_a_lesson()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        var download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("text=Print one sheet (PDF)"));

        using var pdf = UglyToad.PdfPig.PdfDocument.Open((await download.PathAsync())!);
        Assert.Equal(1, pdf.NumberOfPages);
        Assert.Contains("seventh", pdf.GetPage(1).Text, StringComparison.OrdinalIgnoreCase);
    }
}
