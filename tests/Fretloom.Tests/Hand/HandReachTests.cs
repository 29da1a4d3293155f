using System.Globalization;
using Fretloom.Hand;

namespace Fretloom.Tests.Hand;

public class HandReachTests
{
    // A pin: assumptions of this project for 189 mm, scaled by length and rounded.
    [Theory]
    [InlineData(165, "65 42 45 90 73 115")]
    [InlineData(181, "72 46 50 99 80 126")]
    [InlineData(193, "77 49 53 105 86 135")]
    [InlineData(210, "83 53 58 114 93 147")]
    public void The_most_grows_with_the_length_of_the_hand(double lengthMm, string most)
    {
        var hand = new HandSize(lengthMm);

        var found = Pairs.Select(pair => hand.MostMm(pair.Lower, pair.Higher)).ToList();

        var expected = most.Split(' ').Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToList();
        // The table was rounded to whole millimetres.
        Assert.All(found.Zip(expected), pair => Assert.Equal(pair.Second, pair.First, 0.75));
    }

    [Fact]
    public void At_rest_is_less_than_in_comfort_and_that_less_than_the_most() =>
        Assert.All(
            Pairs,
            pair =>
            {
                var hand = HandSize.Adult;
                Assert.InRange(hand.ComfortableMm(pair.Lower, pair.Higher), hand.RestMm(pair.Lower, pair.Higher), 200);
                Assert.InRange(hand.MostMm(pair.Lower, pair.Higher), hand.ComfortableMm(pair.Lower, pair.Higher), 200);
            }
        );

    [Theory]
    [InlineData(Finger.Index, Finger.Index)]
    [InlineData(Finger.Middle, Finger.Index)]
    [InlineData(Finger.None, Finger.Index)]
    [InlineData(Finger.Little, Finger.Thumb)]
    public void Only_two_fingers_in_order_have_a_reach(Finger lower, Finger higher) =>
        Assert.Throws<ArgumentException>(() => HandSize.Adult.MostMm(lower, higher));

    private static (Finger Lower, Finger Higher)[] Pairs =>
        [
            (Finger.Index, Finger.Middle),
            (Finger.Middle, Finger.Ring),
            (Finger.Ring, Finger.Little),
            (Finger.Index, Finger.Ring),
            (Finger.Middle, Finger.Little),
            (Finger.Index, Finger.Little),
        ];
}
