using System.Text.Json;
using Microsoft.Playwright;

namespace Fretloom.Browser.Tests;

/// <summary>What plays the exercises of a page: heard at the sound output's own clock, seen on staff and neck.</summary>
public class PlayerTests(Chromium chromium, Handouts handouts)
{
    // Tells what the page does with sound, and when it lights a note. The output's clock stands still while the page is held
    // up, so that the times the page hands over are the same however busy the machine is.
    private const string Ear = """
        window.heard = { contexts: 0, buffers: [], starts: [], lit: [], levels: [], measured: 0 };
        window.AudioContext = class extends AudioContext {
            constructor() { super(); heard.contexts++; heard.context = this; }
            get currentTime() {
                const real = super.currentTime;
                this.lost = Math.max(this.lost ?? 0, real - (this.told ?? real) - 0.1);
                return this.told = real - this.lost;
            }
        };
        const create = BaseAudioContext.prototype.createBuffer;
        BaseAudioContext.prototype.createBuffer = function (...said) {
            const buffer = create.apply(this, said);
            heard.buffers.push(buffer);
            return buffer;
        };
        const start = AudioBufferSourceNode.prototype.start;
        AudioBufferSourceNode.prototype.start = function (time) {
            heard.starts.push({ time, buffer: heard.buffers.indexOf(this.buffer), seconds: this.buffer.duration });
            return start.call(this, time);
        };
        const fade = AudioParam.prototype.setTargetAtTime;
        AudioParam.prototype.setTargetAtTime = function (level, ...said) {
            heard.levels.push(level);
            return fade.call(this, level, ...said);
        };
        const measure = Element.prototype.getBoundingClientRect;
        Element.prototype.getBoundingClientRect = function () {
            heard.measured++;
            return measure.call(this);
        };
        addEventListener('DOMContentLoaded', () => document.querySelectorAll('.exercise').forEach(one =>
            one.addEventListener('lit', event => heard.lit.push({
                ...event.detail,
                heads: one.querySelectorAll(`[data-note="${event.detail.note}"].lit`).length,
                spots: one.querySelectorAll('.exercise-neck [data-part].lit').length,
            }))));
        """;

    private Task<OpenPage> OpenAsync(
        int width = 1280,
        Colours colours = Colours.Light,
        string name = Handouts.WithExercises
    ) => chromium.OpenAsync(handouts.PathOf(name), width, colours, before: Ear);

    [Fact]
    public async Task Nothing_sounds_before_it_is_asked_for()
    {
        await using var opened = await OpenAsync();

        await opened.Page.Locator("#exercise-1 .hear").WaitForAsync();

        Assert.Equal(0, await opened.Page.EvaluateAsync<int>("heard.contexts"));
        Assert.Equal("40", await opened.Page.Locator("#exercise-1 .volume").InputValueAsync());
    }

    [Fact]
    public async Task Each_note_is_lit_on_staff_and_neck_when_it_sounds()
    {
        await using var opened = await OpenAsync();

        await opened.Page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(opened.Page, "heard.lit.length >= 12");
        var lit = await opened.Page.EvaluateAsync<JsonElement>("heard.lit.slice(0, 12)");
        var starts = await opened.Page.EvaluateAsync<double[]>("heard.starts.map(one => one.time)");
        await opened.Page.ClickAsync("#exercise-1 .hear");

        Assert.Equal(Enumerable.Range(0, 12), lit.EnumerateArray().Select(one => one.GetProperty("note").GetInt32()));
        Assert.All(
            lit.EnumerateArray(),
            one =>
            {
                var time = one.GetProperty("time").GetDouble();
                Assert.Contains(starts, start => Math.Abs(start - time) < 1e-9);
                Assert.InRange(one.GetProperty("now").GetDouble() - time, 0, 0.25);
                Assert.Equal(4, one.GetProperty("heads").GetInt32());
                Assert.InRange(one.GetProperty("spots").GetInt32(), 1, 6);
            }
        );
        // Eighths at 240 quarter notes a minute, and a rest after seven of them; a busy machine may hold the page up, but never hurry it.
        var gaps = starts.Zip(starts.Skip(1), (one, next) => next - one).Take(11).ToList();
        Assert.All(gaps, (gap, at) => Assert.InRange(gap, (at == 6 ? 0.25 : 0.125) - 1e-6, 0.6));
        Assert.InRange(gaps.Count(gap => Math.Abs(gap - 0.125) < 1e-6), 6, 10);
        Assert.Equal("Hear it", await opened.Page.Locator("#exercise-1 .hear").InnerTextAsync());
        Assert.Equal(0, await opened.Page.Locator(".lit").CountAsync());
        Assert.Empty(opened.Complaints);
        Assert.Empty(opened.Requests);
    }

