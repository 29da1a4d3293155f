using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Sentences;

namespace Fretloom.Tests.Claims.Discovery;

/// <summary>What is found unasked is true, worth telling, and the same for everybody.</summary>
public class ClaimDiscoveryTests
{
    private const string FourStrings = "on a guitar, on strings 4-1, in every major key";

    // Each search is made once for all tests.
    private static readonly Lazy<DiscoveryResult> Four = new(() => Discover(FourStrings, 1));
    private static readonly Lazy<DiscoveryResult> Bass = new(() => Discover("on a bass, in every key", 1));
    private static readonly Lazy<DiscoveryResult> Six = new(() => Discover("on a guitar, in every major key", 1));
    private static readonly Lazy<DiscoveryResult> SixAgain = new(() => Discover("on a guitar, in every major key", 2));

    private static IEnumerable<DiscoveryResult> All => [Four.Value, Bass.Value, Six.Value];

    // Five exact laws: each a condition that suffices, and its converse.
    public static TheoryData<string, string, string> ExactLaws =>
        new()
        {
            {
                "guitar",
                "In every key, on every 4 string tuning that is palindromic, if the key is not harmonic minor, then the key pattern is its own half-turn.",
                "In every key, on every 4 string tuning, if the key pattern is its own half-turn, then the string set is palindromic and the key is not harmonic minor."
            },
            {
                "guitar",
                "In every major key, on every 4 string tuning that is palindromic, the half-turn swaps degree 1 and degree 3.",
                "In every key, on every 4 string tuning, if the half-turn swaps degree 1 and degree 3, then the string set is palindromic and the key is major."
            },
            {
                "guitar",
                "In every key, on every 4 string tuning that is palindromic, the dominant seventh shape is the half-turn of the half-diminished seventh shape.",
                "In every key, on every 4 string tuning, if the dominant seventh shape is the half-turn of the half-diminished seventh shape, then the string set is palindromic."
            },
            {
                "guitar",
                "In every harmonic minor key, on every 4 string tuning that is palindromic, the seventh shape on degree 2 is the half-turn of the seventh shape on degree 5.",
                "In every harmonic minor key, on every 4 string tuning, if the seventh shape on degree 2 is the half-turn of the seventh shape on degree 5, then the string set is palindromic."
            },
            {
                "bass",
                "In every key, on every 4 string tuning, if the string set has equal steps, then the key pattern of strings 4-2 has the same form as the key pattern of strings 3-1.",
                "In every key, on every 4 string tuning, if the key pattern of strings 4-2 has the same form as the key pattern of strings 3-1, then the string set has equal steps."
            },
        };

    [Theory]
    [MemberData(nameof(ExactLaws))]
    public void The_exact_laws_are_found_unaided(string place, string law, string converse)
    {
        var found = place == "bass" ? Bass.Value : Four.Value;
        var line = Assert.Single(
            found.Laws,
            one => one.AlsoSays.Prepend(one.Sentence).Any(sentence => sentence.ToString() == law)
        );
        Assert.NotNull(line.Converse);
        Assert.Equal(Verdict.Holds, Check(ClaimParser.Parse(law).Value!).Verdict);
        Assert.Equal(Verdict.Holds, Check(ClaimParser.Parse(converse).Value!).Verdict);
    }

    [Fact]
    public void Every_line_reads_back_and_holds_in_every_case()
    {
        foreach (var line in All.SelectMany(found => found.Landmarks.Concat(found.Laws)))
        {
            var read = ClaimParser.Parse(line.Sentence.ToString());
            Assert.True(read.IsRead, line.Sentence.ToString());
            Assert.Equal(line.Sentence, read.Value);
            var verdict = Check(read.Value);
            Assert.Equal((Verdict.Holds, line.Cases), (verdict.Verdict, verdict.Cases));
        }
    }

