using Fretloom.Hand;

namespace Fretloom.Tests.Hand;

public class HandSizeTests
{
    [Fact]
    public void The_default_is_the_adult_hand()
    {
        Assert.Equal(189, default(HandSize).LengthMm);
        Assert.Equal(default, new HandSize(189));
    }

    [Fact]
    public void A_length_is_kept_to_the_last_digit() =>
        Gen.Double[100, 260].Sample(lengthMm => Assert.Equal(lengthMm, new HandSize(lengthMm).LengthMm));

    [Theory]
    [InlineData(99.9)]
    [InlineData(260.1)]
    [InlineData(double.NaN)]
    public void A_length_outside_100_to_260_mm_is_refused(double lengthMm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new HandSize(lengthMm));
}
