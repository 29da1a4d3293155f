using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Theory;
using static Fretloom.Tests.Claims.Say;

namespace Fretloom.Tests.Claims;

/// <summary>Parts of a claim that would mean nothing cannot be made.</summary>
public class ClaimValueTests
{
    private static readonly FretSet Moved = new FretSet.Moved(The(FullFrets), 2);

    /// <summary>What is wrong, and how it would be made.</summary>
    public static TheoryData<string, Func<object>> Wrong =>
        new()
        {
            { "and, of one claim", () => new Claim.And([OwnHalfTurn]) },
            { "or, of one claim", () => new Claim.Or([OwnHalfTurn]) },
            { "and, of none", () => new Claim.And([]) },
            { "or, of none", () => new Claim.Or([]) },
            { "fewer shapes than none", () => new Quantity.Exactly(-1) },
            { "more shapes than can be counted", () => new Quantity.Exactly(100) },
            { "moved by nothing", () => new FretSet.Moved(The(FullFrets), 0) },
            { "moved twice", () => new FretSet.Moved(Moved, 2) },
            { "strings that are not there", () => new PlaceScope.On(Catalogue.Default, StringSet.Run(7, 4)) },
            { "no strings", () => new PlaceScope.On(Catalogue.Default, default(StringSet)) },
            { "keys of five notes", () => new KeyScope.EveryOf(ScaleKind.MajorPentatonic) },
            { "its own, with nothing done", () => new Claim.PatternIs(null, 0, PatternMotion.None, null, true) },
            { "its own, and another", () => new Claim.PatternIs(null, 0, PatternMotion.Flip, Of("4-2"), true) },
            { "string 0", () => new FretSet.OfDegree(1, 0) },
            { "string 100", () => new Claim.DegreeStands(1, 100, new Quantity.No(), FullFrets) },
            { "no frets above", () => new FretRelation.LieApart(0, The(FullFrets)) },
        };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void What_would_mean_nothing_is_refused(string what, Func<object> make)
    {
        Assert.NotEmpty(what);
        Assert.ThrowsAny<ArgumentException>(make);
    }

    [Fact]
    public void The_least_that_means_something_is_kept()
    {
        Assert.Equal(2, new Claim.And([OwnHalfTurn, OwnHalfTurn]).Parts.Count);
        Assert.Equal(2, new Claim.Or([OwnHalfTurn, OwnHalfTurn]).Parts.Count);
        Assert.Equal((0, 99), (new Quantity.Exactly(0).Number, new Quantity.Exactly(99).Number));
        Assert.Equal(-1, new FretSet.Moved(The(FullFrets), -1).Frets);
        Assert.Equal(-1, new FretRelation.LieApart(-1, Moved).Distance);
    }
}
