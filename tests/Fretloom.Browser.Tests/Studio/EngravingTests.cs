using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>Exercises are seen as staves in the handout beside the editor, and as tablature where there is no engraver.</summary>
public sealed class EngravingTests(Chromium chromium, RunningStudio studio)
{
    private const string Library = "**/assets/verovio/**";
    private const string Lesson = "?lesson=f-without-the-barre.md";

    private static ILocator Handout(OpenPage opened) => opened.Page.FrameLocator("iframe.handout").Locator("article");

    private static ILocator Staves(OpenPage opened) => Handout(opened).Locator("[data-note]");

    [Fact]
    public async Task An_exercise_of_a_lesson_is_engraved()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address);
        await opened.Page.GotoAsync(studio.Address + Lesson);

        await Assertions.Expect(Staves(opened).First).ToBeVisibleAsync();
        await Assertions.Expect(Handout(opened).Locator(".tablature")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Without_the_engraver_the_exercises_stay_tablature()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address);
        var isAsked = new TaskCompletionSource();
        await opened.Page.RouteAsync(
            Library,
            async route =>
            {
                await route.FulfillAsync(new() { Status = 404 });
                isAsked.TrySetResult();
            }
        );
        await opened.Page.GotoAsync(studio.Address + Lesson);
        await isAsked.Task.WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);

        await Assertions.Expect(Handout(opened).Locator(".tablature").First).ToBeVisibleAsync();
        await Assertions.Expect(Staves(opened)).ToHaveCountAsync(0);
    }
}
