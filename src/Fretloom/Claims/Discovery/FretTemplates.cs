namespace Fretloom.Claims.Discovery;

/// <summary>Statements about full frets, empty frets and half-turn centres.</summary>
internal static class FretTemplates
{
    private const int MostFrets = 8;
    private const int HalfOctave = 6;

    private static readonly FretKind[] Kinds = [FretKind.Full, FretKind.Empty, FretKind.HalfTurnCentre];
    private static readonly Quantity[] Quantities = [new Quantity.Every(), new Quantity.Some(), new Quantity.No()];
    private static readonly int[] Distances =
    [
        .. Enumerable.Range(1, HalfOctave),
        .. Enumerable.Range(1, HalfOctave - 1).Select(down => -down),
    ];

    public static readonly Template[] All =
    [
        new("how many frets", 3.5, HowMany),
        new("as many as", 2, _ => Pairs().Select(pair => new Claim.AsMany(Noun(pair.One), Noun(pair.Other)))),
        new("frets on frets", 3, _ => OfPairs(other => new FretRelation.LieOn(other))),
        new("frets next to frets", 2.5, _ => OfPairs(other => new FretRelation.LieNextTo(other))),
        new("distances of frets", 2.5, _ => Apart()),
        new("frets of fewer strings", 2.5, OfFewerStrings),
        new("degrees on frets", 3.5, DegreesOnFrets, FamilyOfDegrees),
        new("frets turned", 3, _ => Kinds[..2].Select(kind => new Claim.CarriesFrets(The(Noun(kind)), null)))
        {
            IsOfHalfTurn = true,
        },
    ];

    public static FretNoun Noun(FretKind kind, OtherStrings? of = null) => new(kind, of);

    public static FretSet The(FretNoun noun) => new FretSet.Named(noun);

    private static IEnumerable<Claim> HowMany(ChosenStrings strings) =>
        from kind in Kinds
        from of in kind == FretKind.HalfTurnCentre ? [null] : strings.AllAndRuns(2)
        from number in Enumerable.Range(0, MostFrets)
        select new Claim.ThereAre(new Count(Comparison.Exactly, number), Noun(kind, of));

    private static IEnumerable<(FretKind One, FretKind Other)> Pairs() =>
        from one in Kinds
        from other in Kinds
        where one < other
        select (one, other);

    private static IEnumerable<Claim> OfPairs(Func<FretSet, FretRelation> relation) =>
        from quantity in Quantities
        from one in Kinds
        from other in Kinds
        where one != other
        select new Claim.OfFrets(The(Noun(one)), quantity, relation(The(Noun(other))));

    private static IEnumerable<Claim> Apart() =>
        from quantity in Quantities
        from one in Kinds[..2]
        from other in Kinds[..2]
        from distance in Distances
        select new Claim.OfFrets(The(Noun(one)), quantity, new FretRelation.LieApart(distance, The(Noun(other))));

    private static IEnumerable<Claim> OfFewerStrings(ChosenStrings strings) =>
        from kind in Kinds[..2]
        from of in strings.AllAndRuns(2)
        where of is not null
        select new Claim.OfFrets(The(Noun(kind)), null, new FretRelation.Are(The(Noun(kind, of))));

    private static IEnumerable<Claim> DegreesOnFrets(ChosenStrings strings) =>
        from kind in new[] { FretKind.Full, FretKind.HalfTurnCentre }
        from number in strings.Numbers
        from degree in Enumerable.Range(1, 7)
        select new Claim.DegreeStands(degree, number, new Quantity.Some(), Noun(kind));

    // The degrees of a string at the full frets are one line; so are those of all strings at the half-turn centres.
    private static Claim.DegreeStands FamilyOfDegrees(Claim claim)
    {
        var stands = (Claim.DegreeStands)claim;
        var number = stands.Noun.Kind == FretKind.HalfTurnCentre ? 1 : stands.String;
        return new Claim.DegreeStands(1, number, stands.Quantity, stands.Noun);
    }
}
