using Microsoft.Playwright;

namespace Fretloom.Browser.Tests.Studio;

/// <summary>Exercises are seen as staves in the handout beside the editor, and as tablature where there is no engraver.</summary>
public sealed class EngravingTests(Chromium chromium, RunningStudio studio)
{
    private const string Library = "**/assets/verovio/**";
    private const string Thread = "**/js/engraver-worker.js";
    private const string Two = "two-exercises.md";
    private const string Lesson = "?lesson=f-without-the-barre.md";

    private static ILocator Handout(OpenPage opened) => opened.Page.FrameLocator("iframe.handout").Locator("article");

    private static ILocator Told(OpenPage opened) => opened.Page.Locator(".engraving");

    private static ILocator Body(OpenPage opened) => opened.Page.FrameLocator("iframe.handout").Locator("body");

    private static ILocator Staves(OpenPage opened) => Handout(opened).Locator("[data-note]");

    [Fact]
    public async Task An_exercise_of_a_lesson_is_engraved()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address + Lesson);

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
        await Assertions.Expect(Told(opened)).ToContainTextAsync("could not be fetched");

        await opened.Page.UnrouteAsync(Library);
        await opened.Page.ClickAsync("text=Try again");
        await Assertions.Expect(Staves(opened).First).ToBeVisibleAsync();
        await Assertions.Expect(Told(opened)).ToBeEmptyAsync();
    }

    [Fact]
    public async Task An_engraver_that_hangs_is_ended_and_another_takes_its_place()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address);
        var begun = 0;
        await opened.Page.RouteAsync(
            Thread,
            route =>
                begun++ == 0
                    ? route.FulfillAsync(
                        new()
                        {
                            ContentType = "text/javascript",
                            Body = "postMessage({}); onmessage = () => { for (;;); };",
                        }
                    )
                    : route.ContinueAsync()
        );
        await opened.Page.GotoAsync(studio.Address + Lesson);

        await Assertions.Expect(Staves(opened).First).ToBeVisibleAsync(new() { Timeout = 90_000 });
        Assert.Equal(2, begun);
    }

    [Fact]
    public async Task An_engraver_that_crashes_each_time_is_told_in_words_and_the_tablature_stays()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address);
        await opened.Page.RouteAsync(
            Thread,
            route =>
                route.FulfillAsync(
                    new()
                    {
                        ContentType = "text/javascript",
                        Body = "postMessage({}); onmessage = () => postMessage({ crash: 'gone' });",
                    }
                )
        );
        await opened.Page.GotoAsync(studio.Address + Lesson);

        await Assertions.Expect(Told(opened)).ToContainTextAsync("plain-text tablature");
        await Assertions.Expect(Handout(opened).Locator(".tablature").First).ToBeVisibleAsync();
        await Assertions.Expect(Handout(opened).Locator("[aria-busy]")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Only_the_exercise_that_changed_is_engraved_again_and_its_former_picture_stays_until_then()
    {
        await using var opened = await chromium.OpenStudioAsync(studio.Address);
        await opened.Page.AddInitScriptAsync(
            """
            globalThis.asked = 0;
            const post = Worker.prototype.postMessage;
            Worker.prototype.postMessage = function (message) {
              asked++;
              return post.call(this, message);
            };
            """
        );
        await File.WriteAllTextAsync(
            Path.Combine(studio.Folder, Two),
            "---\ntitle: Two\n---\n\n```play\nthe scale, in eighths\n```\n\n```play\nthe triads, up and down, in eighths\n```\n",
            TestContext.Current.CancellationToken
        );
        await opened.Page.GotoAsync($"{studio.Address}?lesson={Two}");
        await Assertions.Expect(Handout(opened).Locator(".exercise:has(.system)")).ToHaveCountAsync(2);
        // Each is measured, and set as wide as the page and as a telephone.
        Assert.Equal(6, await AskedAsync());
        await Body(opened)
            .EvaluateAsync(
                """
                body => {
                  globalThis.bare = 0;
                  new MutationObserver(() => {
                    const shown = [...document.querySelectorAll(".exercise .tablature")].filter(one => one.checkVisibility());
                    bare = Math.max(bare, shown.length);
                  }).observe(body, { childList: true, subtree: true });
                }
                """
            );
        await opened.Page.ClickAsync(".cm-line:has-text('up and down')");
        await opened.Page.Keyboard.PressAsync("End");
        await opened.Page.Keyboard.InsertTextAsync(", in D major");

        await opened.Page.WaitForFunctionAsync("() => asked > 8");
        await Assertions.Expect(Handout(opened).Locator("[aria-busy]")).ToHaveCountAsync(0);
        Assert.Equal(9, await AskedAsync());
        Assert.Equal(0, await Body(opened).EvaluateAsync<int>("() => bare"));

        Task<int> AskedAsync() => opened.Page.EvaluateAsync<int>("asked");
    }
}