    /// <summary>Equal temperament with A4 = 440 Hz (ISO 16).</summary>
    [Fact]
    public async Task Each_pitch_is_made_once_and_in_tune()
    {
        await using var opened = await OpenAsync();

        await opened.Page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(opened.Page, "heard.lit.length >= 30");
        var cents = await opened.Page.EvaluateAsync<double[]>(InTune);

        // From F3 at fret 3 of string 4 to A4: every note but D♭ and the like.
        Assert.Equal(await opened.Page.EvaluateAsync<int>(DistinctPitches), cents.Length);
        Assert.All(cents, one => Assert.InRange(one, -5, 5));
    }

    [Fact]
    public async Task An_exercise_of_three_quarters_of_an_hour_takes_no_more_memory_than_its_pitches()
    {
        await using var opened = await OpenAsync(name: Handouts.Long);
        var page = opened.Page;

        await page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(page, "heard.lit.length >= 2");
        var seconds = await page.EvaluateAsync<double[]>("heard.buffers.map(one => one.duration)");

        // A buffer for each pitch and two for the clicks, and none for the exercise as a whole.
        Assert.InRange(seconds.Length, 1, 2 + await page.EvaluateAsync<int>(DistinctPitches));
        Assert.All(seconds, one => Assert.InRange(one, 0, 4.01));
    }

    [Fact]
    public async Task Repeat_signs_are_moved_with_the_keyboard_and_only_the_bars_between_them_are_played()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var (first, last) = (page.Locator("#exercise-1 .sign.first"), page.Locator("#exercise-1 .sign.last"));

        await first.FocusAsync();
        var before = (await first.BoundingBoxAsync())!.X;
        await page.Keyboard.PressAsync("ArrowRight");
        await last.FocusAsync();
        await page.Keyboard.PressAsync("Home");

