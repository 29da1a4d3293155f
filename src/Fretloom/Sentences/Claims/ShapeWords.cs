using Fretloom.Claims;
using Fretloom.Hand;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;
using Fretloom.Shapes;

namespace Fretloom.Sentences.Claims;

/// <summary>Writes shapes and what is said of them.</summary>
internal static class ShapeWords
{
    /// <summary><c>every seventh shape in drop 2</c>, <c>the triad shape on degree 1 of strings 3-1</c>.</summary>
    public static string Of(ShapeSet shapes) => Name(shapes) + Rest(shapes);

    /// <summary>How they lie and where, with the space before: <c> in drop 2 of strings 4-1</c>.</summary>
    public static string Rest(ShapeSet shapes) => Voicing(shapes.Voicing) + StringWords.Of(shapes.Of);

    /// <summary>What is claimed of shapes.</summary>
    public static string Of(Claim.OfShapes claim) =>
        $"{Of(claim.Shapes)} {Predicate(claim.Says, IsPlural(claim.Shapes))}";

    /// <summary>Whether shapes are spoken of in the plural.</summary>
    public static bool IsPlural(ShapeSet shapes) =>
        shapes is ShapeSet.Several { Quantity: Quantity.Exactly { Number: not 1 } };

    private static string Name(ShapeSet shapes) =>
        shapes switch
        {
            ShapeSet.Several { Quantity: Quantity.Exactly exactly, Family: var family } =>
                $"exactly {CountWords.Number(exactly.Number)} of the {ShapeNouns.WordOf(family)} shapes",
            ShapeSet.Several several =>
                $"{FretWords.QuantityWord(several.Quantity)} {ShapeNouns.WordOf(several.Family)} shape",
            ShapeSet.OnDegree on =>
                $"the {ShapeNouns.WordOf(on.Family)} shape on degree {CountWords.Number(on.Degree)}",
            ShapeSet.OfQuality of => $"the {of.Quality} shape",
            ShapeSet.ByNumeral by => $"the {by.Numeral} shape",
            _ => throw new NotSupportedException(),
        };

    private static string Voicing(ShapeVoicing voicing)
    {
        var arrangement = voicing.Arrangement switch
        {
            Arrangement.DropTwo => " in drop 2",
            Arrangement.DropThree => " in drop 3",
            _ => "",
        };
        return voicing.Inversion == 0
            ? arrangement
            : $"{arrangement} in {Numbers.OrdinalWord(voicing.Inversion)} inversion";
    }

    /// <summary>What is said of shapes: <c>spans exactly 1 fret</c>, <c>are their own mirror</c>.</summary>
    public static string Predicate(ShapePredicate says, bool isPlural)
    {
        var s = isPlural ? "" : "s";
        var verb = isPlural ? "are" : "is";
        var own = isPlural ? "are their" : "is its";
        return says switch
        {
            ShapePredicate.Spans spans => $"span{s} {CountWords.Frets(spans.Frets)}",
            ShapePredicate.Stretches far =>
                $"stretch{(isPlural ? "" : "es")} {CountWords.Of(far.Millimetres, "less")} mm",
            ShapePredicate.IsOwnHalfTurn => $"{own} own half-turn",
            ShapePredicate.IsOwnMirror => $"{own} own mirror",
            ShapePredicate.IsHalfTurnOf other => $"{verb} the half-turn of {Of(other.Shapes)}",
            ShapePredicate.IsMirrorOf other => $"{verb} the mirror of {Of(other.Shapes)}",
            ShapePredicate.HasSameFormAs other => $"{(isPlural ? "have" : "has")} the same form as {Of(other.Shapes)}",
            ShapePredicate.IsThatOfDegree that =>
                $"{verb} that of degree {CountWords.Number(that.Degree)}{CountWords.Moved(that.Frets)}",
            ShapePredicate.BeginsOn on => $"begin{s} on {FretWords.A(on.Frets)}",
            ShapePredicate.EndsOn on => $"end{s} on {FretWords.A(on.Frets)}",
            ShapePredicate.HasRootOn on => $"{(isPlural ? "have their" : "has its")} root on {FretWords.A(on.Frets)}",
            ShapePredicate.CanBePlayed can => $"can be played with one finger a note{By(can.Hand)}",
            ShapePredicate.IsFingeredAs other => $"{verb} fingered as {Of(other.Shapes)}",
            _ => throw new NotSupportedException(),
        };
    }

    private static string By(HandSize hand) => hand == HandSize.Adult ? "" : $" by {HandPhrases.WordsOf(hand)}";
}
