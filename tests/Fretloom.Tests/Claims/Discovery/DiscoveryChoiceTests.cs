using Fretloom.Claims;
using Fretloom.Claims.Discovery;
using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Tests.Claims.Discovery;

/// <summary>What is told first, what is left out, and what stands in one line.</summary>
public class DiscoveryChoiceTests
{
    private static readonly Lazy<DiscoveryResult> Four = new(() =>
        Discover("on a guitar, on strings 4-1, in every major key")
    );
    private static readonly Lazy<DiscoveryResult> Six = new(() => Discover("on a guitar, in every major key"));
    private static readonly Lazy<DiscoveryResult> Ukulele = new(() => Discover("on a ukulele, in every major key"));
    private static readonly Lazy<DiscoveryResult> Mandolin = new(() => Discover("on a mandolin, in every key"));

    private static readonly CheckOptions CountsOnly = new() { LooksElsewhere = false, MostFailures = 0 };

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    private static IEnumerable<DiscoveryResult> All => [Four.Value, Six.Value, Ukulele.Value, Mandolin.Value];

    // At most 9 frets is no news beside at most 8 under the same condition.
    [Fact]
    public void No_law_of_a_span_follows_from_another_under_the_same_condition()
    {
        foreach (var laws in All.Select(found => found.Laws))
        {
            var spans = laws.Select(law =>
                    (law.Sentence.Places, law.Sentence.Keys, Law: law.Sentence.ToString().Split("spans at most "))
                )
                .Where(law => law.Law.Length == 2)
                .GroupBy(law => (law.Places, law.Keys, law.Law[0]));
            Assert.All(spans, same => Assert.Single(same));
        }

        Assert.Contains(Four.Value.Laws, Ends("every sixth shape spans at most 8 frets."));
        Assert.DoesNotContain(Four.Value.Laws, Ends("every sixth shape spans at most 9 frets."));
    }

    [Fact]
    public void What_is_true_of_some_frets_is_not_told_where_it_is_true_of_every_one()
    {
        Assert.Contains(Four.Value.Landmarks, Ends("every empty fret lies on a half-turn centre."));
        Assert.DoesNotContain(Four.Value.Landmarks, Ends("some empty fret lies on a half-turn centre."));
    }

    [Fact]
    public void Laws_that_say_nothing_of_the_keys_asked_for_come_last()
    {
        var says = Four.Value.Laws.Select(SaysOfMajor).ToList();
        Assert.Contains(true, says);
        Assert.Contains(false, says);
        Assert.Equal(says.OrderDescending(), says);

        static bool SaysOfMajor(DiscoveredClaim law) =>
            law.Sentence.Keys.Keys.Any(key => key.Kind == ScaleKind.Major)
            && !law.Sentence.ToString().Contains("the key is not major", StringComparison.Ordinal);
    }

    // Chords of one kind look alike on the same strings whatever the tuning: theory of chords, not of a neck.
    [Fact]
    public void That_chords_of_a_kind_look_alike_on_the_same_strings_is_not_told()
    {
        var tried = Search.Of(Four.Value.Scope, DiscoveryOptions.Default.Seed, null, Token).Candidates;
        Assert.Contains(tried, one => one is { IsTrueHere: true, IsTrivial: false } && AreAlike(one.Statement.Here));
        Assert.All(
            All.SelectMany(found => found.Landmarks.Concat(found.Laws))
                .SelectMany(line => line.AlsoSays.Prepend(line.Sentence)),
            said => Assert.False(AreAlike(said.Claim), said.ToString())
        );

        static bool AreAlike(Claim claim) =>
            SlowFit
                .Within(claim)
                .Any(part =>
                    part is Claim.OfShapes { Says: ShapePredicate.HasSameFormAs { Shapes: var other }, Shapes: var one }
                    && one.Of == other.Of
                );
    }

    [Fact]
    public void Several_in_one_line_are_true_together_in_the_kinds_in_which_each_is()
    {
        var search = Search.Of(Mandolin.Value.Scope, DiscoveryOptions.Default.Seed, null, Token);
        var (all, some) = (
            search.Candidates.First(one => one.IsTrueHere),
            search.Candidates.First(one => one is { IsTrueHere: false, KindsHere.Count: > 0 })
        );
        Assert.Equal(some.KindsHere, Candidate.Joined([all, some], search.Ground).KindsHere);
        Assert.Equal(some.KindsHere, Candidate.Joined([some, all], search.Ground).KindsHere);
    }

