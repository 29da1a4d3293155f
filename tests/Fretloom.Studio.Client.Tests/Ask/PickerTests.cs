using Bunit;
using Fretloom.Neck;
using Fretloom.Studio.Client.Ask;
using Fretloom.Studio.Client.State;
using Fretloom.Studio.Client.Tests.Write;
using Fretloom.Studio.Client.Words;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;

namespace Fretloom.Studio.Client.Tests.Ask;

public sealed class PickerTests : IDisposable
{
    private readonly BunitContext _page = new();
    private readonly List<string?> _tried = [];
    private readonly List<string> _foreseen = [];
    private readonly SlowClock _clock = new();
    private string? _picked;

    public PickerTests()
    {
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton<Labels>();
        _page.Services.AddSingleton<Page>();
        _page.Services.AddSingleton<Errands>();
        _page.Services.AddSingleton<TimeProvider>(_clock);
    }

    public void Dispose() => _page.Dispose();

    private IRenderedComponent<Picker> Rendered(bool canLeave = false) =>
        _page.Render<Picker>(picker =>
            picker
                .Add(one => one.Name, "the key")
                .Add(one => one.Words, "in D major")
                .Add(one => one.CanLeave, canLeave)
                .Add(one => one.Offer, () => ChoiceGroup.One(["in C major", "in D major", "in Bb major"]))
                .Add(one => one.Tried, _tried.Add)
                .Add(one => one.Foreseen, _foreseen.Add)
                .Add(
                    one => one.Read,
                    (words, mends) =>
                        words is "in b" or "in E dorian" ? words
                        : words == "in Em" && mends ? "in E minor"
                        : null
                )
                .Add(one => one.WhyNot, _ => "expected a key")
                .Add(one => one.Wrong, words => words == "in E minor" ? "no E here" : null)
                .Add(one => one.Picked, words => _picked = words)
        );

    private static void Press(IRenderedComponent<Picker> picker, params string[] keys)
    {
        foreach (var key in keys)
        {
            picker.Find("input").KeyDown(new KeyboardEventArgs { Key = key });
        }
    }

    [Fact]
    public void Closed_it_is_a_button_that_tells_what_it_is_for()
    {
        var picker = Rendered();

        Assert.Equal("the key: in D major", picker.Find("button").GetAttribute("aria-label"));
        Assert.Equal("false", picker.Find("button").GetAttribute("aria-expanded"));
        Assert.Empty(picker.FindAll(".pop"));
    }

    [Fact]
    public void Open_it_stands_at_what_is_said_and_goes_on_with_the_arrows()
    {
        var picker = Rendered();
        picker.Find("button").Click();
        Assert.Equal("in D major", picker.Find("[role=option].at").TextContent);

        Press(picker, "ArrowDown", "ArrowDown", "ArrowUp", "ArrowDown", "Enter");

        Assert.Equal("in Bb major", _picked);
        Assert.Empty(picker.FindAll(".pop"));
    }

    [Fact]
    public void What_is_typed_narrows_the_list_flats_as_letters_or_signs()
    {
        var picker = Rendered();
        picker.Find("button").Click();

        picker.Find("input").Input("b♭");

        Assert.Equal("in B♭ major", Assert.Single(picker.FindAll("[role=option]")).TextContent);
        Press(picker, "Enter");
        Assert.Equal("in Bb major", _picked);
    }

    [Fact]
    public void What_is_not_offered_can_be_typed()
    {
        var picker = Rendered();
        picker.Find("button").Click();

        picker.Find("input").Input("in E dorian");
        Press(picker, "Enter");

        Assert.Equal("in E dorian", _picked);
    }

    [Fact]
    public void Escape_leaves_all_as_it_was()
    {
        var picker = Rendered();
        picker.Find("button").Click();

        Press(picker, "ArrowDown", "Escape");

        Assert.Null(_picked);
        Assert.Empty(picker.FindAll(".pop"));
    }

    [Fact]
    public void What_was_said_can_be_left_unsaid()
    {
        var picker = Rendered(canLeave: true);
        picker.Find("button").Click();

        picker.Find(".leave").MouseDown();

        Assert.Equal("", _picked);
    }