    [Fact]
    public void What_a_line_also_says_holds_in_as_many_cases()
    {
        foreach (var line in All.SelectMany(found => found.Landmarks.Concat(found.Laws)))
        {
            Assert.All(
                line.AlsoSays,
                other =>
                {
                    Assert.Equal(other, ClaimParser.Parse(other.ToString()).Value);
                    Assert.Equal(Verdict.Holds, Check(other).Verdict);
                }
            );
        }
    }

    [Fact]
    public void Every_line_can_be_seen_where_it_is_true_in_the_simplest_key()
    {
        foreach (var found in All)
        {
            foreach (var line in found.Landmarks.Concat(found.Laws))
            {
                // A law may speak of what these strings have not got, such as an empty fret.
                Assert.Equal(line.Pictures.Count > 0, found.Landmarks.Contains(line) || SaysSomethingHere(found, line));
                Assert.All(
                    line.Pictures,
                    sentence =>
                    {
                        Assert.Equal(sentence, ShowParser.Parse(sentence.ToString()).Value);
                        var shown = ShowResolver.Resolve(sentence, ShowDefaults.Standard).Exhibit;
                        Assert.NotNull(shown);
                        Assert.Null(shown.WhatIsMissing);
                        Assert.Equal(found.Scope.Instrument, shown.Map.Instrument);
                        Assert.Empty(shown.Map.Strings.Numbers.Except(found.Scope.ChosenStrings.Numbers));
                        Assert.Contains(shown.Map.Key, line.Sentence.Keys.Keys);
                    }
                );
                Assert.InRange(line.Pictures.Select(sentence => sentence.Key).Distinct().Count(), 0, 1);
            }
        }

        static bool SaysSomethingHere(DiscoveryResult found, DiscoveredClaim line) =>
            Check(line.Sentence with { Places = found.Scope.Place }).Verdict == Verdict.Holds;
    }

    // On the cards of its picture a claim about spans can be counted out.
    [Fact]
    public void Shapes_are_drawn_as_wide_as_they_are_claimed()
    {
        var line = Four.Value.Landmarks.Single(line =>
            line.Sentence.ToString()
                .EndsWith("exactly 2 of the seventh shapes span exactly 4 frets.", StringComparison.Ordinal)
        );
        var shown = ShowResolver.Resolve(Assert.Single(line.Pictures), ShowDefaults.Standard).Exhibit!;
        Assert.Equal(7, shown.Shapes!.Value.Count);
        Assert.Equal(2, shown.Shapes!.Value.Count(shape => shape.Span == 4));
    }

    [Fact]
    public void The_nearest_failure_fails_and_can_be_seen()
    {
        foreach (var found in All)
        {
            foreach (
                var (line, failure) in found.Landmarks.Concat(found.Laws).Select(line => (line, line.NearestFailure))
            )
            {
                Assert.NotNull(failure);
                Assert.Equal(failure.Kind, failure.Case.Key.Kind);
                Assert.Equal(failure.Place, failure.Case.Place);
                Assert.EndsWith(".", failure.Case.Why, StringComparison.Ordinal);
                Assert.True(
                    Counterexample.Of(failure.Case) is not null
                        || failure.Pictures.Any(sentence =>
                            ShowResolver.Resolve(sentence, ShowDefaults.Standard).IsShown
                        ),
                    line.Sentence.ToString()
                );
            }
        }
    }

    [Fact]
    public void A_converse_holds()
    {
        var converses = All.SelectMany(found => found.Laws)
            .Select(law => law.Converse)
            .OfType<ClaimSentence>()
            .ToList();
        Assert.NotEmpty(converses);
        Assert.All(converses, converse => Assert.Equal(Verdict.Holds, Check(converse).Verdict));
    }

    [Fact]
    public void No_landmark_is_true_nearly_everywhere_and_many_at_random_are()
    {
        Assert.All(All.SelectMany(found => found.Landmarks), line => Assert.InRange(line.Elsewhere, 0, 0.9));
        Assert.Contains(Four.Value.AtRandom, line => line.Elsewhere > 0.9);
    }

