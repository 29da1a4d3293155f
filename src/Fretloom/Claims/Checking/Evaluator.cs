namespace Fretloom.Claims.Checking;

/// <summary>Whether a claim is true of one case, straight from the words. Asked only where the claim applies.</summary>
internal static class Evaluator
{
    public static Outcome Of(Case one, Claim claim) =>
        claim switch
        {
            Claim.If condition => Of(one, condition.Condition) == Outcome.Holds
                ? Of(one, condition.Then)
                : Outcome.Untested,
            Claim.And and => Outcomes.And(and.Parts.Select(part => Of(one, part))),
            Claim.Or or => Outcomes.Or(or.Parts.Select(part => Of(one, part))),
            Claim.ThereAre there => Outcomes.Of(there.Count.Admits(one.FretsOf(there.Noun).Count)),
            Claim.AsMany many => Outcomes.Of(one.FretsOf(many.One).Count == one.FretsOf(many.Other).Count),
            Claim.IsPalindromic => Outcomes.Of(one.Place.Strings.IsPalindromic),
            Claim.HasEqualSteps => Outcomes.Of(one.Place.Strings.HasEqualSteps),
            Claim.KeyIs key => Outcomes.Of(one.Key.Kind == key.Kind != key.IsNot),
            Claim.PatternsHaveSameForm same => Outcomes.Of(PatternClaims.HaveSameForm(one, same)),
            Claim.PatternIs pattern => Outcomes.Of(PatternClaims.Is(one, pattern)),
            Claim.CarriesDegree carries => Outcomes.Of(TurnClaims.CarriesDegree(one, carries)),
            Claim.CarriesFrets carries => Outcomes.Of(TurnClaims.CarriesFrets(one, carries)),
            Claim.CarriesShapes carries => TurnClaims.CarriesShapes(one, carries),
            Claim.DegreeStands stands => DegreeStands(one, stands),
            Claim.OfFrets of => OfFrets(one, of),
            Claim.NeighboursLieApart apart => DistanceClaims.NeighboursLieApart(one, apart),
            Claim.GapIs gap => DistanceClaims.GapIs(one, gap),
            Claim.OfShapes of => ShapeClaims.Of(one, of),
            _ => throw new ArgumentOutOfRangeException(nameof(claim)),
        };

    private static Outcome DegreeStands(Case one, Claim.DegreeStands stands)
    {
        var there = one.FretsOfDegree(stands.Degree, stands.String);
        return Outcomes.Of(stands.Quantity, one.FretsOf(stands.Noun), fret => there.Contains(fret));
    }

    private static Outcome OfFrets(Case one, Claim.OfFrets of)
    {
        var frets = FretSets.Of(one, of.Frets);
        if (of.Quantity is { } quantity)
        {
            return Outcomes.Of(quantity, frets, fret => FretSets.Lie(one, [fret], of.Relation));
        }

        return frets.Count == 0 && FretSets.IsOfEach(of.Relation)
            ? Outcome.Untested
            : Outcomes.Of(FretSets.Lie(one, frets, of.Relation));
    }
}