    private IRenderedComponent<Picker> Grouped() =>
        _page.Render<Picker>(picker =>
            picker
                .Add(one => one.Name, "Say more")
                .Add(one => one.Words, "+")
                .Add(
                    one => one.Offer,
                    () =>
                        [
                            new("Place on the neck", ["with a capo at 1", "with a capo at 2"]),
                            new("Hand and player", ["for a small hand", "for a left-handed player"]),
                        ]
                )
                .Add(one => one.Picked, words => _picked = words)
        );

    [Fact]
    public void Groups_have_their_headings_and_the_arrows_go_on_from_one_to_the_next()
    {
        var picker = Grouped();
        picker.Find("button").Click();

        var groups = picker.FindAll("[role=listbox] > [role=group]");
        Assert.Equal(
            ["Place on the neck", "Hand and player"],
            groups.Select(group => picker.Find("#" + group.GetAttribute("aria-labelledby")).TextContent)
        );
        Press(picker, "ArrowDown", "ArrowDown", "Enter");
        Assert.Equal("for a small hand", _picked);
    }

    [Fact]
    public void What_is_typed_narrows_all_groups_and_a_group_of_nothing_goes()
    {
        var picker = Grouped();
        picker.Find("button").Click();

        picker.Find("input").Input("hand");

        Assert.Single(picker.FindAll("[role=group]"));
        Press(picker, "ArrowDown", "Enter");
        Assert.Equal("for a left-handed player", _picked);
    }

    private async Task TriedAsync()
    {
        await _clock.PassAsync(TimeSpan.FromMilliseconds(79));
        Assert.Empty(_tried);
        await _clock.PassAsync(TimeSpan.FromMilliseconds(1));
        Assert.Equal(["in Bb major"], _tried);
    }

    [Fact]
    public async Task A_choice_that_is_stood_at_for_a_while_is_tried_and_left_off_with_the_list()
    {
        var picker = Rendered();
        picker.Find("button").Click();

        Press(picker, "ArrowDown", "ArrowUp", "ArrowDown");
        await TriedAsync();
        Press(picker, "Escape");

        Assert.Equal(["in Bb major", null], _tried);
        Assert.Null(_picked);
    }

    [Fact]
    public async Task A_choice_that_is_picked_is_not_left_off_first()
    {
        var picker = Rendered();
        picker.Find("button").Click();

        picker.FindAll("[role=option]")[2].MouseEnter();
        await TriedAsync();
        picker.FindAll("[role=option]")[2].MouseDown();

        Assert.Equal(["in Bb major"], _tried);
        Assert.Equal("in Bb major", _picked);
    }

    [Fact]
    public void While_the_list_is_open_every_other_choice_is_made_ready_the_nearest_first()
    {
        Rendered().Find("button").Click();

        Assert.Equal(["in C major", "in Bb major"], _foreseen);
    }

    [Fact]
    public void Nothing_is_made_ready_for_a_list_that_is_closed_again()
    {
        var idle = _page.JSInterop.SetupVoid("studio.idle");
        var picker = Rendered();
        picker.Find("button").Click();
        Press(picker, "Escape");

        idle.SetVoidResult();

        Assert.Empty(_foreseen);
    }

    [Fact]
    public void What_takes_long_to_make_ready_is_left_until_it_is_picked()
    {
        _clock.Step = TimeSpan.FromMilliseconds(51);

        Rendered().Find("button").Click();

        Assert.Equal(["in C major"], _foreseen);
    }

    [Fact]
    public void Pointing_along_the_list_draws_nothing_anew()
    {
        var picker = Rendered();
        picker.Find("button").Click();
        var before = picker.RenderCount;

        picker.FindAll("[role=option]")[2].MouseEnter();

        Assert.Equal(before, picker.RenderCount);
        Press(picker, "ArrowDown");
        Assert.Equal(before + 1, picker.RenderCount);
    }

    // Every look at it is so much later.
    private sealed class SlowClock : StoppedClock
    {
        private long _now;

        public TimeSpan Step { get; set; }

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => _now += Step.Ticks;
    }

