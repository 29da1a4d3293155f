using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;

namespace Fretloom.Tests.Sentences;

public class RuleParserTests
{
    private static readonly Gen<LineRule> AnyRule = Gen.OneOf(
        Gen.Int[0, 4].Select(LineRule (number) => new LineRule.StartWith((Finger)number)),
        Gen.Int[0, 4].Select(LineRule (number) => new LineRule.EndWith((Finger)number)),
        Gen.Int[1, 99].Select(LineRule (number) => new LineRule.StartOn(number)),
        Gen.Int[1, 99].Select(LineRule (number) => new LineRule.EndOn(number)),
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
        "start end with finger 2 stay don't last up first open string for an in position 5 no open strings never note on string the third within frets - , to index 99999999999".Split(
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
    [InlineData("start with finger 2", "start with the second finger")]
    [InlineData("start with finger 2", "Please begin on finger 2.")]
    [InlineData("start open", "start on an open string")]
    [InlineData("start on string 3", "begin on the third string")]
    [InlineData("end with finger 1", "finish on the index finger")]
    [InlineData("end with finger 1", "the last note with finger 1")]
    [InlineData("end with finger 4", "little finger on the last note")]
    [InlineData("end on string 1", "end on the first string")]
    [InlineData("end on string 1", "last note on string 1")]
    [InlineData("end open", "end with an open string")]
    [InlineData("no open strings", "don't use open strings")]
    [InlineData("no open strings", "don’t use open strings")]
    [InlineData("no open strings", "do not use any open strings")]
    [InlineData("no open strings", "avoid open strings")]
    [InlineData("never finger 4", "avoid the little finger")]
    [InlineData("never finger 4", "no pinky")]
    [InlineData("never finger 4", "don't use the fourth finger")]
    [InlineData("stay in position 1", "stay in first position")]
    [InlineData("stay in position 1", "open position only")]
    [InlineData("stay in position 5", "remain in fifth position")]
    [InlineData("stay in position 5", "keep the hand in position V")]
    [InlineData("stay in position 5", "position 5")]
    [InlineData("stay in position 5", "play in 5th position")]
    [InlineData("within frets 5-9", "between frets 5 and 9")]
    [InlineData("within frets 5-9", "from fret 5 to fret 9")]
    [InlineData("within frets 5-9", "stay within frets 5 through 9")]
    [InlineData("within frets 0-5", "up to fret 5")]
    [InlineData("within frets 0-5", "nothing above the fifth fret")]
    [InlineData("within frets 0-5", "no higher than fret 5")]
    [InlineData("note 3 with finger 1", "the third note with finger 1")]
    [InlineData("note 3 with finger 1", "use finger 1 on note 3")]
    [InlineData("note 1 with finger 1", "index finger for the first note")]
    [InlineData("note 3 on string 2", "play note 3 on the second string")]
    [InlineData("note 3 on string 2", "string 2 for note 3")]
    [InlineData("note 3 open", "note 3 on an open string")]
    public void Small_variants_are_understood(string rule, string variant) =>
        Assert.Equal(rule, RuleParser.Parse(variant).Value?.ToString());

    [Theory]
    [InlineData("", "expected a rule")]
    [InlineData("start with finger 5", "did you mean '4'?")]
    [InlineData(
        "no shifts",
        "no rule speaks of 'shifts': name the position the hand stays in, such as 'stay in position 5'"
    )]
    [InlineData("strat with finger 2", "did you mean 'start'?")]
    [InlineData("start with fingr 2", "did you mean 'finger'?")]
    [InlineData("start with finger 5", "from 1 to 4, found '5'")]
    [InlineData("start with finger", "expected the number of a finger, found the end")]
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

    // What a teacher may ask for, and no rule can say.
    [Theory]
    [InlineData("no shifts", "stay in position 5")]
    [InlineData("don't shift", "stay in position 5")]
    [InlineData("stay in one position", "stay in position 1")]
    [InlineData("start in position 7", "stay in position 7")]
    [InlineData("only fingers 1 to 3", "never finger 4")]
    [InlineData("use open strings", "note 1 open")]
    [InlineData("fretted notes only", "no open strings")]
    [InlineData("all on string 3", "start on string 3")]
    [InlineData("stay on string 3", "start on string 3")]
    [InlineData("avoid string 6", "start on string 1")]
    [InlineData("no stretches", "within frets 5-8")]
    [InlineData("no barre", "note 2 with finger 1")]
    [InlineData("one finger per fret", "start with finger 1")]
    [InlineData("below fret 5", "within frets 0-5")]
    [InlineData("no slides", "note 2 with finger 1")]
    [InlineData("use the thumb", "start with finger 1")]
    [InlineData("start with 2", "start with finger 2")]
    [InlineData("end with finger", "end with finger 4")]
    [InlineData("start with finger 9", "start with finger 4")]
    [InlineData("the fifth finger on note 2", "note 2 with finger 4")]
    [InlineData("frets 9 to 5", "within frets 5-9")]
    [InlineData("never finger 4 5", "never finger 4")]
    [InlineData("position 120", "stay in position 99")]
    [InlineData("play nicely", "start with finger 2")]
    [InlineData("keep it low", "start with finger 2")]
    [InlineData("strat with fingr 2", "start with finger 2")]
    [InlineData("", "start with finger 2")]
    public void What_is_not_understood_comes_with_a_repair_that_is(string text, string rule)
    {
        var repair = Assert.Single(RuleParser.Parse(text).Errors).Repair!;

        Assert.Equal(rule, RuleParser.Parse(repair.ApplyTo(text)).Value?.ToString());
    }

    [Fact]
    public void Every_repair_reads_well() =>
        Gen.OneOf(
                Gen.String[0, 12],
                Gen.Int[0, Words.Length - 1]
                    .Array[0, 8]
                    .Select(words => string.Join(' ', words.Select(at => Words[at])))
            )
            .Sample(text =>
                Assert.All(
                    RuleParser.Parse(text).Errors,
                    error => Assert.True(RuleParser.Parse(error.Repair!.ApplyTo(text)).IsRead)
                )
            );

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
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.StartWith(Finger.Thumb));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.EndWith((Finger)9));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.StartOn(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.EndOn(100));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.Never(Finger.Thumb));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.StayIn(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.OnString(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.OnString(0, 100));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineRule.WithFinger(0, Finger.Thumb));
    }
}
