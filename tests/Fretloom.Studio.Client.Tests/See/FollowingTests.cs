using Bunit;
using Fretloom.Exhibits;
using Fretloom.Studio.Client.See;
using Fretloom.Studio.Client.State;
using Fretloom.Studio.Client.Tests.Write;
using Fretloom.Studio.Client.Words;
using Microsoft.Extensions.DependencyInjection;

namespace Fretloom.Studio.Client.Tests.See;

public sealed class FollowingTests : IDisposable
{
    private const string InG = "show the thirds, in G major";
    private const string InF = "show the triads, in F major";
    private static readonly TimeSpan LongEnough = TimeSpan.FromSeconds(1);

    private readonly BunitContext _page = new();
    private readonly StoppedClock _clock = new();
    private readonly Client.State.Studio _studio;
    private IRenderedComponent<Part>? _rendered;

    public FollowingTests()
    {
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton<Labels>();
        _page.Services.AddSingleton<Page>();
        _page.Services.AddSingleton<Errands>();
        _page.Services.AddSingleton<History>();
        _page.Services.AddSingleton<Client.State.Studio>();
        _page.Services.AddSingleton<TimeProvider>(_clock);
        _studio = _page.Services.GetRequiredService<Client.State.Studio>();
    }

    public void Dispose() => _page.Dispose();

    [Fact]
    public async Task What_was_seen_before_is_not_worked_out_again()
    {
        var part = Begun();
        await SayAsync(InG);
        await SayAsync(InF);

        await SayAsync(InG);

        Assert.Equal(["C major", "G major", "F major"], part.WorkedOut);
        Assert.Equal("G major", part.Said);
        Assert.Equal(3, Waits("studio.seen"));
    }

    [Fact]
    public async Task What_is_foreseen_is_worked_out_once_nothing_more_is_and_is_then_there_at_once()
    {
        var part = Begun();
        _studio.Foresee(InG);
        _studio.Foresee(InF);
        Assert.Equal(["C major"], part.WorkedOut);

        await _clock.PassAsync(LongEnough);
        await _rendered!.InvokeAsync(() => _studio.Say(InF, "step"));

        Assert.Equal("F major", part.Said);
        Assert.Equal(["C major", "G major", "F major"], part.WorkedOut);
        Assert.Equal(["G major", "F major"], part.Ready);
        Assert.Equal(1, Waits("studio.seen"));
    }

    [Fact]
    public async Task Of_a_long_list_the_nearest_choices_stand_ready()
    {
        var part = Begun();
        for (var frets = 1; frets <= 20; frets++)
        {
            _studio.Foresee($"show the thirds, frets 0-{frets}");
        }

        await _clock.PassAsync(LongEnough);

        Assert.Equal(21, part.WorkedOut.Count);
        Assert.Equal(12, part.Ready.Count);
    }

    [Fact]
    public async Task What_was_foreseen_is_let_be_when_something_is_said()
    {
        var part = Begun();
        _studio.Foresee(InG);

        await SayAsync(InF);
        await _clock.PassAsync(LongEnough);

        Assert.Equal(["C major", "F major"], part.WorkedOut);
    }

    [Fact]
    public async Task What_is_said_while_the_browser_is_busy_goes_before_what_was_foreseen()
    {
        var idle = _page.JSInterop.SetupVoid("studio.idle");
        var part = Begun();
        _studio.Foresee(InG);
        await _clock.PassAsync(LongEnough);

        await SayAsync(InF);
        idle.SetVoidResult();
        await _clock.PassAsync(LongEnough);

        Assert.Equal(["C major", "F major"], part.WorkedOut);
    }

    [Fact]
    public async Task What_is_foreseen_twice_is_worked_out_once()
    {
        var part = Begun();
        _studio.Foresee(InG);
        _studio.Foresee(InG);

        await _clock.PassAsync(LongEnough);

        Assert.Equal(["C major", "G major"], part.WorkedOut);
        Assert.Equal(["G major"], part.Ready);
    }

    [Fact]
    public async Task With_a_shape_brought_out_it_is_worked_out_for_that()
    {
        var part = Begun();
        await SayAsync(InF);

        _studio.Look(_studio.View with { ShapeAt = 2 }, "a shape");
        await _clock.PassAsync(LongEnough);

        Assert.Equal("F major, shape 2", part.Said);
    }

    private Part Begun() => (_rendered = _page.Render<Part>()).Instance;

    private async Task SayAsync(string sentence)
    {
        await _rendered!.InvokeAsync(() => _studio.Say(sentence, "step"));
        await _clock.PassAsync(LongEnough);
    }

    private int Waits(string function) => _page.JSInterop.Invocations.Count(call => call.Identifier == function);

    private sealed class Part : Following<string>
    {
        public List<string> WorkedOut { get; } = [];

        public List<string> Ready { get; } = [];

        public string? Said => Shown;

        protected override int? ShapeAt => Studio.View.ShapeAt;

        protected override int Near => 12;

        protected override void MakeReady(string what) => Ready.Add(what);

        protected override string WorkOut(Exhibit exhibit, int? shape)
        {
            var key = exhibit.Map.Key.ToString();
            WorkedOut.Add(key);
            return shape is null ? key : FormattableString.Invariant($"{key}, shape {shape}");
        }
    }
}
