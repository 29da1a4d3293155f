using Fretloom.Claims;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Claims;

/// <summary>Writes frets and how they lie.</summary>
internal static class FretWords
{
    /// <summary><c>full fret</c>, <c>empty frets of strings 4-2</c>.</summary>
    public static string Noun(FretNoun noun, bool isPlural)
    {
        var name = noun.Kind switch
        {
            FretKind.Full => "full fret",
            FretKind.Empty => "empty fret",
            _ => "half-turn centre",
        };
        return $"{name}{(isPlural ? "s" : "")}{StringWords.Of(noun.Of)}";
    }

    /// <summary>All of them: <c>the full frets</c>, <c>frets 0, 5 and 10</c>.</summary>
    public static string The(FretSet frets) =>
        frets switch
        {
            FretSet.Named named => $"the {Noun(named.Noun, isPlural: true)}",
            FretSet.OfDegree of =>
                $"the frets of degree {CountWords.Number(of.Degree)} on string {CountWords.Number(of.String)}",
            FretSet.OfShapes of =>
                $"the {EndOf(of.End)} {(IsPlural(of) ? "frets" : "fret")} of {ShapeWords.Of(of.Shapes)}",
            FretSet.Numbers { Frets: [var one] } => $"fret {CountWords.Number(one)}",
            FretSet.Numbers numbers => $"frets {ShowPrinter.List(numbers.Frets.Select(CountWords.Number))}",
            FretSet.Moved moved => The(moved.Set) + CountWords.Moved(moved.Frets),
            _ => throw new NotSupportedException(),
        };

    /// <summary>One of them: <c>a full fret</c>; sets that are not called by a noun as in <see cref="The"/>.</summary>
    public static string A(FretSet frets) =>
        frets is FretSet.Named { Noun: var noun }
            ? $"{(noun.Kind == FretKind.Empty ? "an" : "a")} {Noun(noun, isPlural: false)}"
            : The(frets);

    /// <summary>What is claimed of frets.</summary>
    public static string Of(Claim.OfFrets claim)
    {
        var isPlural = claim.Quantity is null && IsPlural(claim.Frets);
        var subject = claim is { Quantity: { } quantity, Frets: FretSet.Named named }
            ? $"{QuantityWord(quantity)} {Noun(named.Noun, isPlural: false)}"
            : The(claim.Frets);
        return $"{subject} {Relation(claim.Relation, isPlural)}";
    }

    /// <summary><c>every</c>, <c>some</c>, <c>no</c>.</summary>
    public static string QuantityWord(Quantity quantity) =>
        quantity switch
        {
            Quantity.Every => "every",
            Quantity.Some => "some",
            Quantity.No => "no",
            _ => throw new NotSupportedException(),
        };

    private static string Relation(FretRelation relation, bool isPlural)
    {
        var lie = isPlural ? "lie" : "lies";
        var s = isPlural ? "" : "s";
        return relation switch
        {
            FretRelation.LieOn on => $"{lie} on {A(on.Frets)}",
            FretRelation.Include include => $"include{s} {The(include.Frets)}",
            FretRelation.Avoid avoid => $"avoid{s} {The(avoid.Frets)}",
            FretRelation.LieNextTo next => $"{lie} next to {A(next.Frets)}",
            FretRelation.LieApart apart =>
                $"{lie} {CountWords.Frets(Math.Abs(apart.Distance))} {(apart.Distance < 0 ? "below" : "above")} {A(apart.Frets)}",
            FretRelation.LieHalfway { One: FretSet.Named one } halfway when halfway.One == halfway.Other =>
                $"{lie} halfway between two {Noun(one.Noun, isPlural: true)}",
            FretRelation.LieHalfway halfway => $"{lie} halfway between {A(halfway.One)} and {A(halfway.Other)}",
            FretRelation.Are are => $"{(isPlural ? "are" : "is")} {The(are.Frets)}",
            FretRelation.AreCarriedToThemselves =>
                $"{(isPlural ? "are carried to themselves" : "is carried to itself")} by the half-turn",
            _ => throw new NotSupportedException(),
        };
    }

    /// <summary>Whether a set is spoken of in the plural.</summary>
    public static bool IsPlural(FretSet frets) =>
        frets switch
        {
            FretSet.Numbers numbers => numbers.Frets.Count > 1,
            FretSet.OfShapes of => of.Shapes is ShapeSet.Several,
            FretSet.Moved moved => IsPlural(moved.Set),
            _ => true,
        };

    private static string EndOf(ShapeEnd end) =>
        end switch
        {
            ShapeEnd.Root => "root",
            ShapeEnd.First => "first",
            _ => "last",
        };
}
