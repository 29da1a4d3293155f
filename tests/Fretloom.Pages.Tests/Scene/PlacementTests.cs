using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Tests.Scene;

public class PlacementTests
{
    private static readonly Node Picture = new Node.Group(
        "all",
        [
            new Node.Line(1, 2, 30, 4, new Stroke(Tone.Ink, 1)),
            new Node.Circle(5, 6, 2, Tone.Paper),
            new Node.Rect(10, 3, 7, 5, Tone.Full),
            new Node.Path([PathStep.MoveTo(1, 1), PathStep.ArcTo(9, 1, 4, true), PathStep.Close()], Tone.Band),
            new Node.Label(20, 9, "B♭", new TextStyle(Face.SansBold, 9), Tone.Ink, Anchor.Start),
        ]
    );

    [Fact]
    public void Mirrored_twice_is_as_before()
    {
        var mirror = Placement.Mirrored(40);
        Assert.Equal(Picture, Picture.Placed(mirror).Placed(mirror));
        Assert.NotEqual(Picture, Picture.Placed(mirror));
    }

    [Fact]
    public void Moved_there_and_back_is_as_before() =>
        Assert.Equal(Picture, Picture.Placed(Placement.Moved(3, -4)).Placed(Placement.Moved(-3, 4)));

    [Fact]
    public void A_mirrored_label_reads_from_its_other_end()
    {
        var label = (Node.Label)((Node.Group)Picture).Children[4];
        var mirrored = (Node.Label)label.Placed(Placement.Mirrored(40));
        Assert.Equal(("B♭", Anchor.End), (mirrored.Text, mirrored.Anchor));
        Assert.Equal(40 - label.Right, mirrored.Left, 9);
    }
}
