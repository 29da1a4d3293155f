using System.Globalization;
using System.Text;
using Fretloom.Pages.Svg;

namespace Fretloom.Pages.Tests.Svg;

public class HundredthsTests
{
    /// <summary>As the library writes it, which is slower.</summary>
    [Fact]
    public void A_number_is_written_as_the_format_0_and_two_places_says() =>
        Gen.OneOf(Gen.Double[-2000, 2000], Gen.Int[-200_000, 200_000].Select(hundredths => hundredths / 100.0))
            .Sample(value =>
                Assert.Equal(
                    (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture),
                    Written(value)
                )
            );

    [Theory]
    [InlineData(-0.001, "0")]
    [InlineData(0.05, "0.05")]
    [InlineData(1.5, "1.5")]
    [InlineData(-12.25, "-12.25")]
    public void Examples(double value, string text) => Assert.Equal(text, Written(value));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e9)]
    public void What_is_no_coordinate_is_refused(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Written(value));

    private static string Written(double value) => new StringBuilder().AppendHundredths(value).ToString();
}
