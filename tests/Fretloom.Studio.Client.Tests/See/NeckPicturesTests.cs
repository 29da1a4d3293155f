using Fretloom.Exhibits;
using Fretloom.Studio.Client.See;

namespace Fretloom.Studio.Client.Tests.See;

public class NeckPicturesTests
{
    private const double Room = 600;
    private const double NarrowestFret = 19;

    private readonly NeckPictures _pictures = new(3);
    private int _shown;
    private int _changed;

    public NeckPicturesTests()
    {
        _pictures.Shown += () => _shown++;
        _pictures.Changed += () => _changed++;
    }

    private static Exhibit Of(string key) =>
        ShowQuestion.Answer($"show the notes of the key, in {key}", ShowDefaults.Standard).Value!;

    private WrittenNeck Show(Exhibit exhibit, double room = Room)
    {
        _pictures.Show(exhibit, null, [], room, NarrowestFret);
        return _pictures.Now!;
    }

    [Fact]
    public void What_was_foreseen_stands_in_the_page_and_is_then_shown_without_another()
    {
        var (here, next) = (Of("C major"), Of("G major"));
        var now = Show(here);

        _pictures.Foresee(next, Room, NarrowestFret);
        Assert.Equal([now], _pictures.InPage);
        Assert.True(_pictures.PutNextInPage());
        Assert.False(_pictures.PutNextInPage());
        var foreseen = _pictures.InPage[^1];
        var changed = _changed;

        Assert.Same(foreseen, Show(next));
        Assert.Equal([now, foreseen], _pictures.InPage);
        Assert.Equal((2, changed), (_shown, _changed));
    }

    [Fact]
    public void Of_many_the_oldest_goes_but_never_the_one_that_is_seen()
    {
        var now = Show(Of("C major"));

        foreach (var key in new[] { "G major", "D major", "A major", "E major" })
        {
            _pictures.Foresee(Of(key), Room, NarrowestFret);
            _pictures.PutNextInPage();
        }

        Assert.Equal(["C major", "A major", "E major"], _pictures.InPage.Select(KeyOf));
        Assert.Same(now, _pictures.InPage[0]);
    }

    [Fact]
    public void In_another_room_all_are_drawn_anew()
    {
        var exhibit = Of("C major");
        var before = Show(exhibit);
        _pictures.Foresee(Of("G major"), Room, NarrowestFret);

        var after = Show(exhibit, Room + 100);

        Assert.NotSame(before, after);
        Assert.Equal([after], _pictures.InPage);
        Assert.False(_pictures.PutNextInPage());
    }

    [Fact]
    public void Where_there_is_room_for_one_none_waits()
    {
        var pictures = new NeckPictures(1);
        pictures.Show(Of("C major"), null, [], Room, NarrowestFret);

        pictures.Foresee(Of("G major"), Room, NarrowestFret);

        Assert.False(pictures.PutNextInPage());
        Assert.Single(pictures.InPage);
    }

    [Fact]
    public void Pictures_in_one_page_have_parts_of_their_own()
    {
        var one = Show(Of("C major"));
        var other = Show(Of("G major"));

        Assert.Contains("id=\"live-neck-1-title\"", one.Svg, StringComparison.Ordinal);
        Assert.Contains("id=\"live-neck-2-title\"", other.Svg, StringComparison.Ordinal);
    }

    private static string KeyOf(WrittenNeck picture) => picture.Neck.Drawing.Title.Split(" on ")[0];
}
