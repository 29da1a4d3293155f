using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>What is shown to a class, and what is handed over of a view.</summary>
public class ClassTests(Chromium chromium, RunningStudio studio)
{
    private Task<OpenPage> OpenAsync() =>
        chromium.OpenStudioAsync(studio.Address, "show the seventh chords, on strings 4-1, in D major");

    [Fact]
    public async Task Pictures_go_on_and_back_by_the_keys_of_a_clicker_and_end_with_Escape()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var title = page.Locator("#class h2");

        await page.ClickAsync("text=Show to a class");
        await Assertions.Expect(title).ToHaveTextAsync("D major");
        await page.Keyboard.PressAsync("PageDown");
        await Assertions.Expect(title).ToHaveTextAsync("Dmaj7");
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(title).ToHaveTextAsync("F♯m7");
        await page.Keyboard.PressAsync("PageUp");
        await Assertions.Expect(title).ToHaveTextAsync("Dmaj7");
        await page.Keyboard.PressAsync("Escape");

        await Assertions.Expect(page.Locator("#class")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task From_opposite_the_neck_is_mirrored()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await page.ClickAsync("text=Show to a class");
        var nut = page.Locator("#class svg [data-part='string names'] text").First;
        var before = (await nut.BoundingBoxAsync())!.X;

        await page.ClickAsync("text=As seen from opposite");

        await page.Locator("#class [aria-pressed=true]").WaitForAsync();
        Assert.True((await nut.BoundingBoxAsync())!.X > before + 500);
    }

    [Fact]
    public async Task A_still_has_a_transparent_ground()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await page.ClickAsync("text=Show to a class");

        var download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("text=Still (PNG)"));

        var bytes = await File.ReadAllBytesAsync((await download.PathAsync())!, TestContext.Current.CancellationToken);
        Assert.Equal("fretloom-1.png", download.SuggestedFilename);
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
