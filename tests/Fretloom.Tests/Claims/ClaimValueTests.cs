using Fretloom.Claims;
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
