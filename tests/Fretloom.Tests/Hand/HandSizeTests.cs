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

    // Public data of the 2012 Anthropometric Survey of U.S. Army Personnel (Gordon et al. 2014, NATICK/TR-15/007), computed
    // from the two public files; the table is in tests/SOURCES.md.
    [Fact]
    public void Small_large_and_adult_hands_are_those_of_the_survey()
    {
        var lengths = Table.Read("ansur_hand.csv").Where(row => row["measure_mm"] == "handlength").ToList();
        var women = lengths.Single(row => row["file"].Contains("FEMALE", StringComparison.Ordinal));
        var men = lengths.Single(row => !row["file"].Contains("FEMALE", StringComparison.Ordinal));

        Assert.Equal(women.Number("p5"), HandSize.Small.LengthMm);
        Assert.Equal(men.Number("p95"), HandSize.Large.LengthMm);
        Assert.InRange(HandSize.Adult.LengthMm, women.Number("mean"), men.Number("mean"));
    }
}