        Assert.Equal("bar 2", await first.GetAttributeAsync("aria-valuetext"));
        Assert.Equal("2", await last.GetAttributeAsync("aria-valuenow"));
        Assert.True((await first.BoundingBoxAsync())!.X > before + 50);
        Assert.Equal(1, await page.Locator("#exercise-1 .chosen").CountAsync());
        await page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(page, "heard.lit.length >= 16");
        var lit = await page.EvaluateAsync<int[]>("[...new Set(heard.lit.map(one => one.note))].sort((a, b) => a - b)");
        Assert.Equal(Enumerable.Range(7, 7), lit);
    }

    [Fact]
    public async Task A_repeat_sign_is_drawn_to_another_bar_with_the_mouse()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var last = page.Locator("#exercise-1 .sign.last");
        await last.ScrollIntoViewIfNeededAsync();
        var from = (await last.BoundingBoxAsync())!;
        var staves = (await page.Locator("#exercise-1 .staves").BoundingBoxAsync())!;

        await page.Mouse.MoveAsync(from.X + from.Width / 2, from.Y + from.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(staves.X + staves.Width * 0.55f, from.Y + from.Height / 2, new() { Steps = 8 });
        await page.Mouse.UpAsync();

        Assert.Equal("2", await last.GetAttributeAsync("aria-valuenow"));
    }

    [Fact]
    public async Task The_click_alone_plays_no_string_and_the_notes_are_lit_all_the_same()
    {
        await using var opened = await OpenAsync();

        await opened.Page.SelectOptionAsync("#exercise-1 .who", "click");
        await opened.Page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(opened.Page, "heard.lit.length >= 4");

        Assert.All(
            await opened.Page.EvaluateAsync<double[]>("heard.starts.map(one => one.seconds)"),
            seconds => Assert.InRange(seconds, 0, 0.05)
        );
        Assert.Equal("Now you: bars 1 to 4.", await opened.Page.Locator("#exercise-1 .now").InnerTextAsync());
    }

    [Fact]
    public async Task Two_bars_are_played_and_two_left_free()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.SelectOptionAsync("#exercise-1 .who", "echo");
        await page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(page, "document.querySelector('#exercise-1 .now').textContent === 'Now you.'");
        await UntilAsync(page, "heard.lit.length >= 15");
        var times = await page.EvaluateAsync<double[]>("heard.lit.map(one => one.time)");

        // Two bars of four quarters at 240 take two seconds, and so does the answer.
        Assert.Equal(4, times[14] - times[0], 1e-6);
        Assert.Equal(13 * 0.125 + 0.125, times[13] - times[0], 1e-6);
    }

    [Fact]
    public async Task A_row_of_tempos_goes_a_step_faster_each_time_after_the_count_in()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.FillAsync("#exercise-2 input.tempo", "299");
        await page.Locator("#exercise-2 input.tempo").BlurAsync();
        await page.FillAsync("#exercise-2 input.tempo", "60");
        await page.Locator("#exercise-2 input.tempo").BlurAsync();
        await page.Locator("#exercise-2 .sign.last").FocusAsync();
        await page.Keyboard.PressAsync("Home");
        await page.ClickAsync("#exercise-2 .hear");
        await UntilAsync(page, "heard.lit.length >= 1");
        var clicks = await page.EvaluateAsync<double[]>(
            "heard.starts.filter(one => one.seconds < 0.05).map(one => one.time)"
        );
        var first = await page.EvaluateAsync<double>("heard.lit[0].time");
        await UntilAsync(page, "document.querySelector('#exercise-2 input.tempo').value === '72'");

        Assert.Equal(4, clicks.Length);
        Assert.Equal(1, first - clicks[3], 1e-6);
    }

    [Fact]
    public async Task A_row_of_tempos_begins_anew_when_it_is_heard_again()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        const string Tempo = "document.querySelector('#exercise-2 input.tempo').value";

        await page.Locator("#exercise-2 .sign.last").FocusAsync();
        await page.Keyboard.PressAsync("Home");
        await page.UncheckAsync("#exercise-2 .count");
        await page.ClickAsync("#exercise-2 .hear");
        await UntilAsync(page, $"{Tempo} === '72'");
        await page.ClickAsync("#exercise-2 .hear");
        Assert.Equal("60", await page.EvaluateAsync<string>(Tempo));
        await page.EvaluateAsync("heard.starts.length = 0");
        await page.ClickAsync("#exercise-2 .hear");
        await UntilAsync(page, "heard.starts.length >= 6");
        var starts = await page.EvaluateAsync<double[]>("heard.starts.map(one => one.time)");

        // Triplets at 60: a third of a second each, where the page was not held up. The page has times to five places.
        Assert.Contains(starts.Zip(starts.Skip(1)), pair => Math.Abs(pair.Second - pair.First - 1 / 3.0) < 1e-4);
        Assert.All(starts.Zip(starts.Skip(1)), pair => Assert.True(pair.Second - pair.First > 1 / 3.0 - 1e-4));
    }

    [Fact]
    public async Task A_count_in_is_as_long_as_the_sentence_says()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.ClickAsync("#exercise-4 .hear");
        await UntilAsync(page, "document.querySelector('#exercise-4 .now').textContent === 'Count-in: 2 bars.'");
        await UntilAsync(page, "heard.lit.length >= 1");
        var clicks = await page.EvaluateAsync<double[]>(
            "heard.starts.filter(one => one.seconds < 0.05).map(one => one.time)"
        );

        Assert.Equal(8, clicks.Length);
    }

    [Fact]
    public async Task The_click_box_and_the_volume_are_heeded_while_it_plays()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(page, "heard.lit.length >= 2");
        Assert.Equal(0, await page.EvaluateAsync<int>("heard.starts.filter(one => one.seconds < 0.05).length"));
        // 40 of 100 at first: the square of the share, doubled.
        Assert.Equal(0.32, await page.EvaluateAsync<double>("heard.levels[0]"), 1e-9);
        await page.CheckAsync("#exercise-1 .click");
        await UntilAsync(page, "heard.starts.filter(one => one.seconds < 0.05).length >= 3");
        await page.FillAsync("#exercise-1 .volume", "80");
        Assert.True(await page.EvaluateAsync<bool>("heard.levels.some(level => Math.abs(level - 1.28) < 1e-9)"));
        await page.FillAsync("#exercise-1 .volume", "0");
        Assert.True(await page.EvaluateAsync<bool>("heard.levels.includes(0)"));
    }

    [Fact]
    public async Task A_new_tempo_is_taken_up_in_mid_bar()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(page, "heard.lit.length >= 3");
        await page.FillAsync("#exercise-1 input.tempo", "120");
        await page.Locator("#exercise-1 input.tempo").BlurAsync();
        var before = await page.EvaluateAsync<int>("heard.starts.length");
        await UntilAsync(page, $"heard.starts.length >= {before + 8}");
        var starts = await page.EvaluateAsync<double[]>("heard.starts.map(one => one.time)");
        var lit = await page.EvaluateAsync<int[]>("heard.lit.map(one => one.note)");
        var notes = await page.EvaluateAsync<int>(Notes);

        // Eighths at 240 last an eighth of a second, at 120 a quarter; no note is left out or sounds twice,
        // however often it went round while the page was asked.
        Assert.Contains(starts.Zip(starts.Skip(1)), pair => Math.Abs(pair.Second - pair.First - 0.125) < 1e-6);
        Assert.Contains(
            starts.Skip(before).Zip(starts.Skip(before + 1)),
            pair => Math.Abs(pair.Second - pair.First - 0.25) < 1e-6
        );
        Assert.Equal(Enumerable.Range(0, lit.Length).Select(note => note % notes), lit);
    }

    [Fact]
    public async Task Stopped_and_heard_again_it_begins_at_the_beginning_with_the_same_output()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(page, "heard.lit.length >= 3");
        await page.ClickAsync("#exercise-1 .hear");
        var heard = await page.EvaluateAsync<int>("heard.lit.length");
        await page.WaitForTimeoutAsync(400);
        Assert.Equal(heard, await page.EvaluateAsync<int>("heard.lit.length"));
        Assert.Equal("", await page.Locator("#exercise-1 .now").InnerTextAsync());
        await page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(page, $"heard.lit.length >= {heard + 2}");

        var again = await page.EvaluateAsync<int[]>($"heard.lit.slice({heard}, {heard + 2}).map(one => one.note)");
        Assert.Equal([0, 1], again);
        Assert.Equal(1, await page.EvaluateAsync<int>("heard.contexts"));
        Assert.Equal(
            await page.EvaluateAsync<int>(DistinctPitches),
            await page.EvaluateAsync<int>("heard.buffers.length")
        );
    }

    [Fact]
    public async Task One_exercise_stops_when_another_is_to_be_heard()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;

        await page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(page, "heard.lit.length >= 2");
        await page.ClickAsync("#exercise-2 .hear");

        Assert.Equal("Hear it", await page.Locator("#exercise-1 .hear").InnerTextAsync());
        Assert.Equal("Stop", await page.Locator("#exercise-2 .hear").InnerTextAsync());
        Assert.Equal(0, await page.Locator("#exercise-1 .lit").CountAsync());
    }

    /// <summary>The repeat of a spot must not take the light from the note that follows.</summary>
    [Fact]
    public async Task The_same_spot_twice_in_a_row_is_lit_through_both_notes()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await page.UncheckAsync("#exercise-4 .count");
        await page.EvaluateAsync(
            """
            window.dark = 0;
            const ring = document.querySelector("#exercise-4 [data-part='light 4-3']");
            document.querySelector('#exercise-4').addEventListener('lit', event => {
                if (event.detail.note === 1) setTimeout(() => { dark += ring.classList.contains('lit') ? 0 : 1; }, 90);
            });
            0
            """
        );

        await page.ClickAsync("#exercise-4 .hear");
        await UntilAsync(page, "heard.lit.length >= 10");

        Assert.Equal(0, await page.EvaluateAsync<int>("dark"));
    }

    [Theory]
    [InlineData(Colours.Light)]
    [InlineData(Colours.Dark)]
    [InlineData(Colours.Forced)]
    public async Task While_it_plays_everybody_can_use_it(Colours colours)
    {
        await using var opened = await OpenAsync(colours: colours);
        var page = opened.Page;

        await page.Locator("#exercise-1 .sign.last").FocusAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        await page.ClickAsync("#exercise-1 .hear");
        await UntilAsync(page, "heard.lit.length >= 2");

        var lit = await page.EvaluateAsync<int>("heard.lit.length");
        Assert.Empty(await opened.AxeAsync());
        Assert.True(await page.EvaluateAsync<int>("heard.lit.length") > lit);
    }

    [Fact]
    public async Task Moving_a_sign_does_not_measure_every_bar_again()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var last = page.Locator("#exercise-1 .sign.last");
        await last.ScrollIntoViewIfNeededAsync();
        var from = (await last.BoundingBoxAsync())!;

        await page.Mouse.MoveAsync(from.X + from.Width / 2, from.Y + from.Height / 2);
        await page.Mouse.DownAsync();
        await page.EvaluateAsync("heard.measured = 0");
        await page.Mouse.MoveAsync(from.X - 200, from.Y + from.Height / 2, new() { Steps = 10 });

        Assert.InRange(await page.EvaluateAsync<int>("heard.measured"), 1, 20);
        await page.Mouse.UpAsync();
    }

    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task The_signs_cover_nothing(int width)
    {
        await using var opened = await OpenAsync(width);

        var covered = await opened.Page.EvaluateAsync<string[]>(
            """
            [...document.querySelectorAll('.exercise')].flatMap(one => {
                const boxes = [...one.querySelectorAll('.staves svg :is(path, use, rect, polygon, polyline, text)')].map(part => [part, part.getBoundingClientRect()]);
                return [...one.querySelectorAll('.sign, .span')].flatMap(sign => {
                    const box = sign.getBoundingClientRect();
                    return boxes
                        .filter(([, other]) => other.width + other.height > 0 && other.left < box.right && other.right > box.left && other.top < box.bottom && other.bottom > box.top)
                        .map(([part]) => `${one.id} ${sign.className}: ${part.outerHTML.slice(0, 80)}`);
                });
            })
            """
        );

        Assert.Empty(covered);
    }

    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task The_signs_stand_on_the_staff_that_is_seen(int width)
    {
        await using var opened = await OpenAsync(width);

        var inside = await opened.Page.EvaluateAsync<bool[]>(
            """
            [...document.querySelectorAll('.sign')].map(sign => {
                const box = sign.getBoundingClientRect();
                const staves = sign.parentElement.getBoundingClientRect();
                return box.height > 30 && box.left > staves.left - 24 && box.right < staves.right + 24
                    && box.top > staves.top - 2 && box.bottom < staves.bottom + 2;
            })
            """
        );

        Assert.Equal(10, inside.Length);
        Assert.DoesNotContain(false, inside);
    }

    [Fact]
    public async Task Print_shows_no_controls()
    {
        await using var opened = await OpenAsync();

        await opened.Page.EmulateMediaAsync(new() { Media = Media.Print });

        Assert.Equal(
            0,
            await opened.Page.EvaluateAsync<int>(
                "[...document.querySelectorAll('.player, .sign, .span, .chosen, .exercise-neck')].filter(one => one.getClientRects().length).length"
            )
        );
    }

    // The page forbids itself to make scripts out of text, so Playwright's own waiting cannot be used.
    private static async Task UntilAsync(IPage page, string condition) =>
        await page.EvaluateAsync(
            $$"""
            new Promise((done, failed) => {
                const look = left => {{condition}} ? done(true)
                    : left > 0 ? setTimeout(look, 20, left - 1) : failed(new Error('It never comes.'));
                look(1000);
            })
            """
        );

    private const string Notes = "JSON.parse(document.querySelector('#exercise-1').dataset.exercise).notes.length";

    private const string DistinctPitches =
        "new Set(JSON.parse(document.querySelector('#exercise-1').dataset.exercise).notes.map(note => note[4])).size";

    // How far each string is off, in cents: the lag of ten periods at which the sound is most like itself.
    private const string InTune = """
        [...new Set(JSON.parse(document.querySelector('#exercise-1').dataset.exercise).notes.map(note => note[4]))].map((midi, at) => {
            const buffer = heard.buffers[at];
            const [sound, rate] = [buffer.getChannelData(0), buffer.sampleRate];
            const wanted = 10 * rate / (440 * 2 ** ((midi - 69) / 12));
            const like = lag => {
                let sum = 0;
                for (let frame = 4000; frame < 12000; frame++) sum += sound[frame] * sound[frame + lag];
                return sum;
            };
            let best = Math.round(wanted * 0.99);
            for (let lag = best; lag < wanted * 1.01; lag++) if (like(lag) > like(best)) best = lag;
            const [left, middle, right] = [like(best - 1), like(best), like(best + 1)];
            const exact = best + (left - right) / (2 * (left - 2 * middle + right));
            return 1200 * Math.log2(wanted / exact);
        })
        """;
}
