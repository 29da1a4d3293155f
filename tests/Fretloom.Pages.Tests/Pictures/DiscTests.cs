using Fretloom.Pages.Pictures;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Tests.Pictures;

public class DiscTests
{
    private static readonly Measures[] Sizes = [Measures.Neck, Measures.CloseNeck, Measures.Card];

    [Theory]
    [InlineData("5")]
    [InlineData("♭7")]
    [InlineData("H")]
    [InlineData("la")]
    public void A_short_label_stands_on_a_circle(string label) =>
        Assert.All(Sizes, measures => Assert.IsType<Node.Circle>(Ground(label, measures)));

    [Theory]
    [InlineData("Sol♭")]
    [InlineData("Fisis")]
    [InlineData("Heses")]
    [InlineData("Sol𝄪")]
    public void A_long_label_stands_on_a_capsule_with_room_at_both_ends(string label) =>
        Assert.All(
            Sizes,
            measures =>
            {
                var ground = Assert.IsType<Node.Rect>(Ground(label, measures));
                var straight = ground.Width / 2 - ground.Corner;
                var lettersAt = 0.33 * measures.LabelStyle(label).Size;
                var room = straight + Math.Sqrt(Math.Pow(ground.Corner, 2) - Math.Pow(lettersAt, 2));

                Assert.Equal(ground.Height / 2, ground.Corner, 1e-9);
                Assert.True(room > measures.LabelStyle(label).WidthOf(label) / 2);
            }
        );

    private static Node Ground(string label, Measures measures)
    {
        var mark = new Mark(label, MarkKind.OfKey, IsTonic: false, IsRoot: false).DrawnAt(0, 0, measures);
        return mark.Children[0];
    }
}
