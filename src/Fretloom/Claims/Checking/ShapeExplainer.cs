using System.Globalization;
using Fretloom.Neck;
using Fretloom.Sentences.Claims;
using Fretloom.Sentences.Show;

namespace Fretloom.Claims.Checking;

/// <summary>Tells why a claim about shapes is false.</summary>
internal static class ShapeExplainer
{
    public static Explanation Of(Case one, Claim.OfShapes claim) =>
        OfQuantity(
            one,
            claim.Shapes,
            shape => ShapeClaims.Is(one, claim, shape),
            shape => WhyNot(one, claim, shape),
            shape => $"{Name(shape, claim.Shapes)} {Does(one, ToldPlace(one, claim, shape), claim.Says)}",
            isPlural => ShapeWords.Predicate(claim.Says, isPlural),
            shape => [ToldPlace(one, claim, shape)]
        );

    /// <summary>A shape at the first of its places that shows why what is said of it is true, or is not.</summary>
    private static PlacedShape ToldPlace(Case one, Claim.OfShapes claim, PlacedShape shape)
    {
        var isSo = ShapeClaims.Is(one, claim, shape);
        return shape.OneByOne.FirstOrDefault(at => ShapeClaims.Is(one, claim, at) == isSo) ?? shape;
    }

    /// <summary>Why a quantity of shapes is not so.</summary>
    /// <param name="one">The case.</param>
    /// <param name="set">The shapes.</param>
    /// <param name="isSo">What is said of each.</param>
    /// <param name="whyNot">Tells of one that it is not so.</param>
    /// <param name="why">Tells of one that it is.</param>
    /// <param name="does">What is said, in the plural or the singular.</param>
    /// <param name="shown">The shapes to show for one.</param>
    public static Explanation OfQuantity(
        Case one,
        ShapeSet set,
        Func<PlacedShape, bool> isSo,
        Func<PlacedShape, string> whyNot,
        Func<PlacedShape, string> why,
        Func<bool, string> does,
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
                return Explanation.OfShapes(
                    one,
                    Share(one, (ShapeSet.Several)set, shapes.Count, found, does) + Wanted(quantity, found.Count),
                    found.Take(1)
                );
        }
    }

    /// <summary><c>the seventh shape on degree 2 in drop 2 (Dm7)</c>.</summary>
    public static string Name(PlacedShape shape, ShapeSet set) => Name(shape, set, shape.Of.Symbol);

    /// <summary>The same with its frets, from the far string on: <c>the V7 shape (G7, fretted 5 4 3 1)</c>.</summary>
    private static string Fretted(Case one, PlacedShape form, ShapeSet set)
    {
        var shape = PlacedShapes.InKey(one, form);
        if (!shape.Placements.Any())
        {
            return Name(shape, set, $"{shape.Of.Symbol}, which does not lie on these frets");
        }

        var moved = shape.HasPlace ? shape.Placements.First() : -shape.Frets.Min();
        var frets = string.Join(' ', shape.Frets.Select(fret => ClaimWords.Number(fret + moved)));
        return Name(
            shape,
            set,
            shape.Of.Symbol is { } symbol ? $"{symbol}, fretted {frets}" : $"{frets} above its lowest fret"
        );
    }

    private static string Name(PlacedShape shape, ShapeSet set, string? note) =>
        $"the {shape.Of.Name}{ShapeWords.Rest(set)}" + (note is null ? "" : $" ({note})");

    /// <summary><c>2 of the 7 seventh shapes span exactly 4 frets (Cmaj7 and Fmaj7)</c>.</summary>
    private static string Share(
        Case one,
        ShapeSet.Several set,
        int count,
        List<PlacedShape> found,
        Func<bool, string> does
    )
    {
        var noun = $"{ShapeNouns.WordOf(set.Family)} shape";
        var there = one.Neck.Window is not null && count < 7 ? " that lie on these frets" : "";
        if (count == 0)
        {
            return $"no {noun}{ShapeWords.Rest(set)} lies on these frets";
        }

        var names = ClaimWords.List(found.Select(shape => shape.Of.Symbol ?? shape.Of.Name));
        if (count == 1)
        {
            var only = $"{noun}{ShapeWords.Rest(set)} that lies on these frets {does(false)}";
            return found.Count == 0 ? $"no {only}" : $"the only {only} ({names})";
        }

        var all = $"the {ClaimWords.Counted(count, noun)}{ShapeWords.Rest(set)}{there}";
        return found.Count == 0
            ? $"none of {all} {does(false)}"
            : $"{(found.Count == count ? "all of" : $"{ClaimWords.Number(found.Count)} of")} {all} {does(found.Count > 1)} ({names})";
    }

    private static string Wanted(Quantity quantity, int found) =>
        quantity is not Quantity.Exactly { Number: var number } ? ""
        : found == 0 ? $", where {ClaimWords.Number(number)} should"
        : $", not {ClaimWords.Number(number)}";

    private static string WhyNot(Case one, Claim.OfShapes claim, PlacedShape shape)
    {
        var name = Name(shape, claim.Shapes);
        return claim.Says switch
        {
            ShapePredicate.Spans spans =>
                $"{name} spans {ClaimWords.Counted(shape.Span, "fret")}, {ClaimWords.Against(spans.Frets)}",
            ShapePredicate.Stretches stretches => NotStretched(one, shape, name, stretches.Millimetres),
            ShapePredicate.IsOwnHalfTurn => $"{Fretted(one, shape, claim.Shapes)} is not its own half-turn",
            ShapePredicate.IsOwnMirror => $"{Fretted(one, shape, claim.Shapes)} is not its own mirror",
            ShapePredicate.IsHalfTurnOf of => Unlike(of.Shapes, "is", "the half-turn of", shape.IsHalfTurnOf),
            ShapePredicate.IsMirrorOf of => Unlike(of.Shapes, "is", "the mirror of", shape.IsMirrorOf),
            ShapePredicate.HasSameFormAs same => Unlike(same.Shapes, "has", "the same form as", shape.HasFormOf),
            ShapePredicate.IsThatOfDegree that =>
                $"{Fretted(one, shape, claim.Shapes)} is not {Fretted(one, PlacedShapes.OnDegree(one, shape, claim.Shapes, that.Degree), claim.Shapes)}"
                    + (that.Frets == 0 ? "" : $" moved {ClaimWords.Moved(that.Frets)}"),
            ShapePredicate.BeginsOn on => $"{name} {NotOn(one, shape, "begins", ShapeEnd.First, on.Frets)}",
            ShapePredicate.EndsOn on => $"{name} {NotOn(one, shape, "ends", ShapeEnd.Last, on.Frets)}",
            ShapePredicate.HasRootOn on => $"{name} {NotOn(one, shape, "has its root", ShapeEnd.Root, on.Frets)}",
            ShapePredicate.CanBePlayed played =>
                $"{name} cannot be played with one finger a note by {HandPhrases.WordsOf(played.Hand)}"
                    + At(
                        ShapeClaims
                            .Everywhere(one, shape, claim.Shapes)
                            .First(at => !one.Hands.CanBePlayed(at, played.Hand))
                            .Spots
                    ),
            ShapePredicate.IsFingeredAs of => NotFingered(one, shape, name, of.Shapes),
            _ => throw new ArgumentOutOfRangeException(nameof(claim)),
        };

        string Unlike(ShapeSet set, string verb, string how, Func<PlacedShape, bool> isSo)
        {
            var fretted = Fretted(one, shape, claim.Shapes);
            var does = verb == "is" ? "is not" : "does not have";
            var others = PlacedShapes.Of(one, set);
            return PlacedShapes.QuantityOf(set) switch
            {
                Quantity.Some => $"{fretted} {verb} {how} {ClaimWords.NoneOf(set)}",
                Quantity.No => $"{fretted} {verb} {how} {Fretted(one, others.First(isSo), set)}",
                Quantity.Every when others.Any(other => !isSo(other)) =>
                    $"{fretted} {does} {how} {Fretted(one, others.First(other => !isSo(other)), set)}",
                Quantity.Every => $"{fretted} {does} {how} {ClaimWords.Of(set)}, which does not lie on these frets",
                _ => $"{fretted} {does} {how} {ClaimWords.Of(set)}",
            };
        }
    }

    /// <summary>What is seen of a shape of which something is said truly.</summary>
    private static string Does(Case one, PlacedShape shape, ShapePredicate says) =>
        says switch
        {
            ShapePredicate.Spans spans => $"spans {ClaimWords.Counted(shape.Span, "fret")}{AndSo(spans.Frets)}",
            ShapePredicate.Stretches stretches =>
                $"stretches {Millimetres(ShapesInHand.Everywhere(shape, shape.Strings.Instrument ?? one.Place.ToInstrument()).First())}{AndSo(stretches.Millimetres, "less")}",
            ShapePredicate.BeginsOn on => On(one, shape, "begins", ShapeEnd.First, on.Frets),
            ShapePredicate.EndsOn on => On(one, shape, "ends", ShapeEnd.Last, on.Frets),
            ShapePredicate.HasRootOn on => On(one, shape, "has its root", ShapeEnd.Root, on.Frets),
            _ => ShapeWords.Predicate(says, isPlural: false),
        };

    private static string AndSo(Count count, string fewer = "fewer") =>
        count.Comparison == Comparison.Exactly ? "" : $", and so {CountWords.Of(count, fewer)}";

    private static string On(Case one, PlacedShape shape, string verb, ShapeEnd end, FretSet frets)
    {
        var others = FretSets.Of(one, frets);
        var there = $"{verb} on {ClaimWords.AtFrets(shape.Ends(end).Intersect(others).ToValueList())}";
        return frets is FretSet.Numbers ? there
            : others.Count == 1 ? $"{there}, {ClaimWords.OnlyOne(frets)}"
            : $"{there}, one of {ClaimWords.Of(one, frets)}";
    }

    private static string NotOn(Case one, PlacedShape shape, string verb, ShapeEnd end, FretSet frets)
    {
        var (ends, others) = (shape.Ends(end), FretSets.Of(one, frets));
        var there = $"{verb} on {ClaimWords.AtFrets(ends)}";
        return others.Count switch
        {
            0 => $"{there}; of {FretWords.The(frets)} there are none",
            1 => $"{there}, not on {ClaimWords.Of(one, frets)}",
            _ => $"{there}, which {(ends.Count == 1 ? "is" : "are")} none of {ClaimWords.Of(one, frets)}",
        };
    }

    private static string NotStretched(Case one, PlacedShape shape, string name, Count count)
    {
        var at = ShapesInHand
            .Everywhere(shape, shape.Strings.Instrument ?? one.Place.ToInstrument())
            .First(at => !ShapesInHand.Stretches(at, count));
        return $"{name} stretches {Millimetres(at)}{At(at.Spots)}, {ClaimWords.Against(count, "less")}";
    }

    private static string Millimetres(HeldSpots at) =>
        at.Instrument.StretchMm(at.Spots).ToString("0.#", CultureInfo.InvariantCulture) + " mm";

    private static string NotFingered(Case one, PlacedShape shape, string name, ShapeSet set)
    {
        if (PlacedShapes.QuantityOf(set) is not Quantity.Every || set is ShapeSet.Several)
        {
            return $"{name} is not fingered as {ClaimWords.Of(set)}";
        }

        var others = PlacedShapes.Of(one, set);
        if (
            others.Count == 0
            || one.Hands.FingersAtLowest(ShapeClaims.Everywhere(one, others[0], set)) is not { } theirs
        )
        {
            return $"{ClaimWords.Of(set)} cannot be fingered on these frets";
        }

        var (spots, mine) = ShapesInHand
            .Everywhere(shape, shape.Strings.Instrument ?? one.Place.ToInstrument())
            .Select(at => (at.Spots, Fingers: one.Hands.Fingers(at)))
            .First(at => at.Fingers != theirs);
        return mine is null
            ? $"{name} cannot be fingered{At(spots)}"
            : $"{name} takes fingers {string.Join(' ', mine)}{At(spots)}, and {Name(others[0], set)} takes {string.Join(' ', theirs)}";
    }

    private static string At(ValueList<Spot> spots)
    {
        var (low, high) = (spots.Min(spot => spot.Fret), spots.Max(spot => spot.Fret));
        return low == high ? $" at fret {low}" : $" at frets {low} to {high}";
    }
}
