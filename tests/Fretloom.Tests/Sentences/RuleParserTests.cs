using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;

namespace Fretloom.Tests.Sentences;

public class RuleParserTests
{
    private static readonly Gen<LineRule> AnyRule = Gen.OneOf(
        Gen.Int[1, 4].Select(LineRule (number) => new LineRule.StartWith((Finger)number)),
        Gen.Int[1, 99].Select(LineRule (number) => new LineRule.StayIn(number)),
        Gen.Const<LineRule>(new LineRule.NoOpenStrings()),
        Gen.Int[1, 4].Select(LineRule (number) => new LineRule.Never((Finger)number)),
        Gen.Select(Gen.Int[0, 50], Gen.Int[0, 49])
            .Select(LineRule (ends) => new LineRule.Within(new FretRange(ends.Item1, ends.Item1 + ends.Item2))),
        Gen.Select(Gen.Int[0, int.MaxValue - 1], Gen.Int[1, 99])
            .Select(LineRule (one) => new LineRule.OnString(one.Item1, one.Item2)),
        Gen.Select(Gen.Int[0, 200_000], Gen.Int[0, 4])
            .Select(LineRule (one) => new LineRule.WithFinger(one.Item1, (Finger)one.Item2))
    );

    private static readonly string[] Words =
        "start with finger 2 stay in position 5 no open strings never note on string the third within frets - , to index 99999999999".Split(
            ' '
        );

    [Fact]
    public void A_rule_printed_is_read_back() =>
        AnyRule.Sample(rule => Assert.Equal(rule, RuleParser.Parse(rule.ToString()).Value));

    [Theory]
    [InlineData("start with finger 2", "start with finger two")]
    [InlineData("start with finger 2", "Begin with the middle finger.")]
    [InlineData("start with finger 1", "start with index")]
    [InlineData("stay in position 5", "in position 5")]
    [InlineData("stay in position 5", "stay in 5th position")]
    [InlineData("stay in position 5", "in the fifth position")]
    [InlineData("no open strings", "without open strings")]
    [InlineData("no open strings", "no open string")]
    [InlineData("never finger 4", "never use finger 4")]
    [InlineData("never finger 4", "never the little finger")]
    [InlineData("never finger 4", "no finger 4")]
    [InlineData("never finger 4", "without the little finger")]
    [InlineData("within frets 5-9", "frets 5 to 9")]
    [InlineData("within frets 5-9", "within 5–9")]
    [InlineData("note 3 on string 3", "note three on string three")]
    [InlineData("note 3 on string 3", "note 3 on the third string")]
    [InlineData("note 3 with finger 1", "note 3 with the index finger")]
    [InlineData("note 3 open", "Note 3 open.")]
    public void Small_variants_are_understood(string rule, string variant) =>
        Assert.Equal(rule, RuleParser.Parse(variant).Value?.ToString());

    [Theory]
    [InlineData("", "expected a rule")]
    [InlineData("strat with finger 2", "did you mean 'start'?")]
    [InlineData("start with fingr 2", "did you mean 'finger'?")]
    [InlineData("start with finger 5", "from 1 to 4, found '5'")]
    [InlineData("start with finger", "expected a finger, found the end")]
    [InlineData("stay in posiiton 5", "did you mean 'position'?")]
    [InlineData("stay in position 0", "from 1 to 99")]
    [InlineData("no open strigns", "did you mean 'strings'?")]
    [InlineData("note 0 open", "from 1 to")]
    [InlineData("note 3 on string 100", "from 1 to 99")]
    [InlineData("note 99999999999999999999 open", "from 1 to")]
    [InlineData("within frets 9-5", "comes before the first")]
    [InlineData("never finger 4 5", "expected the end of the rule")]
    public void What_is_wrong_is_said_with_what_may_be_meant(string text, string words)
    {
        var result = RuleParser.Parse(text);

        Assert.Contains(words, Assert.Single(result.Errors).Message, StringComparison.Ordinal);
        Assert.False(result.IsRead);
    }

    [Fact]
    public void Reading_any_text_ends_without_an_exception() =>
        Gen.OneOf(
                Gen.String,
                Gen.Int[0, Words.Length - 1]
                    .Array[0, 8]
                    .Select(words => string.Join(' ', words.Select(at => Words[at])))
            )
            .Sample(text => Assert.NotEqual(RuleParser.Parse(text).IsRead, RuleParser.Parse(text).Errors.Count > 0));

    [Fact]
    public void Rules_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.StartWith(Finger.None));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.Never(Finger.Thumb));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.StayIn(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.OnString(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.OnString(0, 100));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.WithFinger(0, Finger.Thumb));
    }
}
