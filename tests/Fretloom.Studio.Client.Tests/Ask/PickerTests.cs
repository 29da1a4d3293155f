using Bunit;
using Fretloom.Studio.Client.Ask;
using Fretloom.Studio.Client.Words;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;

namespace Fretloom.Studio.Client.Tests.Ask;

public sealed class PickerTests : IDisposable
{
    private readonly BunitContext _page = new();
    private string? _picked;

    public PickerTests()
    {
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton<Labels>();
    }

    public void Dispose() => _page.Dispose();

    private IRenderedComponent<Picker> Rendered(bool canLeave = false) =>
        _page.Render<Picker>(picker =>
            picker
                .Add(one => one.Name, "the key")
                .Add(one => one.Words, "in D major")
                .Add(one => one.CanLeave, canLeave)
                .Add(one => one.Offer, () => ["in C major", "in D major", "in Bb major"])
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
        Assert.Equal("in D major", picker.Find("li.at").TextContent);

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

        Assert.Equal("in B♭ major", Assert.Single(picker.FindAll("li")).TextContent);
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

        picker.Find("li.leave").MouseDown();

        Assert.Equal("", _picked);
    }
}
