using System.Text.Json;
using Fretloom.Testing;

namespace Fretloom.Pages.Tests.Html;

/// <summary>The parts of the player that need no page, run by node.</summary>
public class PlayerScriptTests
{
    private const string Data =
        "{ bar: 4, beat: 1, tempi: [60, 72, 80], notes: [[0, 1, 4, 3, 53, 1, 0], [1, 1, 3, 2, 57, 0, 1], [4, 6, 2, 1, 60, 1, 2]] }";

    [Fact]
    public async Task A_round_holds_the_chosen_bars_and_cuts_what_rings_beyond_them()
    {
        var round = await AskAsync(
            $"roundOf({Data}, {{ first: 2, last: 2, who: 'all', clicks: false, countInBars: 0 }})",
            "rounds.js"
        );

        Assert.Equal(4, round.GetProperty("length").GetDouble());
        var (says, note) = (round.GetProperty("events")[0], round.GetProperty("events")[1]);
        Assert.Equal(2, round.GetProperty("events").GetArrayLength());
        Assert.Equal("Playing bar 2.", says.GetProperty("says").GetString());
        Assert.Equal((0.0, 4.0, 2), (Number(note, "at"), Number(note, "length"), note.GetProperty("note").GetInt32()));
    }

    [Theory]
    [InlineData(1, "Count-in.")]
    [InlineData(2, "Count-in: 2 bars.")]
    [InlineData(4, "Count-in: 4 bars.")]
    public async Task A_count_in_clicks_every_beat_of_its_bars(int bars, string words)
    {
        var events = (
            await AskAsync(
                $"roundOf({Data}, {{ first: 1, last: 2, who: 'all', clicks: false, countInBars: {bars} }})",
                "rounds.js"
            )
        )
            .GetProperty("events")
            .EnumerateArray()
            .ToList();

        Assert.Equal(words, events[0].GetProperty("says").GetString());
        var clicks = events.Where(one => one.TryGetProperty("click", out _)).ToList();
        Assert.Equal(Enumerable.Range(0, 4 * bars).Select(at => (double)at), clicks.Select(one => Number(one, "at")));
        Assert.Equal(bars, clicks.Count(one => one.GetProperty("click").GetString() == "first"));
        Assert.Equal(4.0 * bars, Number(events.Find(one => one.TryGetProperty("note", out _)), "at"));
    }

    /// <summary>In 6/8 a beat is a dotted quarter: two in a bar.</summary>
    [Fact]
    public async Task The_first_click_of_each_bar_is_another()
    {
        var clicks = (
            await AskAsync(
                "roundOf({ bar: 3, beat: 1.5, notes: [] }, { first: 1, last: 3, who: 'click', clicks: false, countInBars: 0 }).events.filter(one => one.click).map(one => one.click)",
                "rounds.js"
            )
        ).Deserialize<string[]>()!;

        Assert.Equal(["first", "other", "first", "other", "first", "other"], clicks);
    }

    [Fact]
    public async Task A_row_of_tempos_is_climbed_to_its_last_and_stays_there()
    {
        var tempi = (
            await AskAsync("[60, 65, 72, 80, 96].map(tempo => nextTempo([60, 72, 80], tempo))", "rounds.js")
        ).Deserialize<double[]>()!;

        Assert.Equal([72, 72, 80, 80, 96], tempi);
    }

    [Theory]
    [InlineData("{ bar: 4, beat: 1, tempi: [60], notes: [] }", 0, 60)]
    [InlineData("{ bar: 0, beat: 0, tempi: [60], notes: [] }", 1, 60)]
    [InlineData(Data, 2, 0)]
    public async Task An_exercise_without_time_is_stopped_instead_of_going_round_for_ever(
        string data,
        int last,
        double tempo
    )
    {
        var isRunning = await AskAsync(
            $$"""
            (() => {
                const asked = () => ({ first: 1, last: {{last}}, who: 'all', clicks: true, countInBars: 0, climbs: true });
                const output = { now: 0 };
                const transport = new Transport({{data}}, output, { asked, due() {}, faster() {} });
                transport.start({{(tempo == 0 ? "Infinity" : tempo)}});
                const isRunning = transport.isRunning;
                transport.stop();
                return isRunning;
            })()
            """,
            "rounds.js",
            "transport.js"
        );

        Assert.False(isRunning.GetBoolean());
    }

    [Fact]
    public async Task Each_note_is_handed_over_once_and_never_early_also_when_the_tempo_changes()
    {
        var handed = await AskAsync(
            $$"""
            (() => {
                const [handed, output] = [[], { now: 10 }];
                const asked = () => ({ first: 1, last: 2, who: 'all', clicks: false, countInBars: 0, climbs: false });
                const due = (event, time) => event.note === undefined || handed.push([event.note, time, output.now]);
                const transport = new Transport({{Data}}, output, { asked, due, faster() {} });
                transport.start(60);
                for (; output.now < 30; output.now += 0.025) {
                    if (Math.abs(output.now - 12) < 0.01) transport.setTempo(120);
                    transport.schedule();
                }
                transport.stop();
                return handed;
            })()
            """,
            "rounds.js",
            "transport.js"
        );

        var notes = handed.EnumerateArray().Select(one => one.Deserialize<double[]>()!).ToList();
        // At 60 a beat is a second. From 12 on it is half a second: two beats less 0.12 s are left of the first bar's.
        Assert.Equal([0, 1, 2, 0, 1, 2], notes.Take(6).Select(note => (int)note[0]));
        Assert.Equal(10.12, notes[0][1], 1e-9);
        Assert.Equal(11.12, notes[1][1], 1e-9);
        Assert.Equal(12 + (4 - 1.88) / 2, notes[2][1], 0.02);
        Assert.All(notes, note => Assert.InRange(note[1] - note[2], 0, 0.2 + 1e-9));
    }

    [Fact]
    public async Task A_spot_that_is_struck_before_its_last_note_has_ended_stays_lit_until_both_have()
    {
        var lit = await AskAsync(
            """
            (() => {
                globalThis.CustomEvent = class {};
                const names = new Set();
                const part = { dataset: { part: 'light 4-3' }, classList: { add: name => names.add(name), remove: name => names.delete(name) } };
                const root = { querySelectorAll: () => [part], dispatchEvent() {} };
                const lights = new Lights(root, { querySelectorAll: () => [] }, () => {});
                lights.add({ time: 0, end: 1.01, note: 0, spot: '4-3' });
                lights.add({ time: 1, end: 2, note: 1, spot: '4-3' });
                return [0.5, 1.005, 1.5, 2.1].map(now => { lights.look(now); return names.has('lit'); });
            })()
            """,
            "lights.js"
        );

        Assert.Equal([true, true, true, false], lit.Deserialize<bool[]>()!);
    }

    private static double Number(JsonElement one, string name) => one.GetProperty(name).GetDouble();

    private static async Task<JsonElement> AskAsync(string expression, params string[] scripts)
    {
        Assert.SkipWhen(!Run.IsInstalled("node"), "skipped: node is not installed");
        var script = string.Concat(scripts.Select(EmbeddedText.Read)) + $"\nJSON.stringify({expression})";
        var result = await Run.ProgramAsync(
            "node",
            ["-"],
            input: $"console.log(require('vm').runInNewContext({JsonSerializer.Serialize(script)}, {{ setInterval, clearInterval }}, {{ timeout: 5000 }}));"
        );
        Assert.True(result.ExitCode == 0, result.Error);
        return JsonDocument.Parse(result.Output).RootElement;
    }
}
