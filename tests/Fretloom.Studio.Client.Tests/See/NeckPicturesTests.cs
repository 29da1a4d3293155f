using Bunit;
using Fretloom.Exhibits;
using Fretloom.Shapes;
using Fretloom.Studio.Client.See;

namespace Fretloom.Studio.Client.Tests.See;

public sealed class NeckPicturesTests : IDisposable
{
    private const double Room = 600;
    private const double NarrowestFret = 19;

    private readonly BunitContext _page = new();
    private readonly NeckPictures _pictures = new(3);
    private readonly IRenderedComponent<LayerStack<WrittenNeck>> _stack;
    private int _changed;

    public NeckPicturesTests()
    {
        _pictures.Layers.Changed += () => _changed++;
        _stack = _page.Render<LayerStack<WrittenNeck>>(stack =>
            stack
                .Add(one => one.Layers, _pictures.Layers)
                .Add(one => one.Kind, "neck")
                .Add(one => one.ChildContent, neck => page => page.AddMarkupContent(0, neck.Svg))
        );
    }

    public void Dispose() => _page.Dispose();

    private static Exhibit Of(string key) =>
        ShowQuestion.Answer($"show the triads, on strings 4-2, in {key}", ShowDefaults.Standard).Value!;

    private WrittenNeck Show(Exhibit exhibit, Shape? shape = null, double room = Room)
    {
        _stack.InvokeAsync(() => _pictures.Show(exhibit, shape, [], room, NarrowestFret));
        AssertPageIsOf();
        return _pictures.Layers.Now!;
    }

    private bool Put()
    {
        var isPut = false;
        _stack.InvokeAsync(() => isPut = _pictures.Layers.PutNextInPage());
        AssertPageIsOf();
        return isPut;
    }

    // The page has the pictures it is to have, in their order, and one of them is seen.
    private void AssertPageIsOf()
    {
        Assert.Equal(
            _pictures.Layers.InPage.Select(picture => picture == _pictures.Layers.Now ? "neck now" : "neck near"),
            _stack.FindAll("div").Select(layer => layer.ClassName)
        );
        Assert.Equal(
            _pictures.Layers.InPage.Select(picture => IdOf(picture.Svg)),
            _stack.FindAll("svg > title").Select(title => title.Id)
        );
        Assert.Contains(_pictures.Layers.Now, _pictures.Layers.InPage);
    }

    private static string IdOf(string svg) => svg.Split("<title id=\"")[1].Split('"')[0];

    [Fact]
    public void What_was_foreseen_stands_in_the_page_and_is_then_shown_without_another()
    {
        var (here, next) = (Of("C major"), Of("G major"));
        var now = Show(here);

        _pictures.Foresee(next);
        _pictures.Foresee(next);
        Assert.Equal([now], _pictures.Layers.InPage);
        Assert.True(Put());
        Assert.False(Put());
        var foreseen = _pictures.Layers.InPage[^1];
        var changed = _changed;

        Assert.Same(foreseen, Show(next));
        Assert.Equal([now, foreseen], _pictures.Layers.InPage);
        Assert.Equal(changed, _changed);
    }

    [Fact]
    public void Of_many_the_one_goes_that_was_wanted_longest_ago_but_never_the_one_that_is_seen()
    {
        var now = Show(Of("C major"));
        var again = Of("G major");
        foreach (var exhibit in new[] { again, Of("D major"), again, Of("A major") })
        {
            _pictures.Foresee(exhibit);
            Put();
        }

        Assert.Equal(["C major", "G major", "A major"], _pictures.Layers.InPage.Select(KeyOf));
        Assert.Same(now, _pictures.Layers.InPage[0]);
    }

    [Fact]
    public void A_picture_with_a_shape_goes_when_another_is_seen()
    {
        var exhibit = Of("C major");
        var plain = Show(exhibit);

        var first = Show(exhibit, exhibit.Shapes!.Value[0]);
        var second = Show(exhibit, exhibit.Shapes!.Value[1]);
        Assert.Equal([plain, second], _pictures.Layers.InPage);

        Assert.Same(plain, Show(exhibit));
        Assert.Equal([plain], _pictures.Layers.InPage);
        Assert.NotSame(first, second);
    }

    [Fact]
    public void In_another_room_all_are_drawn_anew_with_a_shape_too()
    {
        var exhibit = Of("C major");
        var before = Show(exhibit);
        _pictures.Foresee(Of("G major"));

        var after = Show(exhibit, exhibit.Shapes!.Value[0], Room + 100);

        Assert.NotSame(before, after);
        Assert.False(Put());
        _pictures.Foresee(Of("D major"));
        Assert.True(Put());
        Assert.Equal([after], _pictures.Layers.InPage.Take(1));
    }

    [Fact]
    public void Where_there_is_room_for_one_none_waits()
    {
        var pictures = new NeckPictures(1);
        pictures.Show(Of("C major"), null, [], Room, NarrowestFret);

        pictures.Foresee(Of("G major"));

        Assert.False(pictures.Layers.PutNextInPage());
        Assert.Single(pictures.Layers.InPage);
        Assert.Throws<ArgumentOutOfRangeException>(() => new NeckPictures(0));
    }

    private static string KeyOf(WrittenNeck picture) => picture.Neck.Drawing.Title.Split(" on ")[0];
}
