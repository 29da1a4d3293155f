using Fretloom.Hand;

namespace Fretloom.Tests.Hand;

public class StretchTests
{
    [Fact]
    public void The_default_is_no_stretch()
    {
        var none = default(Stretch);

        Assert.Equal(
            (Finger.None, Finger.None, 0.0, Width.InReach),
            (none.Lower, none.Higher, none.DistanceMm, none.Width)
        );
    }

    // Pins: fingers 1 and 4 of 189 mm are 95 mm apart in comfort and 132 mm at most; wide begins at three quarters, 122.75 mm.
    [Theory]
    [InlineData(0, Width.InReach)]
    [InlineData(122.7, Width.InReach)]
    [InlineData(122.8, Width.Wide)]
    [InlineData(132, Width.Wide)]
    [InlineData(132.1, Width.VeryWide)]
    public void Wide_begins_at_three_quarters_and_very_wide_beyond_the_most(double distanceMm, Width width) =>
        Assert.Equal(width, new Stretch(HandSize.Adult, Finger.Index, Finger.Little, distanceMm).Width);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_distance_is_refused(double distanceMm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new Stretch(HandSize.Adult, Finger.Index, Finger.Little, distanceMm)
        );

    [Fact]
    public void Fingers_out_of_order_are_refused() =>
        Assert.Throws<ArgumentException>(() => new Stretch(HandSize.Adult, Finger.Little, Finger.Index, 10));
}
