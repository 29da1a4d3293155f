using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Claims;

/// <summary>Any sentence at all, judged by the checker and by the definitions.</summary>
public class SlowClaimsTests
{
    private static readonly CheckOptions CountsOnly = new() { LooksElsewhere = false, MostFailures = 3 };

    /// <summary>Sentences of a few hundred cases that need no hand.</summary>
    private static readonly Gen<ClaimSentence> Sentence = ClaimGen
        .In(ClaimGen.Keys, Gen.OneOf(ClaimGen.On, ClaimGen.On, ClaimGen.Listed, FewTunings()))
        .Where(IsJudgedSlowly);

    [Fact]
    public void The_checker_agrees_with_the_definitions_on_every_generated_sentence() =>
        Sentence.SampleSame(
            sentence =>
            {
                var found = Check(sentence, CountsOnly);
                Assert.Equal(Slow(sentence), (found.Failing, found.Untested, found.Cases));
            },
            count: 200
        );

    [Fact]
    public void The_checker_agrees_with_the_definitions_on_shapes_under_a_hand() =>
        ClaimGen.InHand.SampleSame(
            sentence =>
            {
                var found = Check(sentence, CountsOnly);
                Assert.Equal(Slow(sentence), (found.Failing, found.Untested, found.Cases));
            },
            count: 1000
        );

    [Fact]
    public void Programs_agree_with_the_words_on_every_generated_sentence() =>
        Sentence.SampleSame(
            sentence =>
            {
                var expected = Check(
                    sentence,
                    CountsOnly with
                    {
                        Engine = CheckEngine.Plain,
                        UsesTransposition = false,
                    }
                );
                CheckEngineTests.AssertSame(expected, Check(sentence, CountsOnly));
                CheckEngineTests.AssertSame(
                    expected,
                    Check(
                        sentence,
                        CountsOnly with
                        {
                            Engine = CheckEngine.Numbers,
                            UsesTransposition = false,
                            Threads = 2,
                        }
                    )
                );
            },
            count: 600
        );

    private static Gen<PlaceScope> FewTunings() =>
        Gen.Select(
            Gen.Int[2, 5],
            Gen.Bool,
            Gen.Int[1, 9],
            (strings, isPalindromic, least) =>
                (PlaceScope)
                    new PlaceScope.Tunings(strings, isPalindromic, least, Math.Min(11, least + (strings > 3 ? 1 : 4)))
        );

    /// <summary>Hands are left out: fingering every shape in hundreds of cases takes long.</summary>
    private static bool IsJudgedSlowly(ClaimSentence sentence) =>
        !SlowFit
            .Within(sentence.Claim)
            .Any(part => part is ShapePredicate.Stretches or ShapePredicate.CanBePlayed or ShapePredicate.IsFingeredAs);

    private static (long Failing, long Untested, long Cases) Slow(ClaimSentence sentence)
    {
        var (failing, untested, cases) = (0L, 0L, 0L);
        foreach (var place in SlowPlace.Of(sentence.Places))
        {
            foreach (var key in sentence.Keys.Keys)
            {
                if (!SlowFit.Fits(place, sentence))
                {
                    continue;
                }

                var judged = new SlowClaims(place, key, sentence.Window).Judge(sentence.Claim);
                cases++;
                failing += judged == false ? 1 : 0;
                untested += judged is null ? 1 : 0;
            }
        }

        return (failing, untested, cases);
    }

    private static ClaimVerdict Check(ClaimSentence sentence, CheckOptions options) =>
        ClaimChecker.Check(sentence, options, null, TestContext.Current.CancellationToken);
}