    [Theory]
    // Typed as a whole it is meant, though a longer choice comes first.
    [InlineData("in b", "in b")]
    [InlineData("IN D MAJOR", "in D major")]
    [InlineData("b♭", "in Bb major")]
    public void Enter_says_what_was_typed_where_that_can_be_said(string typed, string picked)
    {
        var picker = Rendered();
        picker.Find("button").Click();
        picker.Find("input").Input(typed);

        Press(picker, "Enter");

        Assert.Equal(picked, _picked);
    }

    [Fact]
    public void What_cannot_be_said_leaves_the_list_open_with_the_reason()
    {
        var picker = Rendered();
        picker.Find("button").Click();
        picker.Find("input").Input("nonsense");

        Press(picker, "Enter");

        Assert.Null(_picked);
        Assert.Equal("expected a key", picker.Find("[role=status]").TextContent);
        picker.Find("input").Input("in D");
        Assert.Empty(picker.FindAll("[role=status]"));
    }

    [Fact]
    public void What_reads_well_but_cannot_be_said_here_leaves_the_list_open_too()
    {
        var picker = Rendered();
        picker.Find("button").Click();
        picker.Find("input").Input("in Em");
        Assert.Equal("Enter says: in E minor", picker.Find("[role=status]").TextContent);

        Press(picker, "Enter");

        Assert.Null(_picked);
        Assert.Equal("no E here", picker.Find("[role=status]").TextContent);
    }

    [Theory]
    [InlineData("D", "in D major")]
    [InlineData("bb", "in Bb major")]
    [InlineData("maj", "in C major")]
    public void The_choice_with_that_word_is_stood_at_before_others_that_have_it_inside(string typed, string at)
    {
        var picker = Rendered();
        picker.Find("button").Click();

        picker.Find("input").Input(typed);

        Assert.Equal(at.Replace("Bb", "B♭", StringComparison.Ordinal), picker.Find("[role=option].at").TextContent);
    }

    [Theory]
    [InlineData("low g", "on a low-G ukulele")]
    [InlineData("7 string", "on a seven-string guitar")]
    [InlineData("uke", "on a ukulele", "on a low-G ukulele", "on a baritone ukulele")]
    [InlineData("baritone uke", "on a baritone ukulele")]
    public void An_instrument_is_found_however_its_name_is_written(string typed, params string[] found)
    {
        string[] instruments =
        [
            "on a guitar",
            "on a ukulele",
            "on a low-G ukulele",
            "on a baritone ukulele",
            "on a seven-string guitar",
        ];
        var picker = _page.Render<Picker>(one =>
            one.Add(picker => picker.Words, "on a guitar")
                .Add(picker => picker.Offer, () => ChoiceGroup.One(instruments))
                .Add(picker => picker.Fold, Catalogue.Plain)
        );
        picker.Find("button").Click();

        picker.Find("input").Input(typed);

        Assert.Equal(found, picker.FindAll("[role=option]").Select(option => option.TextContent));
    }

    [Fact]
    public void Enter_in_a_box_that_was_emptied_says_nothing()
    {
        var picker = Rendered();
        picker.Find("button").Click();
        picker.Find("input").Input("x");
        picker.Find("input").Input("");

        Press(picker, "Enter");

        Assert.Null(_picked);
        Assert.Empty(picker.FindAll(".pop"));
    }

    [Fact]
    public void Who_went_on_through_the_list_means_what_they_stand_at()
    {
        var picker = Rendered();
        picker.Find("button").Click();
        picker.Find("input").Input("in b");

        Press(picker, "ArrowDown", "Enter");

        Assert.Equal("in Bb major", _picked);
    }

    [Fact]
    public void Only_the_main_button_picks()
    {
        var picker = Rendered();
        picker.Find("button").Click();

        picker.FindAll("[role=option]")[0].MouseDown(new MouseEventArgs { Button = 2 });
        Assert.Null(_picked);
        picker.FindAll("[role=option]")[0].MouseDown(new MouseEventArgs { Button = 0 });

        Assert.Equal("in C major", _picked);
    }
}
