using Fretloom.Testing;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>Who comes from the network gives the pass phrase, in a browser as it is.</summary>
public class DoorTests(Chromium chromium)
{
    [Fact]
    public async Task The_pass_phrase_lets_in_and_another_does_not()
    {
        Assert.SkipWhen(Chromium.WhyNot is not null, Chromium.WhyNot ?? "");
        var folder = Directory.CreateTempSubdirectory("fretloom-door-").FullName;
        using var program = new StartedProgram(
            Repository.PathTo("fretloom"),
            ["studio", "--port", "0", "--lessons", folder, "--listen", "0.0.0.0"],
            environment: new Dictionary<string, string> { ["FRETLOOM_PASSPHRASE"] = "a quiet ferry lane" }
        );
        var line = await program.ReadLineAsync();
        var address = line![line!.IndexOf("http://", StringComparison.Ordinal)..].Trim();
        var context = await chromium.ContextAsync();
        var page = await context.NewPageAsync();

        await page.GotoAsync(address);
        await page.FillAsync("input[name=phrase]", "something else");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("not the pass phrase");
        await Task.Delay(TimeSpan.FromSeconds(1.5), TestContext.Current.CancellationToken);
        await page.FillAsync("input[name=phrase]", "a quiet ferry lane");
        await page.Keyboard.PressAsync("Enter");

        await page.Locator("html[data-ready]")
            .WaitForAsync(new() { State = WaitForSelectorState.Attached, Timeout = 60_000 });
        await context.CloseAsync();
        program.Kill();
        Directory.Delete(folder, recursive: true);
    }
}
