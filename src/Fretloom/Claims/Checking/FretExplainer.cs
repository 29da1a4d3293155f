namespace Fretloom.Claims.Checking;

/// <summary>Tells why a claim about frets is false.</summary>
internal static class FretExplainer
{
    public static Explanation Of(Case one, Claim.OfFrets claim)
    {
        var frets = FretSets.Of(one, claim.Frets);
        var name = ClaimWords.Of(one, claim.Frets);
        switch (claim.Quantity)
        {
            case null when !FretSets.IsOfEach(claim.Relation):
                return claim.Relation is FretRelation.AreCarriedToThemselves
                    ? TurnExplainer.OfFrets(one, claim.Frets, null)
                    : Whole(one, claim);
            case null or Quantity.Every:
                return One(one, claim, frets.First(fret => !Lies(fret)), isSo: false);
            case Quantity.No:
                return One(one, claim, frets.First(Lies), isSo: true);
            case Quantity.Some:
                return Explanation.OfFrets($"of {name}, none {Relation(one, claim.Relation, isSo: true)}", frets);
            default:
                var found = frets.Where(Lies).ToValueList();
                return Explanation.OfFrets(
                    $"of {name}, {found.Count} {Relation(one, claim.Relation, isSo: true)}",
                    found
                );
        }

        bool Lies(int fret) => FretSets.Lie(one, [fret], claim.Relation);
    }

    public static Explanation OfDegree(Case one, Claim.DegreeStands claim)
    {
        var there = one.FretsOfDegree(claim.Degree, claim.String);
        var frets = one.FretsOf(claim.Noun);
        return new Explanation(
            $"degree {claim.Degree} ({one.Key.Notes[claim.Degree - 1]}) stands on string {claim.String} at fret {ClaimWords.Frets(there)}; "
                + ClaimWords.Are(claim.Noun, frets),
            one.Neck.Set(there.Concat(frets)),
            there
                .Take(1)
                .Select(fret => new Neck.Spot(claim.String, fret / 2 + StartOf(one, claim.String)))
                .ToValueList()
        );
    }

    private static int StartOf(Case one, int number) => one.Place.Instrument?.String(number).StartsAtFret ?? 0;

    private static Explanation One(Case one, Claim.OfFrets claim, int fret, bool isSo)
    {
        var noun = claim.Frets is FretSet.Named named
            ? $"the {ClaimWords.Of(named.Noun.Kind)} {ClaimWords.Fret(fret)} of {ClaimWords.Of(one.Place, named.Noun.Of)}"
            : $"fret {ClaimWords.Fret(fret)} of {ClaimWords.Of(one.Place)}";
        return Explanation.OfFrets($"{noun} {Relation(one, claim.Relation, isSo)}", fret);
    }

    private static Explanation Whole(Case one, Claim.OfFrets claim)
    {
        var frets = FretSets.Of(one, claim.Frets);
        var others = FretSets.Of(one, Other(claim.Relation)!);
        var extra = claim.Relation is FretRelation.Are ? frets.Except(others) : [];
        var missing = others.Except(frets);
        return Explanation.OfFrets(
            $"{ClaimWords.Of(one, claim.Frets)} {(claim.Relation is FretRelation.Are ? "are not" : "do not include")} {ClaimWords.Of(one, Other(claim.Relation)!)}",
            one.Neck.Set(extra.Concat(missing))
        );
    }

    private static string Relation(Case one, FretRelation relation, bool isSo)
    {
        var others = Other(relation) is { } set ? ClaimWords.Of(one, set) : "";
        return relation switch
        {
            FretRelation.LieOn => $"{(isSo ? "lies on one of" : "is none of")} {others}",
            FretRelation.Avoid => $"{(isSo ? "is none of" : "is one of")} {others}",
            FretRelation.LieNextTo => $"{Does("lies", "lie")} next to any of {others}",
            FretRelation.LieApart apart =>
                $"{Does("lies", "lie")} {ClaimWords.Counted(Math.Abs(apart.Distance), "fret")} {(apart.Distance < 0 ? "below" : "above")} any of {others}",
            FretRelation.Include => $"{Does("includes", "include")} {others}",
            FretRelation.Are => $"{(isSo ? "is" : "is not")} {others}",
            FretRelation.AreCarriedToThemselves => $"{(isSo ? "is" : "is not")} carried to itself by the half-turn",
            _ => throw new ArgumentOutOfRangeException(nameof(relation)),
        };

        string Does(string verb, string bare) => isSo ? verb : $"does not {bare}";
    }

    private static FretSet? Other(FretRelation relation) =>
        relation switch
        {
            FretRelation.LieOn on => on.Frets,
            FretRelation.Include include => include.Frets,
            FretRelation.Avoid avoid => avoid.Frets,
            FretRelation.LieNextTo next => next.Frets,
            FretRelation.LieApart apart => apart.Frets,
            FretRelation.Are are => are.Frets,
            _ => null,
        };
}
