using Fretloom.Neck;

namespace Fretloom.Tests.Neck;

/// <summary>Spots, fret ranges and string sets as text.</summary>
public class NeckTextTests
{
    [Fact]
    public void A_spot_is_read_back_as_it_was_written()
    {
        for (var number = 1; number <= 99; number++)
        {
            for (var fret = 0; fret <= 99; fret++)
            {
                var spot = new Spot(number, fret);
                Assert.Equal(spot, Spot.Parse(spot.ToString()));
            }
        }

        Assert.Equal(new Spot(1, 0), default);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(":")]
    [InlineData("4")]
    [InlineData("4:")]
    [InlineData(":9")]
    [InlineData("0:9")]
    [InlineData("4:-1")]
    [InlineData("100:1")]
    [InlineData("4:100")]
    [InlineData("4:9:1")]
    [InlineData(" 4:9")]
    [InlineData("99999999999:1")]
    [InlineData("٤:9")]
    public void Other_texts_are_no_spot(string? text)
    {
        Assert.False(Spot.TryParse(text, out _));
        Assert.Throws<FormatException>(() => Spot.Parse(text!));
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(100, 1)]
    [InlineData(1, -1)]
    [InlineData(1, 100)]
    public void A_spot_off_every_neck_is_refused(int number, int fret) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Spot(number, fret));

    [Fact]
    public void A_range_is_read_back_as_it_was_written()
    {
        for (var first = 0; first <= 99; first++)
        {
            for (var last = first; last <= 99; last++)
            {
                var range = new FretRange(first, last);
                Assert.Equal(range, FretRange.Parse(range.ToString()));
                Assert.Equal(range.Count, range.Frets.Count(range.Contains));
            }
        }

        Assert.Equal("0-0", default(FretRange).ToString());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("5")]
    [InlineData("9-5")]
    [InlineData("0-100")]
    [InlineData("-1-5")]
    [InlineData("0 - 12")]
    [InlineData("0-12-24")]
    [InlineData("a-b")]
    public void Other_texts_are_no_range(string? text)
    {
        Assert.False(FretRange.TryParse(text, out _));
        Assert.Throws<FormatException>(() => FretRange.Parse(text!));
    }

    [Theory]
    [InlineData(-1, 5)]
    [InlineData(0, 100)]
    [InlineData(6, 5)]
    public void A_range_that_is_none_is_refused(int first, int last) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new FretRange(first, last));

    [Fact]
    public void A_string_set_is_read_back_as_it_was_written() =>
        Necks
            .AnyStrings(20)
            .Sample(set =>
            {
                Assert.Equal(set, StringSet.Parse(set.ToString()));
                Assert.Equal(set, new StringSet(set.Numbers.Reverse()));
            });

    [Theory]
    [InlineData("4-1", "4-1")]
    [InlineData("4, 3, 2, 1", "4-1")]
    [InlineData("1 and 2", "2-1")]
    [InlineData("6, 4, 3 and 2", "6, 4, 3 and 2")]
    [InlineData("2, 3, 4, and 6", "6, 4, 3 and 2")]
    [InlineData("6 and 4", "6 and 4")]
    [InlineData("5", "5")]
    public void Sets_print_in_one_way(string text, string printed) =>
        Assert.Equal(printed, StringSet.Parse(text).ToString());

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("1-4")]
    [InlineData("4-")]
    [InlineData("-4")]
    [InlineData("0-0")]
    [InlineData("5-5")]
    [InlineData("4, 4")]
    [InlineData("4,, 3")]
    [InlineData("100-98")]
    [InlineData("4-2-1")]
    [InlineData("four")]
    public void Other_texts_are_no_string_set(string? text)
    {
        Assert.False(StringSet.TryParse(text, out _));
        Assert.Throws<FormatException>(() => StringSet.Parse(text!));
    }

    [Fact]
    public void A_set_without_strings_or_with_impossible_ones_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new StringSet([]));
        Assert.Throws<ArgumentException>(() => new StringSet([0, 1]));
        Assert.Throws<ArgumentException>(() => new StringSet([100]));
        Assert.Throws<ArgumentException>(() => new StringSet([2, 2]));
        Assert.Throws<ArgumentException>(() => StringSet.Run(1, 4));
        Assert.Throws<ArgumentException>(() => StringSet.Run(int.MaxValue, 1));
        Assert.Equal(0, default(StringSet).Count);
        Assert.Equal("", default(StringSet).ToString());
    }

    [Fact]
    public void Neighbours_are_the_runs_of_a_size()
    {
        Assert.Equal(["6-3", "5-2", "4-1"], StringSet.Run(6, 1).Neighbours(4).Select(set => set.ToString()));
        Assert.Equal(["6, 4 and 3", "4-2"], StringSet.Parse("6, 4, 3, 2").Neighbours(3).Select(set => set.ToString()));
        Assert.Empty(StringSet.Run(3, 1).Neighbours(4));
        Assert.Empty(StringSet.Run(3, 1).Neighbours(0));
    }

    [Fact]
    public void Whatever_text_is_read_is_read_back_the_same() =>
        Gen.String[Gen.Char["0123456789:-, and٤"], 0, 12]
            .Sample(text =>
            {
                Assert.True(!Spot.TryParse(text, out var spot) || Spot.Parse(spot.ToString()) == spot);
                Assert.True(!FretRange.TryParse(text, out var range) || FretRange.Parse(range.ToString()) == range);
                Assert.True(!StringSet.TryParse(text, out var set) || StringSet.Parse(set.ToString()) == set);
            });
}
