using Fretloom.Neck;

namespace Fretloom.Claims.Checking;

/// <summary>Claims about shapes.</summary>
internal static class ShapeClaims
{
    public static Outcome Of(Case one, Claim.OfShapes claim) =>
        Outcomes.Of(
            PlacedShapes.QuantityOf(claim.Shapes),
            PlacedShapes.Of(one, claim.Shapes),
            shape => Is(one, claim, shape)
        );

    /// <summary>Whether what is said is true of one shape.</summary>
    public static bool Is(Case one, Claim.OfShapes claim, PlacedShape shape) =>
        claim.Says switch
        {
            ShapePredicate.Spans spans => spans.Frets.Admits(shape.Span),
            ShapePredicate.Stretches stretches => IsAtItsPlaces(
                one,
                claim,
                shape,
                at => ShapesInHand.Stretches(at, stretches.Millimetres)
            ),
            ShapePredicate.IsOwnHalfTurn => shape.IsHalfTurnOf(shape),
            ShapePredicate.IsOwnMirror => shape.IsMirrorOf(shape),
            ShapePredicate.IsHalfTurnOf of => IsToOthers(one, of.Shapes, shape.IsHalfTurnOf),
            ShapePredicate.IsMirrorOf of => IsToOthers(one, of.Shapes, shape.IsMirrorOf),
            ShapePredicate.HasSameFormAs same => IsToOthers(one, same.Shapes, shape.HasFormOf),
            ShapePredicate.IsThatOfDegree that => shape.Lies(
                PlacedShapes.OnDegree(one, shape, claim.Shapes, that.Degree),
                that.Frets
            ),
            ShapePredicate.BeginsOn on => HasEndOn(one, shape, ShapeEnd.First, on.Frets),
            ShapePredicate.EndsOn on => HasEndOn(one, shape, ShapeEnd.Last, on.Frets),
            ShapePredicate.HasRootOn on => HasEndOn(one, shape, ShapeEnd.Root, on.Frets),
            ShapePredicate.CanBePlayed played => IsAtItsPlaces(
                one,
                claim,
                shape,
                at => one.Hands.CanBePlayed(at, played.Hand)
            ),
            ShapePredicate.IsFingeredAs of => IsToOthers(
                one,
                of.Shapes,
                other =>
                    one.Hands.FingersAtLowest(Everywhere(one, other, of.Shapes)) is { } theirs
                    && IsAtItsPlaces(one, claim, shape, at => one.Hands.Fingers(at) == theirs)
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(claim)),
        };

    /// <summary>Where a shape lies on the instrument whose strings it is said of.</summary>
    public static IEnumerable<HeldSpots> Everywhere(Case one, PlacedShape shape, ShapeSet of) =>
        ShapesInHand.Everywhere(shape, of.Of?.Instrument ?? one.Place.ToInstrument());

    /// <summary>Whether something is so wherever a shape lies. What is said of <c>no</c> shape must be so nowhere: there one place is enough.</summary>
    private static bool IsAtItsPlaces(Case one, Claim.OfShapes claim, PlacedShape shape, Func<HeldSpots, bool> isSo)
    {
        var places = Everywhere(one, shape, claim.Shapes);
        return PlacedShapes.QuantityOf(claim.Shapes) is Quantity.No ? places.Any(isSo) : places.All(isSo);
    }

    private static bool IsToOthers(Case one, ShapeSet others, Func<PlacedShape, bool> isSo) =>
        Outcomes.IsTrueOf(PlacedShapes.QuantityOf(others), PlacedShapes.Of(one, others), isSo);

    /// <summary>Whether it lies with an end on the frets, somewhere on the neck that is looked at.</summary>
    private static bool HasEndOn(Case one, PlacedShape shape, ShapeEnd end, FretSet frets)
    {
        var there = FretSets.Of(one, frets);
        return shape.Ends(end).Any(fret => there.Contains(fret));
    }
}
