using Fretloom.Claims;
using Fretloom.Claims.Checking;
using Fretloom.Sentences;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Claims;

/// <summary>What must be so of any sentence, or of any string set, whatever the answer.</summary>
public class ClaimInvarianceTests
{
    private static readonly CheckOptions CountsOnly = new() { LooksElsewhere = false, MostFailures = 32 };

    /// <summary>Places of two to eight strings, ascending and re-entrant.</summary>
    private static readonly Gen<PlaceScope> Places = Gen.OneOf(ClaimGen.On, ClaimGen.Listed, FewTunings());

    [Theory]
    [InlineData("on every 4 string tuning")]
    [InlineData("on every 6 string tuning")]
    [InlineData("on every 7 string tuning")]
    [InlineData("on every 8 string tuning that is palindromic")]
    [InlineData("on re-entrant ukulele")]
    [InlineData("on every listed string set")]
    public void A_pattern_that_turns_has_full_and_empty_frets_that_turn(string places)
    {
        foreach (var keys in new[] { "in every key", "in every mode" })
        {
            foreach (var frets in new[] { "full", "empty" })
            {
                var text =
                    $"{keys}, {places}, if the key pattern is its own half-turn, then the half-turn carries the {frets} frets to themselves.";
                Assert.Equal(Verdict.Holds, Check(ClaimParser.Parse(text).Value!, CountsOnly).Verdict);
            }
        }
    }

    /// <summary>The whole claim on the endless neck, with its fret numbers moved against the key.</summary>
    [Fact]
    public void Transposed_sentences_have_equal_verdicts() =>
        Gen.Select(ClaimGen.In(TheoryGen.Key.Select(key => (KeyScope)new KeyScope.One(key)), Places), TheoryGen.Key)
            .Where((sentence, _) => Transposition.Settles(sentence with { Keys = new KeyScope.EveryKey() }))
            .Sample(
                (sentence, other) =>
                {
                    var key = ((KeyScope.One)sentence.Keys).Key;
                    var transposed = new KeyScope.EveryOf(key.Kind).Keys.First(one =>
                        one.Tonic.PitchClass == other.Tonic.PitchClass
                    );
                    Assert.Equal(
                        CheckEngineTests.Counts(Check(sentence, CountsOnly)),
                        CheckEngineTests.Counts(
                            Check(sentence with { Keys = new KeyScope.One(transposed) }, CountsOnly)
                        )
                    );
                },
                iter: 300
            );

    [Theory]
    [InlineData("In every key, on every 6 string tuning, every empty fret lies next to a full fret.")]
    [InlineData("In every key, on every 6 string tuning, on frets 0 to 12, there is at least 1 full fret.")]
    [InlineData(
        "In every minor key, on every 7 string tuning with steps 3 to 6, every triad shape of strings 3-1 spans at most 5 frets."
    )]
    [InlineData("In every major key, on every 8 string tuning that is palindromic, there are exactly 2 full frets.")]
    [InlineData(
        "In every key, on every listed string set, on frets 0 to 9, neighbouring full frets lie 2 frets apart."
    )]
    public void Threads_vectors_and_transposition_change_neither_counts_nor_the_first_counterexample(string text)
    {
        var sentence = ClaimParser.Parse(text).Value!;
        var expected = Check(sentence, CountsOnly);
        Assert.Equal(Verdict.Fails, expected.Verdict);
        foreach (var threads in new[] { 2, 3, 8 })
        {
            CheckEngineTests.AssertSame(expected, Check(sentence, CountsOnly with { Threads = threads }));
        }

        CheckEngineTests.AssertSame(expected, Check(sentence, CountsOnly with { Engine = CheckEngine.Numbers }));
        CheckEngineTests.AssertSame(
            expected,
            Check(sentence, CountsOnly with { UsesTransposition = false, Threads = 2 })
        );
    }

    private static Gen<PlaceScope> FewTunings() =>
        Gen.Select(
            Gen.Int[2, 8],
            Gen.Bool,
            Gen.Int[1, 10],
            (strings, isPalindromic, least) =>
                (PlaceScope)new PlaceScope.Tunings(strings, isPalindromic, least, least + (strings > 6 ? 0 : 1))
        );

    private static ClaimVerdict Check(ClaimSentence sentence, CheckOptions options) =>
        ClaimChecker.Check(sentence, options, null, TestContext.Current.CancellationToken);
}
