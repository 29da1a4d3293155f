namespace Fretloom.Claims.Checking;

/// <summary>Tells why a claim about shapes is false.</summary>
internal static class ShapeExplainer
{
    public static Explanation Of(Case one, Claim.OfShapes claim)
    {
        var (does, doesNot) = Words(claim.Says);
        return OfQuantity(
            one,
            claim.Shapes,
            shape => ShapeClaims.Is(one, claim, shape),
            shape => $"{ClaimWords.Of(shape)} {Where(one, claim)}{Shown(one, shape, claim.Says) ?? doesNot}",
            shape => $"{ClaimWords.Of(shape)} {Where(one, claim)}{does}",
            does,
            shape => [shape]
        );
    }

    /// <summary>Why a quantity of shapes is not so.</summary>
    /// <param name="one">The case.</param>
    /// <param name="set">The shapes.</param>
    /// <param name="isSo">What is said of each.</param>
    /// <param name="whyNot">Tells of one that it is not so.</param>
    /// <param name="why">Tells of one that it is.</param>
    /// <param name="does">What is said, for a list of those of which it is true.</param>
    /// <param name="shown">The shapes to show for one.</param>
    public static Explanation OfQuantity(
        Case one,
        ShapeSet set,
        Func<PlacedShape, bool> isSo,
        Func<PlacedShape, string> whyNot,
        Func<PlacedShape, string> why,
        string does,
        Func<PlacedShape, IEnumerable<PlacedShape>> shown
    )
    {
        var shapes = PlacedShapes.Of(one, set);
        switch (PlacedShapes.QuantityOf(set))
        {
            case Quantity.Every:
                var wrong = shapes.First(shape => !isSo(shape));
                return Explanation.OfShapes(one, whyNot(wrong), shown(wrong));
            case Quantity.No:
                var right = shapes.First(isSo);
                return Explanation.OfShapes(one, why(right), shown(right));
            case var quantity:
                var found = shapes.Where(isSo).ToList();
                var names =
                    found.Count == 0
                        ? ""
                        : $": {ClaimWords.List(found.Select(shape => shape.Of.Symbol ?? shape.Of.Name))}";
                var wanted = quantity is Quantity.Exactly exactly ? $", not {exactly.Number}" : "";
                return Explanation.OfShapes(
                    one,
                    $"{ClaimWords.Counted(found.Count, "shape")} of {shapes.Count} on {ClaimWords.Of(one.Place, set.Of)} {(found.Count == 1 ? "is" : "are")} such that it {does}{names}{wanted}",
                    found.Take(1)
                );
        }
    }

    private static string Where(Case one, Claim.OfShapes claim) => $"on {ClaimWords.Of(one.Place, claim.Shapes.Of)} ";

    /// <summary>What is seen instead, where that is a number.</summary>
    private static string? Shown(Case one, PlacedShape shape, ShapePredicate says) =>
        says switch
        {
            ShapePredicate.Spans spans =>
                $"spans {ClaimWords.Counted(shape.Span, "fret")}, {ClaimWords.Not(spans.Frets)}",
            ShapePredicate.BeginsOn on => End(one, shape, "begins", ShapeEnd.First, on.Frets),
            ShapePredicate.EndsOn on => End(one, shape, "ends", ShapeEnd.Last, on.Frets),
            ShapePredicate.HasRootOn on => End(one, shape, "has its root", ShapeEnd.Root, on.Frets),
            _ => null,
        };

    private static string End(Case one, PlacedShape shape, string verb, ShapeEnd end, FretSet frets) =>
        $"{verb} on fret {ClaimWords.Frets(shape.Ends(end))}, which is none of {ClaimWords.Of(one, frets)}";

    private static (string Does, string DoesNot) Words(ShapePredicate says) =>
        says switch
        {
            ShapePredicate.Spans spans => Verb("spans", "span", $"{ClaimWords.Of(spans.Frets)} frets"),
            ShapePredicate.Stretches stretches => Verb(
                "stretches",
                "stretch",
                $"{ClaimWords.Of(stretches.Millimetres)} mm"
            ),
            ShapePredicate.IsOwnHalfTurn => Is("its own half-turn"),
            ShapePredicate.IsOwnMirror => Is("its own mirror"),
            ShapePredicate.IsHalfTurnOf of => Is($"the half-turn of {ClaimWords.Of(of.Shapes)}"),
            ShapePredicate.IsMirrorOf of => Is($"the mirror of {ClaimWords.Of(of.Shapes)}"),
            ShapePredicate.HasSameFormAs same => Verb("has", "have", $"the same form as {ClaimWords.Of(same.Shapes)}"),
            ShapePredicate.IsThatOfDegree that => Is(
                $"that of degree {that.Degree}" + (that.Frets == 0 ? "" : $" moved {ClaimWords.Moved(that.Frets)}")
            ),
            ShapePredicate.BeginsOn on => Verb("begins", "begin", $"on one of {ClaimWords.Of(on.Frets)}"),
            ShapePredicate.EndsOn on => Verb("ends", "end", $"on one of {ClaimWords.Of(on.Frets)}"),
            ShapePredicate.HasRootOn on => Verb("has", "have", $"its root on one of {ClaimWords.Of(on.Frets)}"),
            ShapePredicate.CanBePlayed played => (
                $"can be played with one finger a note by a hand of {played.Hand}",
                $"cannot be played with one finger a note by a hand of {played.Hand} everywhere on these frets"
            ),
            ShapePredicate.IsFingeredAs of => Is($"fingered as {ClaimWords.Of(of.Shapes)}"),
            _ => throw new ArgumentOutOfRangeException(nameof(says)),
        };

    private static (string, string) Is(string what) => ($"is {what}", $"is not {what}");

    private static (string, string) Verb(string verb, string bare, string what) =>
        ($"{verb} {what}", $"does not {bare} {what}");
}
