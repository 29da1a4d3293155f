using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;
using static Fretloom.Tests.Claims.Say;

namespace Fretloom.Tests.Claims;

public class ClaimCheckerTests
{
    private static readonly CheckOptions CountsOnly = new() { LooksElsewhere = false };

    /// <summary>Sentences with their counts as worked out by a separate program.</summary>
    public static TheoryData<string, ClaimSentence, Verdict, int, int, int> Judged =>
        new()
        {
            {
                "every empty fret lies next to a full fret",
                new(EveryKey, Listed, null, EveryFret(EmptyFrets, new FretRelation.LieNextTo(The(FullFrets)))),
                Verdict.Holds,
                960,
                0,
                312
            },
            {
                "exactly 2 half-turn centres",
                new(EveryMajorKey, ListedPalindromic, null, ThereAre(2, Centres)),
                Verdict.Holds,
                120,
                0,
                0
            },
            {
                "a window, with an end",
                new(EveryMajorKey, On("guitar", "4-1"), new FretRange(0, 12), ThereAre(3, FullFrets)),
                Verdict.Fails,
                12,
                3,
                0
            },
            {
                "re-entrant strings turn without being palindromic",
                new(EveryMajorKey, Listed, null, new Claim.If(OwnHalfTurn, new Claim.IsPalindromic())),
                Verdict.Fails,
                240,
                12,
                108
            },
            {
                "every four-string tuning",
                new(
                    EveryMajorKey,
                    new PlaceScope.Tunings(4),
                    null,
                    new Claim.If(OwnHalfTurn, new Claim.IsPalindromic())
                ),
                Verdict.Holds,
                15972,
                0,
                14520
            },
            {
                "spans",
                new(
                    EveryKey,
                    new PlaceScope.Tunings(4, false, 4, 5),
                    null,
                    new Claim.OfShapes(EverySeventh, new ShapePredicate.Spans(new Count(Comparison.AtMost, 5)))
                ),
                Verdict.Fails,
                384,
                84,
                0
            },
            {
                "carried shapes",
                new(EveryMajorKey, On("guitar", "4-1"), null, new Claim.CarriesShapes(Seventh(5), Seventh(7))),
                Verdict.Holds,
                12,
                0,
                0
            },
            {
                "a shape that is not carried to itself",
                new(EveryMajorKey, On("guitar", "4-1"), null, new Claim.CarriesShapes(Seventh(1), null)),
                Verdict.Fails,
                12,
                12,
                0
            },
            {
                "forms",
                new(
                    EveryMajorKey,
                    new PlaceScope.Listed(true, true),
                    null,
                    new Claim.OfShapes(
                        Shape("dominant seventh"),
                        new ShapePredicate.IsHalfTurnOf(Shape("half-diminished seventh"))
                    )
                ),
                Verdict.Holds,
                96,
                0,
                0
            },
            {
                "half-turned full frets",
                new(EveryMajorKey, Listed, null, new Claim.CarriesFrets(The(FullFrets), null)),
                Verdict.Fails,
                240,
                108,
                0
            },
            {
                "empty frets on centres",
                new(
                    EveryMajorKey,
                    ListedPalindromic,
                    null,
                    EveryFret(EmptyFrets, new FretRelation.LieOn(The(Centres)))
                ),
                Verdict.Fails,
                120,
                60,
                12
            },
            {
                "strings moved along",
                new(
                    EveryKey,
                    On("guitar"),
                    null,
                    new Claim.PatternIs(Of("6-4"), -5, PatternMotion.None, Of("5-3"), false)
                ),
                Verdict.Holds,
                48,
                0,
                0
            },
            {
                "the banjo's short string from its own nut",
                new(
                    EveryMajorKey,
                    On("banjo"),
                    null,
                    new Claim.OfFrets(
                        The(FullFrets),
                        null,
                        new FretRelation.Are(The(new FretNoun(FretKind.Full, Of("4-1"))))
                    )
                ),
                Verdict.Holds,
                12,
                0,
                0
            },
        };

    [Theory]
    [MemberData(nameof(Judged))]
    public void Every_judged_case_is_counted_alike(
        string name,
        ClaimSentence sentence,
        Verdict verdict,
        int cases,
        int failing,
        int untested
    )
    {
        Assert.NotNull(name);
        var found = ClaimChecker.Check(sentence, CountsOnly, null, TestContext.Current.CancellationToken);
        Assert.Equal(
            (verdict, (long)cases, (long)failing, (long)untested),
            (found.Verdict, found.Cases, found.Failing, found.Untested)
        );
    }

    [Fact]
    public void No_voice_of_a_chord_wider_than_an_octave_is_dropped()
    {
        Assert.Equal((12, 0), Counted(Arrangement.Close));
        Assert.Equal((0, 12), Counted(Arrangement.DropTwo));
        Assert.Equal((0, 12), Counted(Arrangement.DropThree));

        static (long Cases, long NotApplicable) Counted(Arrangement arrangement)
        {
            var ninth = new ShapeSet.ByNumeral(RomanNumeral.Parse("V9"), new ShapeVoicing(arrangement));
            var spans = new ShapePredicate.Spans(new Count(Comparison.AtMost, 12));
            var found = ClaimChecker.Check(
                new(EveryMajorKey, On("guitar", "5-1"), null, new Claim.OfShapes(ninth, spans)),
                CountsOnly,
                null,
                TestContext.Current.CancellationToken
            );
            return (found.Cases, found.NotApplicable);
        }
    }
}
