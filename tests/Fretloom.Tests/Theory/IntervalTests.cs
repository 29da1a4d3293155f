using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class IntervalTests
{
    [Fact]
    public void Every_interval_reads_back() =>
        TheoryGen.Interval.Sample(interval => Assert.Equal(interval, Interval.Parse(interval.ToString())));

    [Fact]
    public void Intervals_between_any_pitches_read_back() =>
        Gen.Select(TheoryGen.Pitch, TheoryGen.Pitch)
            .Sample(
                (from, to) =>
                {
                    var interval = from.IntervalTo(to);
                    Assert.Equal(interval, Interval.Parse(interval.ToString()));
                }
            );

    [Fact]
    public void Inverting_twice_gives_the_same_interval() =>
        Gen.Select(TheoryGen.WrittenName, TheoryGen.WrittenName)
            .Sample(
                (from, to) =>
                {
                    var interval = from.IntervalTo(to);
                    Assert.Equal(interval, interval.Inverted().Inverted());
                    Assert.Equal(new Interval(7, 12), interval.Plus(interval.Inverted()));
                }
            );

    [Fact]
    public void An_interval_and_its_negative_cancel() =>
        TheoryGen.Interval.Sample(interval => Assert.Equal(default, interval.Plus(interval.Negated())));

    [Theory]
    [InlineData("C", "G#", "A5", "#5")]
    [InlineData("C", "Eb", "m3", "b3")]
    [InlineData("B", "F", "d5", "b5")]
    [InlineData("C#", "C", "-A1", "b1")]
    [InlineData("C##", "Dbb", "ddd2", "bbbb2")]
    public void Quality_and_degree_text_follow_the_spelling(string from, string to, string text, string degree)
    {
        var interval = NoteName.Parse(from).IntervalTo(NoteName.Parse(to));

        Assert.Equal(text, interval.ToString());
        Assert.Equal(degree, interval.ToDegreeText());
    }

    [Theory]
    [InlineData("")]
    [InlineData("P3")]
    [InlineData("M5")]
    [InlineData("m4")]
    [InlineData("d1")]
    [InlineData("P0")]
    [InlineData("--m3")]
    [InlineData("Ad4")]
    [InlineData("P")]
    [InlineData("P9999999999")]
    public void What_is_no_interval_is_refused(string text) => Assert.False(Interval.TryParse(text, out _));
}
