namespace Fretloom.Claims.Discovery;

/// <summary>Statements about the key pattern, and about what the half-turn does to degrees.</summary>
internal static class PatternTemplates
{
    private static readonly PatternMotion[] Motions =
    [
        PatternMotion.HalfTurn,
        PatternMotion.Mirror,
        PatternMotion.Flip,
    ];

    public static readonly Template[] All =
    [
        new("the key pattern turned", 4, Own) { IsOfHalfTurn = true },
        new("key patterns of one form", 3.5, SameForm),
        new("key patterns moved", 3.5, Moved),
        new("key patterns turned", 3, Between),
        new("degrees turned", 4, _ => Degrees()) { IsOfHalfTurn = true },
    ];

    private static IEnumerable<Claim> Own(ChosenStrings strings) =>
        from motion in Motions
        from of in strings.AllAndRuns(3)
        select new Claim.PatternIs(of, 0, motion, null, IsOwn: true);

    private static IEnumerable<Claim> SameForm(ChosenStrings strings) =>
        strings.PairsOfRuns(2).Select(pair => new Claim.PatternsHaveSameForm(pair.One, pair.Other));

    private static IEnumerable<Claim> Moved(ChosenStrings strings) =>
        from pair in strings.PairsOfRuns(2)
        from frets in Enumerable.Range(-6, 12)
        select new Claim.PatternIs(pair.One, frets, PatternMotion.None, pair.Other, IsOwn: false);

    private static IEnumerable<Claim> Between(ChosenStrings strings) =>
        from motion in Motions
        from pair in strings.PairsOfRuns(2)
        select new Claim.PatternIs(pair.One, 0, motion, pair.Other, IsOwn: false);

    private static IEnumerable<Claim> Degrees() =>
        from one in Enumerable.Range(1, 7)
        from other in Enumerable.Range(one, 8 - one)
        select new Claim.CarriesDegree(one, other, Swaps: one != other);
}