    [Fact]
    public void A_family_stands_in_one_line()
    {
        var law = Assert.Single(
            Six.Value.Laws,
            law => law.Summary == "every triad shape of strings 6-4, 5-3, 4-2 and 3-1 spans at most 7 frets"
        );
        Assert.Equal(4, Assert.IsType<Claim.And>(law.Sentence.Claim).Parts.Count);
        Assert.Contains(
            Six.Value.Landmarks,
            line => line.Summary == "the key pattern of strings 6-3, 4-1, 6-4 and 5-3 is its own half-turn"
        );
    }

    [Fact]
    public void The_half_turn_of_six_strings_is_a_law_though_a_guitar_has_none()
    {
        var law = Assert.Single(
            Six.Value.Laws,
            Is(
                "In every key, on every 6 string tuning that is palindromic, if the key is not harmonic minor, then the key pattern is its own half-turn."
            )
        );
        Assert.Equal(
            "In every key, on every 6 string tuning, if the key pattern is its own half-turn, then the string set is palindromic and the key is not harmonic minor.",
            law.Converse?.ToString()
        );
        Assert.Empty(law.Pictures);
        Assert.Equal("guitar", law.NearestFailure?.Place);
    }

    [Theory]
    [InlineData("on a re-entrant ukulele, in every major key", "re-entrant")]
    [InlineData("on a banjo, in every major key", "re-entrant")]
    [InlineData("on guitar tuned E1 E2 A2 D3 G3 B3, in every major key", "farther apart")]
    public void Where_there_is_no_law_it_is_said_why(string text, string why)
    {
        var found = Discover(text);
        Assert.Empty(found.Laws);
        Assert.Contains(why, found.WhyNoLaws, StringComparison.Ordinal);
    }

    // How wide its chords are is the first thing that a hand asks of a ukulele.
    [Fact]
    public void That_every_sixth_chord_of_a_ukulele_is_narrow_is_among_the_first_lines() =>
        Assert.Contains(Ukulele.Value.Landmarks.Take(5), Ends("every sixth shape spans at most 2 frets."));

    // Fifths: counted by hand, four strings of a mandolin take four of the seven fifths in a row that a major key is, so four frets are full.
    [Fact]
    public void What_is_true_in_some_of_the_kinds_asked_for_is_told_with_its_condition() =>
        Assert.Contains(
            Mandolin.Value.Landmarks,
            Is(
                "In every key, on mandolin, if the key is not harmonic minor and the key is not melodic minor, then there are exactly 4 full frets."
            )
        );

    [Fact]
    public void The_plain_landmarks_of_a_guitar_are_told()
    {
        Assert.Contains(Four.Value.Landmarks, Ends("there are exactly 3 full frets."));
        Assert.Contains(Six.Value.Landmarks, Ends("there are exactly 3 full frets."));
        Assert.Contains(Six.Value.Landmarks, Ends("there is exactly 1 empty fret."));
    }

    [Fact]
    public void The_nearest_failure_is_these_strings_retuned_or_a_listed_set_and_is_false_there()
    {
        foreach (var found in All)
        {
            foreach (var line in found.Landmarks.Concat(found.Laws))
            {
                var near = line.NearestFailure;
                Assert.NotNull(near);
                Assert.DoesNotContain("steps", near.Place, StringComparison.Ordinal);
                Assert.Equal(found.Scope.ChosenStrings.Count, near.Case.Strings.Count);
                if (found.Landmarks.Contains(line) && near.Case.Strings == found.Scope.ChosenStrings)
                {
                    var claim = line.Sentence.Claim is Claim.If condition ? condition.Then : line.Sentence.Claim;
                    var there = new ClaimSentence(
                        new KeyScope.EveryOf(near.Kind),
                        new PlaceScope.On(near.Case.Instrument, near.Case.Strings),
                        null,
                        claim
                    );
                    Assert.Equal(
                        Verdict.Fails,
                        ClaimChecker.Check(there, null, null, TestContext.Current.CancellationToken).Verdict
                    );
                }
            }
        }

        Assert.Equal(
            "guitar tuned E2 A2 C#3 G3 B3 E4 strings 4-1",
            Four.Value.Landmarks.Single(EndsIn("the half-turn swaps degree 1 and degree 3.")).NearestFailure?.Place
        );
    }

