namespace Fretloom.Claims.Checking;

/// <summary>Goes through everything a claim names.</summary>
internal static class Parts
{
    /// <summary>The claim, and every claim, relation, predicate, set of frets or shapes, and noun within it; the outer before the inner.</summary>
    public static IEnumerable<object> Of(object? part) => part is null ? [] : Inner(part).SelectMany(Of).Prepend(part);

    private static IEnumerable<object?> Inner(object part) =>
        part switch
        {
            Claim claim => InnerOf(claim),
            FretSet set => InnerOf(set),
            ShapePredicate says => InnerOf(says),
            FretRelation.LieOn on => [on.Frets],
            FretRelation.Include include => [include.Frets],
            FretRelation.Avoid avoid => [avoid.Frets],
            FretRelation.LieNextTo next => [next.Frets],
            FretRelation.LieApart apart => [apart.Frets],
            FretRelation.LieHalfway halfway => [halfway.One, halfway.Other],
            FretRelation.Are are => [are.Frets],
            FretNoun noun => [noun.Of],
            ShapeSet shapes => [shapes.Of],
            _ => [],
        };

    private static IEnumerable<object?> InnerOf(Claim claim) =>
        claim switch
        {
            Claim.If condition => [condition.Condition, condition.Then],
            Claim.And and => and.Parts,
            Claim.Or or => or.Parts,
            Claim.ThereAre there => [there.Noun],
            Claim.AsMany many => [many.One, many.Other],
            Claim.PatternsHaveSameForm same => [same.One, same.Other],
            Claim.PatternIs pattern => [pattern.One, pattern.Other],
            Claim.CarriesFrets carries => [carries.From, carries.To],
            Claim.CarriesShapes carries => [carries.From, carries.To],
            Claim.DegreeStands stands => [stands.Noun],
            Claim.OfFrets of => [of.Frets, of.Relation],
            Claim.NeighboursLieApart apart => [apart.Noun],
            Claim.GapIs gap => [gap.One, gap.Other],
            Claim.OfShapes of => [of.Shapes, of.Says],
            _ => [],
        };

    private static IEnumerable<object?> InnerOf(FretSet set) =>
        set switch
        {
            FretSet.Named named => [named.Noun],
            FretSet.OfShapes of => [of.Shapes],
            FretSet.Moved moved => [moved.Set],
            _ => [],
        };

    private static IEnumerable<object?> InnerOf(ShapePredicate says) =>
        says switch
        {
            ShapePredicate.IsHalfTurnOf of => [of.Shapes],
            ShapePredicate.IsMirrorOf of => [of.Shapes],
            ShapePredicate.HasSameFormAs same => [same.Shapes],
            ShapePredicate.BeginsOn on => [on.Frets],
            ShapePredicate.EndsOn on => [on.Frets],
            ShapePredicate.HasRootOn on => [on.Frets],
            ShapePredicate.IsFingeredAs of => [of.Shapes],
            _ => [],
        };
}
