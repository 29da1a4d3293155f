using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class ChordQualityTests
{
    public static TheoryData<string> Symbols => [.. ChordQuality.All.Select(quality => quality.Symbol)];

    [Fact]
    public void There_are_at_least_sixty_and_no_two_share_a_symbol_a_name_or_their_members()
    {
        Assert.True(ChordQuality.All.Count >= 60);
        Assert.Distinct(ChordQuality.All.Select(quality => quality.Symbol));
        Assert.Distinct(ChordQuality.All.Select(quality => quality.Name));
        Assert.Distinct(ChordQuality.All.Select(quality => quality.Intervals));
    }

    [Theory]
    [MemberData(nameof(Symbols))]
    public void Every_spelling_of_a_quality_reads_as_that_quality(string symbol)
    {
        var quality = ChordQuality.Parse(symbol);

        Assert.Equal(symbol, quality.Symbol);
        Assert.All(quality.OtherSymbols, spelling => Assert.Same(quality, ChordQuality.Parse(spelling)));
    }

    [Fact]
    public void Members_ascend_from_the_root_and_sound_different() =>
        Assert.All(
            ChordQuality.All,
            quality =>
            {
                Assert.Equal(default, quality.Intervals[0]);
                Assert.Equal(quality.MemberCount, quality.PitchClasses.Count);
                Assert.Equal(quality.Intervals.OrderBy(interval => interval.Semitones), quality.Intervals);
                Assert.Subset(quality.Intervals.ToHashSet(), quality.Omissible.ToHashSet());
                Assert.DoesNotContain(quality.Addable, quality.Intervals.Contains);
            }
        );

    // A symbol that began with one would be read as part of the root.
    [Fact]
    public void No_symbol_begins_with_an_accidental() =>
        Assert.DoesNotContain(ChordQuality.All, quality => quality.Symbol is ['b' or '#' or 'x', ..]);

    [Theory]
    [InlineData("M7", "maj7")]
    [InlineData("△7", "maj7")]
    [InlineData("Δ", "maj7")]
    [InlineData("-7", "m7")]
    [InlineData("min7", "m7")]
    [InlineData("ø", "m7b5")]
    [InlineData("ø7", "m7b5")]
    [InlineData("m7(♭5)", "m7b5")]
    [InlineData("-7b5", "m7b5")]
    [InlineData("°7", "dim7")]
    [InlineData("o", "dim")]
    [InlineData("+", "aug")]
    [InlineData("+7", "7#5")]
    [InlineData("7+", "7#5")]
    [InlineData("7-9", "7b9")]
    [InlineData("7(b9,♯11)", "7b9#11")]
    [InlineData("mM7", "mMaj7")]
    [InlineData("-△7", "mMaj7")]
    [InlineData("m/maj7", "mMaj7")]
    [InlineData("6/9", "69")]
    [InlineData("sus", "sus4")]
    [InlineData("2", "add9")]
    [InlineData("7alt", "7#5#9")]
    public void Usual_spellings_are_read(string spelling, string symbol) =>
        Assert.Equal(symbol, ChordQuality.Parse(spelling).Symbol);

    [Theory]
    [InlineData("(")]
    [InlineData("()")]
    [InlineData("/")]
    [InlineData(" ")]
    [InlineData("7(b9")]
    [InlineData("foo")]
    [InlineData("77")]
    [InlineData("mm")]
    public void What_is_no_suffix_is_refused(string text) => Assert.False(ChordQuality.TryParse(text, out _));
}
