using Fretloom.Claims;
using Fretloom.Claims.Checking;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Testing;
using static Fretloom.Tests.Claims.Say;

namespace Fretloom.Tests.Claims;

public class ClaimVerdictTests
{
    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(
        "In every major key, on guitar strings 4-1, there are exactly 4 full frets.",
        "In C major, on guitar strings 4-1, there are 3 full frets (0, 5 and 10), not 4."
    )]
    [InlineData(
        "In every key, on guitar, there is at least 1 full fret.",
        "In A harmonic minor, on guitar, there is no full fret."
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, every seventh shape spans at most 4 frets.",
        "In A natural minor, on guitar strings 4-1, the seventh shape on degree 1 (Am7) spans 5 frets, more than 4."
    )]
    [InlineData(
        "In every major key, on guitar, the key pattern is its own half-turn.",
        "In C major, on guitar, the strings are tuned in steps of 5, 5, 5, 4 and 5 semitones, which do not read the same both ways, so no half-turn carries the key pattern onto itself."
    )]
    [InlineData(
        "In every harmonic minor key, on bass, the key pattern is its own half-turn.",
        "In A harmonic minor, on bass, the steps of the scale, 2 1 2 2 1 3 1 semitones, do not read the same backwards, wherever you begin, so no half-turn carries the key pattern onto itself."
    )]
    [InlineData(
        "In every major key, on bass, degree 5 stands on string 3 at every full fret.",
        "In C major, on bass, at full fret 0 string 3 sounds degree 6 (A), not degree 5."
    )]
    [InlineData(
        "In the key of C major, on guitar, degree 1 stands on string 1 at every empty fret.",
        "In C major, on guitar, at empty fret 11 string 1 sounds Eb, which is not in the key, not degree 1."
    )]
    [InlineData(
        "In every major key, on bass, degree 5 stands on string 3 at no full fret.",
        "In C major, on bass, degree 5 (G) stands on string 3 at fret 10, which is a full fret."
    )]
    [InlineData(
        "In every major key, on guitar strings 5-2, the dominant seventh shape is the half-turn of the half-diminished seventh shape.",
        "In C major, on guitar strings 5-2, the dominant seventh shape (G7, fretted 10 9 7 6) is not the half-turn of the half-diminished seventh shape (Bm7b5, fretted 14 12 10 10)."
    )]
    public void The_smallest_counterexample_comes_first_and_tells_what_is_so(string sentence, string why) =>
        Assert.Equal(why, Check(sentence).Failures[0].Why);

    [Fact]
    public void What_fails_is_ringed_and_not_what_is_true()
    {
        var failure = Check("In every major key, on bass, degree 5 stands on string 3 at every full fret.").Failures[0];

        Assert.Equal([0.0], failure.Frets);
        Assert.Equal([new Spot(3, 0)], failure.Spots);
    }

    // The notes of the chords are common practice, no source.
    [Theory]
    [InlineData(
        "In the key of A natural minor, on guitar strings 4-1, the V7 shape spans at most 5 frets.",
        "V7 is E7 in A natural minor; G# is not in the key."
    )]
    [InlineData(
        "In the key of A natural minor, on guitar strings 4-1, the viiø7 shape spans at most 5 frets.",
        "viiø7 is Gm7b5 in A natural minor; Bb and Db are not in the key."
    )]
    [InlineData(
        "In every minor key, on guitar strings 3-1, the I shape spans at most 5 frets.",
        "I is A in A natural minor; C# is not in the key. The same goes for every natural minor, harmonic minor and melodic minor key."
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, the II7 shape spans at most 9 frets.",
        "II7 is D7 in C major; F# is not in the key. The same goes for every major and melodic minor key. II7 is B7 in A natural minor; D# and F# are not in the key. The same goes for every natural minor and harmonic minor key."
    )]
    [InlineData(
        "In the key of A natural minor, on guitar strings 3-1, the bIII shape spans at most 5 frets.",
        "In A natural minor III is C, and bIII, counted from the key's own degree, is Cb: for C say III."
    )]
    [InlineData(
        "In the key of A harmonic minor, on guitar strings 3-1, the bVII shape spans at most 5 frets.",
        "bVII is G in A harmonic minor; G is not in the key."
    )]
    public void A_chord_that_is_not_of_the_key_is_told_of(string sentence, string note) =>
        Assert.Equal(note, Assert.Single(Check(sentence).Notes));

    [Theory]
    [InlineData("In every major key, on guitar strings 4-1, the V7 shape is the half-turn of the viiø7 shape.")]
    [InlineData("In every natural minor key, on guitar strings 3-1, the III shape has the same form as the VII shape.")]
    [InlineData("In every harmonic minor key, on guitar strings 4-1, the viio7 shape spans at most 5 frets.")]
    public void Chords_of_the_key_go_without_a_note(string sentence) => Assert.Empty(Check(sentence).Notes);

    [Theory]
    [InlineData(
        "In the key of A natural minor, on guitar, there are exactly 9 full frets.",
        "Fails in A natural minor"
    )]
    [InlineData(
        "In the key of A harmonic minor, on bass, there are no half-turn centres.",
        "Holds in A harmonic minor"
    )]
    public void The_kind_of_minor_is_named(string sentence, string summary) =>
        Assert.Equal(summary, Check(sentence).Summary);

    [Theory]
    [InlineData(
        "In every key, on guitar, there is at least 1 full fret.",
        "It fails in harmonic minor only; it holds if you put \"if the key is not harmonic minor, then\" before the claim, or write \"in every major key\"."
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, there are exactly 4 full frets.",
        "It holds if you write \"there are exactly 3 full frets\"."
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, on frets 0 to 12, there are exactly 3 full frets.",
        "It holds if you write \"on frets 0 to 11\"."
    )]
    [InlineData(
        "In every key, on guitar, there are exactly 2 full frets.",
        "It holds if you write \"in every major key\" and \"there are exactly 3 full frets\"."
    )]
    [InlineData(
        "In every major key, on every listed string set, the key pattern is its own half-turn.",
        "It holds if you write \"on every palindromic listed string set\"."
    )]
    [InlineData(
        "In every major key, on guitar, the key pattern is its own half-turn.",
        "It holds if you write \"on guitar strings 4-1\"."
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, no seventh shape ends on a half-turn centre.",
        "It holds in harmonic minor only: write \"in every harmonic minor key\"."
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, the half-turn swaps degree 1 and degree 2.",
        "It holds if you write \"and degree 3\"."
    )]
    [InlineData(
        "In every harmonic minor key, on bass, the key pattern is its own half-turn.",
        "It is true of other keys: it holds if you write \"in every major key\"."
    )]
    public void The_shortest_repair_is_told_and_holds(string sentence, string message)
    {
        var repair = Check(sentence).Repair;
        Assert.Equal(message, repair?.Message);
        Assert.Equal(Verdict.Holds, Check(repair!.Sentence.ToString()).Verdict);
    }

    [Fact]
    public void A_sentence_that_speaks_of_nothing_is_not_true() =>
        Assert.Equal(
            Verdict.NothingToTest,
            Check("In every key, on DADGAD guitar, if there are exactly 9 full frets, there is 1 empty fret.").Verdict
        );

    // Keys share chords, and so what a hand was found to do with them.
    [Theory]
    [InlineData(
        "on guitar strings 4-1, on frets 1 to 12, every seventh shape can be played with one finger a note by a child's hand"
    )]
    [InlineData("on guitar strings 4-1, on frets 1 to 9, the V7 shape is fingered as the I7 shape of low-G ukulele")]
    public void A_hand_does_the_same_in_every_key_as_in_each_alone(string claim)
    {
        var all = Check($"In every major key, {claim}.");
        Assert.All(all.ByKey, one => Assert.Equal(one.Verdict, Check($"In the key of {one.Key}, {claim}.").Verdict));
    }

    // Counted by hand from what the strings sound. Octaves two strings apart lie 2 frets higher, over the step from G to B 3, as every player
    // knows (common practice, no source); of a major key's sixths those on 1, 2, 4 and 5 are major.
    [Theory]
    [InlineData("every octave shape of strings 6 and 4 spans exactly 3 frets")]
    [InlineData("every octave shape of strings 5 and 3 spans exactly 3 frets")]
    [InlineData("every octave shape of strings 4 and 2 spans exactly 4 frets")]
    [InlineData("every octave shape of strings 3 and 1 spans exactly 4 frets")]
    [InlineData("exactly 4 of the two-note sixth shapes of strings 4 and 2 span exactly 1 fret")]
    [InlineData("the two-note sixth shape on degree 3 of strings 4 and 2 spans exactly 2 frets")]
    [InlineData("exactly 3 of the tenth shapes of strings 6 and 3 span exactly 2 frets")]
    [InlineData("the tenth shape on degree 2 of strings 6 and 3 spans exactly 1 fret")]
    [InlineData("the tenth shape on degree 1 in first inversion of strings 4 and 2 spans exactly 2 frets")]
    public void Sixths_octaves_and_tenths_lie_as_they_are_counted(string claim) =>
        Assert.Equal(Verdict.Holds, Check($"In every major key, on guitar, {claim}.").Verdict);

    // Guitar strings 5-2 have no full fret in harmonic minor, and one in other keys or two.
    [Fact]
    public void That_there_are_none_in_some_keys_is_no_repair_of_how_many_there_are()
    {
        var repair = Check("In every key, on guitar strings 5-2, there is exactly 1 full fret.").Repair;
        Assert.DoesNotContain("no full frets", repair?.Message ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void A_sentence_that_can_be_asked_nowhere_does_not_apply()
    {
        var found = ClaimChecker.Check(
            new ClaimSentence(EveryMajorKey, Listed, null, ThereAre(1, FullFrets with { Of = Of("8-7") })),
            null,
            null,
            Token
        );
        Assert.Equal((Verdict.DoesNotApply, 0, 240), (found.Verdict, found.Cases, found.NotApplicable));
    }

    [Fact]
    public void Frets_that_a_neck_has_not_got_are_not_asked_about()
    {
        const string claim = "there is at least 1 full fret.";
        var asked = ListedStringSets.All.Count(place => place.Strings.LastFret >= 22);
        Assert.InRange(asked, 1, 19);
        var found = Check($"In every major key, on every listed string set, on frets 0 to 22, {claim}");
        Assert.Equal((12 * asked, 12 * (20 - asked)), (found.Cases, found.NotApplicable));
        var elsewhere = Check($"In every major key, on guitar, on frets 0 to 22, {claim}").Elsewhere!;
        Assert.Equal(asked, elsewhere.ListedSetsAsked);
        Assert.DoesNotContain("ukulele", elsewhere.ListedSets);
    }

    // Twelve guitars and a five-string bass have a fifth string of 18 frets; the banjo's, also beside its strings 4-1, has 17 from its own nut.
    [Theory]
    [InlineData("degree 1 stands on string 5 at some full fret.")]
    [InlineData("the frets of degree 1 on string 5 lie on a full fret.")]
    public void Frets_that_the_string_of_a_degree_has_not_got_are_not_asked_about(string claim)
    {
        var found = Check($"In every major key, on every listed string set, on frets 0 to 18, {claim}");
        Assert.Equal((12 * 13, 12 * 7), (found.Cases, found.NotApplicable));
        Assert.Equal(
            12 * 15,
            Check($"In every major key, on every listed string set, on frets 0 to 17, {claim}").Cases
        );
    }

    [Fact]
    public void The_nearest_failure_under_a_capo_is_named_by_the_tuning_of_the_bare_neck()
    {
        var near = Check(
            "In every major key, on guitar, with a capo at 5, there is at least 1 full fret."
        ).Elsewhere!.NearestFailure!;
        var tuning = $"{near.Instrument.Name}, with a capo at 5";
        Assert.Contains($"on {tuning}, ", near.Why, StringComparison.Ordinal);
        var read = ClaimParser.Parse($"In the key of C major, on {tuning}, there are no full frets.").Value!;
        Assert.Equal(near.Instrument, ((PlaceScope.On)read.Places).Instrument);
    }

    // On a bass Cmaj7 lies at frets 4 to 8, 144 mm from finger to finger, and at 16 to 20, half as far.
    [Theory]
    [InlineData("on frets 1 to 20, no seventh shape stretches at most 90 mm")]
    [InlineData("on frets 14 to 20, no seventh shape stretches at most 90 mm")]
    [InlineData("on frets 1 to 20, the seventh shape on degree 1 stretches at least 100 mm")]
    public void The_place_where_a_shape_does_not_do_as_is_said_is_found_and_shown(string claim)
    {
        var found = Check($"In the key of C major, on bass, {claim}.");
        Assert.Equal(Verdict.Fails, found.Verdict);
        Assert.Contains("(Cmaj7) stretches 71.8 mm", found.Failures[0].Why, StringComparison.Ordinal);
        Assert.Equal([20, 19, 17, 16], found.Failures[0].Spots.Select(spot => spot.Fret));
    }

    [Fact]
    public void Without_a_thread_nothing_is_checked()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CheckOptions.Default with { Threads = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => CheckOptions.Default with { MostFailures = -1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => CheckOptions.Default with { MostFailures = 33 });
    }

    [Fact]
    public void Spots_that_show_a_failure_lie_on_its_strings()
    {
        var failure = Check("In every key, on banjo, every third shape of strings 5-4 spans exactly 1 fret.").Failures[
            0
        ];
        Assert.NotEmpty(failure.Spots);
        Assert.All(failure.Spots, spot => Assert.True(failure.Instrument.Has(spot) && spot.String is 5 or 4));
    }

    [Fact]
    public void The_cost_is_known_before_and_refused_above_the_budget()
    {
        var sentence = new ClaimSentence(
            new KeyScope.EveryMode(),
            new PlaceScope.Tunings(8),
            null,
            ThereAre(1, FullFrets)
        );
        Assert.Equal(19_487_171L * 84, ClaimCost.Of(sentence).Cases);
        var refusal = Assert.Throws<ClaimTooCostlyException>(() =>
            ClaimChecker.Check(sentence, CheckOptions.Default with { Budget = 1_000_000 }, null, Token)
        );
        Assert.Contains("1,636,922,364 cases", refusal.Message, StringComparison.Ordinal);
        Assert.Null(ClaimCost.Of(sentence).WhyNot(CheckOptions.Default.Budget));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void A_check_stops_when_it_is_cancelled(int threads)
    {
        using var source = new CancellationTokenSource();
        var sentence = new ClaimSentence(EveryKey, new PlaceScope.Tunings(7), null, ThereAre(1, FullFrets));
        Assert.ThrowsAny<OperationCanceledException>(() =>
            ClaimChecker.Check(
                sentence,
                CheckOptions.Default with
                {
                    Threads = threads,
                },
                new Reporter(_ => source.Cancel()),
                source.Token
            )
        );
    }

    [Fact]
    public void Progress_rises_to_the_end()
    {
        var told = new List<double>();
        ClaimChecker.Check(
            new ClaimSentence(EveryKey, new PlaceScope.Tunings(6), null, ThereAre(1, FullFrets)),
            CheckOptions.Default with
            {
                Threads = 1,
                LooksElsewhere = false,
            },
            new Reporter(told.Add),
            Token
        );
        Assert.Equal(told.Order(), told);
        Assert.Equal(1, told[^1]);
    }

    /// <summary>What a half-turn carries onto itself it carries landmark by landmark.</summary>
    [Theory]
    [InlineData(FretKind.Full)]
    [InlineData(FretKind.Empty)]
    [InlineData(FretKind.HalfTurnCentre)]
    public void A_pattern_that_turns_has_frets_that_turn(FretKind kind)
    {
        var carries = new Claim.CarriesFrets(The(new FretNoun(kind)), null);
        var found = ClaimChecker.Check(
            new ClaimSentence(
                new KeyScope.EveryMode(),
                new PlaceScope.Tunings(5),
                null,
                new Claim.If(OwnHalfTurn, carries)
            ),
            CheckOptions.Default with
            {
                LooksElsewhere = false,
            },
            null,
            Token
        );
        Assert.Equal(Verdict.Holds, found.Verdict);
        Assert.Equal(14_641 * 84, found.Cases);
    }

    /// <summary>The theorem of the half-turn, by exhaustion: a centre just where the steps read the same both ways modulo 12 and the key does.</summary>
    [Fact]
    public void A_tuning_of_rising_steps_turns_just_when_palindromic_and_the_key_is_its_own_inversion()
    {
        Claim[] both =
        [
            new Claim.If(OwnHalfTurn, new Claim.IsPalindromic()),
            new Claim.If(new Claim.IsPalindromic(), OwnHalfTurn),
        ];
        foreach (var claim in both)
        {
            var sentence = new ClaimSentence(new KeyScope.EveryMode(), new PlaceScope.Tunings(6), null, claim);
            Assert.Equal(Verdict.Holds, ClaimChecker.Check(sentence, CheckOptions.Default, null, Token).Verdict);
        }
    }

    [Fact]
    public void Sentences_without_fret_numbers_come_to_the_same_in_keys_of_one_kind() =>
        Gen.Select(ClaimGen.In(Gen.Const(EveryMajorKey), Gen.OneOf(ClaimGen.On, ClaimGen.Listed)), TheoryGen.Key)
            .Where((sentence, _) => IsUnchangedByTransposition(sentence))
            .Sample(
                (sentence, key) =>
                {
                    var kind = sentence with { Keys = new KeyScope.EveryOf(key.Kind) };
                    var one = sentence with { Keys = new KeyScope.One(key) };
                    var (all, single) = (Counts(kind), Counts(one));
                    Assert.Equal(all, (single.Verdict, 12 * single.Failing, 12 * single.Untested));
                },
                iter: 300
            );

    private static bool IsUnchangedByTransposition(ClaimSentence sentence) =>
        sentence.Window is null && !SlowFit.Within(sentence.Claim).Any(part => part is FretSet.Numbers);

    private static (Verdict Verdict, long Failing, long Untested) Counts(ClaimSentence sentence)
    {
        var found = ClaimChecker.Check(
            sentence,
            CheckOptions.Default with
            {
                LooksElsewhere = false,
                UsesTransposition = false,
                MostFailures = 0,
            },
            null,
            Token
        );
        return (found.Verdict, found.Failing, found.Untested);
    }

    private static ClaimVerdict Check(string sentence) =>
        ClaimChecker.Check(ClaimParser.Parse(sentence).Value!, null, null, Token);

    private sealed class Reporter(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