    [Fact]
    public void Landmarks_are_of_many_kinds_and_at_most_four_of_one()
    {
        Assert.All(
            All,
            found => Assert.All(found.Landmarks.CountBy(line => line.Kind), kind => Assert.InRange(kind.Value, 1, 4))
        );
        Assert.InRange(Four.Value.Landmarks.Select(line => line.Kind).Distinct().Count(), 8, 99);
    }

    [Fact]
    public void At_most_three_landmarks_follow_from_another_one()
    {
        var lines = Four.Value.Landmarks;
        var redundant = lines.Count(line =>
            lines.Any(other => other != line && Follows(other.Sentence, line.Sentence))
        );
        Assert.InRange(redundant, 0, 3);
    }

    [Fact]
    public void One_seed_gives_one_answer()
    {
        var again = Discover("on a guitar, in every major key", 1);
        Assert.Equal(Six.Value.Landmarks, again.Landmarks);
        Assert.Equal(Six.Value.Laws, again.Laws);
    }

    [Fact]
    public void Two_seeds_give_nearly_the_same_landmarks()
    {
        var (one, other) = (Sentences(Six.Value), Sentences(SixAgain.Value));
        Assert.InRange(one.Intersect(other).Count() / (double)one.Union(other).Count(), 0.9, 1);
    }

    [Theory]
    [InlineData("on a re-entrant ukulele, in every major key")]
    [InlineData("on guitar strings 2-1, in every mode")]
    [InlineData("on guitar strings 6, 4, 3 and 2, in the key of D dorian")]
    public void Any_place_and_keys_can_be_asked_about(string text)
    {
        var found = Discover(text, 1);
        Assert.NotEmpty(found.Landmarks);
        Assert.Equal(found.Scope, DiscoveryParser.Parse(found.Scope.ToString()).Value);
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() =>
            ClaimDiscovery.Run(DiscoveryParser.Parse(FourStrings).Value!, null, null, source.Token)
        );
    }

    [Theory]
    [InlineData("on a guitar, on strings 4-1", 28, "in which keys")]
    [InlineData("on a guitr, in every major key", 6, "guitar")]
    [InlineData("on a guitar, in every major key, there is at least 1 full fret.", 34, "keys")]
    [InlineData("on every listed string set, in every key", 1, "one instrument")]
    [InlineData("on a guitar, in every key, on frets 0 to 5", 1, "endless neck")]
    [InlineData("on guitar strings 1, in every key", 1, "2 to 8 strings")]
    public void A_wrong_scope_is_told_with_its_place(string text, int column, string told)
    {
        var read = DiscoveryParser.Parse(text);
        Assert.False(read.IsRead);
        Assert.Equal(column, read.Errors[0].Column);
        Assert.Contains(told, read.Errors[0].Message, StringComparison.Ordinal);
    }

    private static HashSet<string> Sentences(DiscoveryResult found) =>
        [.. found.Landmarks.Select(line => line.Sentence.ToString())];

    // Wherever the first is true, over every tuning in every usual key, the second is.
    private static bool Follows(ClaimSentence first, ClaimSentence second) =>
        Check(
            new ClaimSentence(
                new KeyScope.EveryKey(),
                new PlaceScope.Tunings(4),
                null,
                new Claim.If(first.Claim, second.Claim)
            )
        )
            is { Verdict: Verdict.Holds, Untested: var untested, Cases: var cases }
        && untested < cases;

    private static DiscoveryResult Discover(string text, int seed) =>
        ClaimDiscovery.Run(DiscoveryParser.Parse(text).Value!, new DiscoveryOptions { Seed = seed });

    private static ClaimVerdict Check(ClaimSentence sentence) =>
        ClaimChecker.Check(sentence, new CheckOptions { LooksElsewhere = false, MostFailures = 0 });
}
