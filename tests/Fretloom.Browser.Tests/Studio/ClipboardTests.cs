using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>A picture on the clipboard, as another program takes it from there.</summary>
public class ClipboardTests(Chromium chromium, RunningStudio studio)
{
    private const string Triads = "show the triads, in D major";

    private const string Copy = "text=Copy the picture";

    private static readonly string[] Allowed = ["clipboard-read", "clipboard-write"];

    [Fact]
    public async Task All_that_is_seen_is_copied_as_one_PNG_of_its_size_with_a_transparent_ground()
    {
        await using var opened = await chromium.OpenStudioAsync(
            studio.Address,
            Triads,
            options: new() { ServiceWorkers = ServiceWorkerPolicy.Block, Permissions = Allowed }
        );
        var page = opened.Page;

        await page.Locator("section.view .board svg").First.WaitForAsync();
        await page.ClickAsync(Copy);
        await Assertions.Expect(page.GetByText("The picture is on the clipboard.")).ToBeVisibleAsync();

        // Chromium keeps the alpha of a PNG on the clipboard. A picture has four pixels for each point.
        var found = await page.EvaluateAsync<double[]>(
            """
            async () => {
                const [item, ...others] = await navigator.clipboard.read();
                if (others.length > 0 || !item.types.includes("image/png")) return [];
                const image = await createImageBitmap(await item.getType("image/png"));
                const canvas = new OffscreenCanvas(image.width, image.height);
                const context = canvas.getContext("2d");
                context.drawImage(image, 0, 0);
                const { data } = context.getImageData(0, 0, image.width, image.height);
                let inked = 0;
                for (let at = 3; at < data.length; at += 4) inked += data[at] > 200 ? 1 : 0;
                return [image.width, image.height, data[3], inked > 10000 ? 1 : 0];
            }
            """
        );
        var pictures = PicturePlan.For(ShowQuestion.Answer(Triads, ShowDefaults.Standard).Value!);
        var width = pictures.Max(picture => picture.Drawing.Width);
        var height = pictures.Sum(picture => picture.Drawing.Height) + 12 * (pictures.Count - 1);

        Assert.Equal(4, found.Length);
        Assert.True(pictures.Count > 1);
        Assert.Equal(4, found[0] / width, 0.02);
        Assert.Equal(4, found[1] / height, 0.02);
        Assert.Equal([0, 1], found[2..]);
    }

    [Fact]
    public async Task Where_the_browser_forbids_it_the_teacher_is_told_what_to_do()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address, "show the seventh chords");
        var page = opened.Page;
        await page.EvaluateAsync(
            "void (navigator.clipboard.write = () => Promise.reject(new DOMException('', 'NotAllowedError')))"
        );

        await page.ClickAsync(Copy);

        await Assertions.Expect(page.GetByText("does not allow copying here")).ToBeVisibleAsync();
    }
}