    // Every other tuning of strings 4-1 that is nearer, in the keys asked for and, two semitones farther, in the three other kinds.
    [Fact]
    public void Nothing_nearer_than_the_nearest_failure_fails()
    {
        var guitar = Catalogue.Default;
        var tunings =
            from moves in Moves(4)
            let far = Enumerable.Range(-5, 9).Min(alike => moves.Sum(move => Math.Abs(move - alike)))
            let tuned = guitar.Tuned(
                guitar.OpenPitches.Select(
                    (pitch, at) => at < 4 ? Pitch.FromMidiNumber(pitch.MidiNumber + moves[at]) : pitch
                )
            )
            where Ascends(tuned)
            select (Far: far, Tuned: tuned);
        var near = tunings.Where(each => each.Far < 4).ToList();
        Assert.Contains(near, each => each.Far == 3);
        var tried = 0;
        foreach (var line in Four.Value.Landmarks)
        {
            var told = line.NearestFailure!;
            var farthest = told.Semitones + (told.Kind == ScaleKind.Major ? 0 : 2);
            foreach (var kind in new KeyScope.EveryKey().Keys.Select(key => key.Kind).Distinct())
            {
                foreach (var (_, tuned) in near.Where(each => each.Far + (kind == ScaleKind.Major ? 0 : 2) < farthest))
                {
                    var there = new PlaceScope.On(tuned, StringSet.Run(4, 1));
                    var sentence = new ClaimSentence(new KeyScope.EveryOf(kind), there, null, line.Sentence.Claim);
                    Assert.NotEqual(Verdict.Fails, ClaimChecker.Check(sentence, CountsOnly, null, Token).Verdict);
                    tried++;
                }
            }
        }

        Assert.InRange(tried, 100, int.MaxValue);

        static IEnumerable<int[]> Moves(int strings) =>
            strings == 0
                ?
                [
                    [],
                ]
                : Moves(strings - 1).SelectMany(few => Enumerable.Range(-2, 5).Select(move => (int[])[.. few, move]));

        static bool Ascends(Instrument tuned) =>
            tuned
                .Strings.Take(4)
                .Zip(tuned.Strings.Skip(1).Take(3))
                .All(each => each.First.Open.MidiNumber > each.Second.Open.MidiNumber);
    }

    // A string is tuned down a fourth at most and up a minor third, never below A0: common practice, no source.
    [Theory]
    [InlineData("on a five-string bass, in every key")]
    [InlineData("on guitar strings 4-1, in every key")]
    [InlineData("on ukulele, in every key")]
    [InlineData("on guitar tuned E1 E2 A2 D3 G3 B3, in every major key")]
    public void Strings_are_tuned_no_farther_than_they_can_be(string text)
    {
        var found = Discover(text);
        foreach (
            var near in found.Landmarks.Concat(found.Laws).Select(line => line.NearestFailure).OfType<NearestFailure>()
        )
        {
            var tuned = near.Case.Instrument;
            if (
                tuned.Strings.Count != found.Scope.Instrument.Strings.Count
                || near.Case.Strings != found.Scope.ChosenStrings
            )
            {
                continue;
            }

            foreach (var (was, now) in found.Scope.Instrument.Strings.Zip(tuned.Strings))
            {
                Assert.InRange(now.Open.MidiNumber - was.Open.MidiNumber, -5, 3);
                Assert.True(now.Open.MidiNumber >= Math.Min(21, was.Open.MidiNumber), near.Place);
            }
        }
    }

    // C major, counted by hand: G7 lies at 5 4 3 1; Em7 at 2 0 0 has open strings, so it is drawn at 14 12 12 10.
    [Fact]
    public void Shapes_are_drawn_at_their_lowest_place_that_is_in_reach()
    {
        var line = Four.Value.Landmarks.First(EndsIn("exactly 2 of the seventh shapes span exactly 4 frets."));
        var shapes = ShowResolver.Resolve(line.Pictures[0], ShowDefaults.Standard).Exhibit!.Shapes!.Value;
        Assert.All(shapes, shape => Assert.InRange(shape.Spots.Min(spot => spot.Fret), 1, 12));
        Assert.Equal(
            [1, 3, 4, 5],
            shapes.Single(shape => shape.Source.Name == "G7").Spots.Select(spot => spot.Fret).Order()
        );
    }

    [Fact]
    public void Progress_never_steps_back_and_ends_at_one()
    {
        var told = new Told();
        ClaimDiscovery.Run(
            DiscoveryParser.Parse("on guitar strings 4-1, in every major key").Value!,
            null,
            told,
            TestContext.Current.CancellationToken
        );
        Assert.Equal(told.Shares.Order(), told.Shares);
        Assert.Equal(1, told.Shares[^1]);
        Assert.InRange(told.Shares.Distinct().Count(), 20, 10_000);
    }

    private static Predicate<DiscoveredClaim> Is(string sentence) => line => line.Sentence.ToString() == sentence;

    private static Func<DiscoveredClaim, bool> EndsIn(string words) =>
        line => line.Sentence.ToString().EndsWith(words, StringComparison.Ordinal);

    private static Predicate<DiscoveredClaim> Ends(string words) => new(EndsIn(words));

    private static DiscoveryResult Discover(string text) => ClaimDiscovery.Run(DiscoveryParser.Parse(text).Value!);

    private sealed class Told : IProgress<double>
    {
        public List<double> Shares { get; } = [];

        public void Report(double value) => Shares.Add(value);
    }
}
