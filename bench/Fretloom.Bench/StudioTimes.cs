using Fretloom.Testing;
using Microsoft.Playwright;

namespace Fretloom.Bench;

/// <summary>
/// What a teacher waits for in the studio, in Debian's Chromium against the program itself: from a picker to the painted neck, and to the cards and
/// findings that follow it, from a key to the handout beside the editor, the first load and a warm one. Milliseconds by the browser's own clocks.
/// </summary>
internal static class StudioTimes
{
    private const int Rounds = 48;
    private const int WarmUp = 24;
    private const int Loads = 7;

    private static readonly string[] Keys =
    [
        "in C major",
        "in G major",
        "in A major",
        "in E major",
        "in F major",
        "in B♭ major",
        "in D major",
        "in A♭ major",
    ];

    public static async Task PrintAsync()
    {
        var folder = Directory.CreateTempSubdirectory("fretloom-bench-");
        File.Copy(Repository.PathTo("bench/lessons/ten-pages.md"), Path.Combine(folder.FullName, "ten-pages.md"));
        using var program = new StartedProgram(
            Repository.PathTo("fretloom"),
            ["studio", "--port", "0", "--lessons", folder.FullName]
        );
        var address = await AddressAsync(program);
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = Run.Find("chromium"), Args = ["--no-sandbox"] }
        );
        await PrintLoadsAsync(browser, address);
        await PrintPickerAsync(browser, address, "the notes of the key, on a six-string bass, in D major, frets 0-24");
        await PrintPickerAsync(browser, address, "the notes of the key, on a guitar, in D major, frets 0-22");
        await PrintPickerAsync(browser, address, "the seventh chords, on a guitar, in D major, on strings 4-1");
        await PrintTypingAsync(browser, address);
        program.Kill();
        folder.Delete(recursive: true);
    }

    private static async Task<string> AddressAsync(StartedProgram program)
    {
        while (await program.ReadLineAsync() is { } line)
        {
            if (line.IndexOf("http://", StringComparison.Ordinal) is >= 0 and var at)
            {
                return line[at..].Trim();
            }
        }

        throw new InvalidOperationException("The studio did not start.");
    }

    // Seen: a neck is in the page, and the browser has painted it. Ready: the program runs there, and has drawn everything.
    private static async Task PrintLoadsAsync(IBrowser browser, string address)
    {
        var (first, warm, bytes) = (new List<Load>(), new List<Load>(), 0.0);
        for (var load = 0; load < Loads; load++)
        {
            await using var context = await browser.NewContextAsync();
            var page = await NewPageAsync(
                context,
                """
                const painted = name => requestAnimationFrame(() => setTimeout(() => (globalThis[name] = performance.now())));
                new MutationObserver((_, all) => {
                  if (!globalThis.isSeen && document.querySelector(".opening-neck svg, .dock .now svg")) {
                    globalThis.isSeen = true;
                    painted("seenAt");
                  }
                  if (!document.documentElement?.dataset.ready) return;
                  all.disconnect();
                  painted("readyAt");
                }).observe(document, { attributes: true, childList: true, subtree: true, attributeFilter: ["data-ready"] });
                """
            );
            var network = await context.NewCDPSessionAsync(page);
            await network.SendAsync("Network.enable");
            var transferred = 0.0;
            network.Event("Network.loadingFinished").OnEvent += (_, what) =>
                transferred += what!.Value.GetProperty("encodedDataLength").GetDouble();
            first.Add(await ReadyAsync(page, address));
            bytes = transferred;
            // Telling of every request would hold the next loads up.
            await network.DetachAsync();
            await page.EvaluateAsync("() => navigator.serviceWorker.ready");
            // What a new worker still does, it does before anybody comes again.
            await page.WaitForTimeoutAsync(3000);
            // The browser keeps what it made of the scripts when it meets them again.
            await ReadyAsync(page, address);
            await page.WaitForTimeoutAsync(1000);
            warm.Add(await ReadyAsync(page, address));
        }

        Print("first load", first);
        Console.WriteLine(FormattableString.Invariant($"transferred {bytes / 1e6:0.00} MB"));
        Print("warm load", warm);
    }

    private static void Print(string name, List<Load> loads) =>
        Console.WriteLine(
            FormattableString.Invariant(
                $"{name}: neck seen after {Median([.. loads.Select(load => load.Seen)]):0} ms, ready after {Median([.. loads.Select(load => load.Ready)]):0} ms"
            )
        );

    private sealed record Load(double Seen, double Ready);

    private static async Task<Load> ReadyAsync(IPage page, string address)
    {
        await page.GotoAsync(address);
        await page.WaitForFunctionAsync("() => globalThis.readyAt > 0");
        var times = await page.EvaluateAsync<double[]>("() => [seenAt, readyAt]");
        return new Load(times[0], times[1]);
    }

    // Event Timing (W3C): from the press of the button, as the system saw it, to the next frame that was painted after all handlers ran; in steps
    // of 8 ms. What follows the neck is timed by the page itself. Every round picks another key with the pointer.
    private static async Task PrintPickerAsync(IBrowser browser, string address, string sentence)
    {
        await using var context = await browser.NewContextAsync();
        var page = await NewPageAsync(
            context,
            """
            globalThis.presses = [];
            new PerformanceObserver(list => {
              for (const entry of list.getEntries())
                if (entry.name === "mousedown")
                  presses.push([entry.duration, entry.processingEnd - entry.processingStart]);
            }).observe({ type: "event", durationThreshold: 16 });
            """
        );
        await page.GotoAsync($"{address}?show={Uri.EscapeDataString(sentence)}");
        await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
        await page.WaitForSelectorAsync(".findings dl");
        await page.EvaluateAsync(
            """
            () => {
              addEventListener("mousedown", event => {
                globalThis.pressedAt = event.timeStamp;
                globalThis.followedAt = undefined;
              }, true);
              // The last change of either that was painted.
              const painted = () => requestAnimationFrame(() => setTimeout(() => (globalThis.followedAt = performance.now())));
              for (const part of ["section.view", ".findings"])
                new MutationObserver(painted).observe(document.querySelector(part), { attributes: true, characterData: true, childList: true, subtree: true });
            }
            """
        );
        var (whole, program, followed) = (new List<double>(), new List<double>(), new List<double>());
        for (var round = 0; round < WarmUp + Rounds; round++)
        {
            var key = Keys[round % Keys.Length];
            await page.ClickAsync("button.phrase[aria-label^='the key']");
            var option = page.Locator($".pop [role=option]:text-is('{key}')");
            await option.ScrollIntoViewIfNeededAsync();
            var box = (await option.BoundingBoxAsync())!;
            // The list is read before it is pressed in, for less time than a hand needs.
            await page.WaitForTimeoutAsync(400);
            await page.EvaluateAsync("() => { presses.length = 0; }");
            // Pressed at once: a choice that is rested on is on the neck already.
            await page.Mouse.MoveAsync(box.X + 20, box.Y + (box.Height / 2));
            await page.Mouse.DownAsync();
            await page.WaitForTimeoutAsync(250);
            await page.WaitForFunctionAsync("() => globalThis.followedAt > 0");
            var follows = await page.EvaluateAsync<double>("() => followedAt - pressedAt");
            // The browser tells of a press when it is over.
            await page.Mouse.UpAsync();
            await page.WaitForFunctionAsync("() => presses.length > 0");
            var press = await page.EvaluateAsync<double[]>("() => presses[0]");
            if (round >= WarmUp)
            {
                whole.Add(press[0]);
                program.Add(press[1]);
                followed.Add(follows);
            }

            await page.WaitForTimeoutAsync(150);
        }

        Console.WriteLine(
            FormattableString.Invariant(
                $"picker to painted neck: median {Median(whole):0} ms, p95 {Part(whole, 0.95):0} ms (handlers {Median(program):0} ms); cards and findings: median {Median(followed):0} ms, p95 {Part(followed, 0.95):0} ms  {sentence}"
            )
        );
    }

    // From a key to the frame in which the handout beside the editor shows what it did.
    private static async Task PrintTypingAsync(IBrowser browser, string address)
    {
        await using var context = await browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = 1400, Height = 900 },
            }
        );
        var page = await NewPageAsync(context);
        await page.GotoAsync($"{address}?lesson=ten-pages.md");
        await page.FrameLocator("iframe.handout").Locator("article svg").First.WaitForAsync();
        await page.ClickAsync("text=The key on all strings");
        await page.WaitForTimeoutAsync(6000);
        await page.EvaluateAsync(
            """
            () => {
              addEventListener("keydown", event => (globalThis.pressedAt = event.timeStamp), true);
              const frame = document.querySelector("iframe.handout");
              new MutationObserver(() => requestAnimationFrame(() => setTimeout(() => (globalThis.shownAt = performance.now())))).observe(
                frame.contentDocument.documentElement, { attributes: true, attributeFilter: ["data-shown"] });
            }
            """
        );
        var times = new List<double>();
        for (var round = 0; round < 32; round++)
        {
            await page.EvaluateAsync("() => { globalThis.shownAt = 0; }");
            await page.Keyboard.PressAsync(round % 2 == 0 ? "x" : "Backspace");
            await page.WaitForFunctionAsync("() => globalThis.shownAt > 0");
            var time = await page.EvaluateAsync<double>("() => shownAt - pressedAt");
            if (round >= 8)
            {
                times.Add(time);
            }

            await page.WaitForTimeoutAsync(400);
        }

        Console.WriteLine(
            FormattableString.Invariant(
                $"typing to handout, ten pages: median {Median(times):0} ms, p95 {Part(times, 0.95):0} ms"
            )
        );
    }

    private static async Task<IPage> NewPageAsync(IBrowserContext context, string? script = null)
    {
        context.SetDefaultTimeout(60_000);
        if (script is not null)
        {
            await context.AddInitScriptAsync(script);
        }

        return await context.NewPageAsync();
    }

    private static double Median(IReadOnlyCollection<double> times) => Part(times, 0.5);

    private static double Part(IReadOnlyCollection<double> times, double part) =>
        times.Order().ElementAt((int)Math.Min(times.Count - 1, part * times.Count));
}
