using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>Tells why the half-turn does not carry things as claimed.</summary>
internal static class TurnExplainer
{
    private const int LargestStack = 4;

    public static Explanation OfDegree(Case one, Claim.CarriesDegree claim)
    {
        if (one.Centres.Count == 0)
        {
            return NoCentre(one);
        }

        var (from, to) = Image(one, claim.From) == claim.To ? (claim.To, claim.From) : (claim.From, claim.To);
        return new Explanation(
            $"{About(one)} carries degree {from} to {(Image(one, from) == from ? "itself" : $"degree {Image(one, from)}")}, not to {(from == to ? "itself" : $"degree {to}")}",
            [one.Centres[0]],
            []
        );
    }

    public static Explanation OfFrets(Case one, FretSet from, FretSet? to)
    {
        if (one.Centres.Count == 0)
        {
            return NoCentre(one);
        }

        var frets = FretSets.Of(one, from);
        var image = one.Neck.Turned(frets, one.Centres[0]);
        var target =
            to is not null ? ClaimWords.Of(one, to)
            : ClaimWords.ArePlural(one, from) ? "themselves"
            : "itself";
        return Explanation.OfFrets(
            frets.Count == 0
                ? $"there is nothing to carry to {target}: {ClaimWords.Of(one, from)}"
                : $"{About(one)} carries {ClaimWords.Of(one, from)} to {ClaimWords.AtFrets(image)}, not to {target}",
            one.Neck.Set(frets.Concat(image))
        );
    }

    public static Explanation OfShapes(Case one, Claim.CarriesShapes claim)
    {
        if (one.Centres.Count == 0)
        {
            return NoCentre(one);
        }

        var (target, isNone) = claim.To switch
        {
            null => ("itself", false),
            ShapeSet.Several { Quantity: Quantity.Some } some => (ClaimWords.NoneOf(some), true),
            var to => (ClaimWords.Of(to), false),
        };
        return ShapeExplainer.OfQuantity(
            one,
            claim.From,
            shape => TurnClaims.Carries(one, claim, shape, one.Centres[0]),
            shape =>
                isNone ? $"{About(one)} carries {ShapeExplainer.Name(shape, claim.From)} to {target}"
                : CarriedTo(one, shape, claim.From) is { } image
                    ? $"{About(one)} carries {ShapeExplainer.Name(shape, claim.From)} to {image}, not to {target}"
                : $"{About(one)} does not carry {ShapeExplainer.Name(shape, claim.From)} to {target}",
            shape => $"{About(one)} carries {ShapeExplainer.Name(shape, claim.From)} to {target}",
            isPlural =>
                $"{(isPlural ? "are" : "is")} carried to {(claim.To is null ? isPlural ? "themselves" : "itself" : ClaimWords.Of(claim.To))} by the half-turn",
            shape => claim.To is ShapeSet.Several or null ? [shape] : [shape, .. PlacedShapes.Of(one, claim.To)]
        );
    }

    /// <summary>Why no half-turn carries a key pattern onto itself: because of the strings, or because of the key; null when one does.</summary>
    public static string? WhyNone(Case one, OtherStrings? other)
    {
        var strings = one.StringsOf(other);
        return !strings.IsPalindromicButForOctaves ? Explainer.Palindrome(one, other)
            : Enumerable.Range(0, 12).Any(from => Twelve.Reversed(one.Notes, from) == one.Notes) ? null
            : $"the steps of the scale, {string.Join(' ', ScaleSteps(one))} semitones, do not read the same backwards, wherever you begin";
    }

    private static IEnumerable<int> ScaleSteps(Case one) =>
        Enumerable.Range(1, 7).Select(degree => Modulo.Of(one.DegreeNote(degree % 7 + 1) - one.DegreeNote(degree), 12));

    private static Explanation NoCentre(Case one) =>
        Explanation.OfFrets(
            WhyNone(one, null) is { } reason
                ? $"there is no half-turn centre, as {reason}"
                : "there is no half-turn centre"
        );

    private static string About(Case one) => $"the half-turn about fret {ClaimWords.Fret(one.Centres[0])}";

    /// <summary>The shape on a degree of the key that a shape is carried to; null when it is none of them.</summary>
    private static string? CarriedTo(Case one, PlacedShape shape, ShapeSet set)
    {
        if (set.Notes > LargestStack)
        {
            return null;
        }

        var chosen = one.Place.Strings.Numbers.Numbers;
        var turned = new StringSet(
            shape.Strings.Numbers.Numbers.Reverse().Select(number => chosen[^(chosen.IndexOf(number) + 1)])
        );
        var there = shape with { Strings = one.StringsOf(new OtherStrings(turned)) };
        var image = Enumerable
            .Range(1, 7)
            .Select(degree => PlacedShapes.OnDegree(one, there, set, degree))
            .FirstOrDefault(other => shape.IsCarried(one.Place.Strings, one.Centres[0], other));
        if (image is null)
        {
            return null;
        }

        var place = turned == shape.Strings.Numbers ? "" : $" of strings {turned}";
        return image.Of.Symbol == shape.Of.Symbol && place.Length == 0
            ? "itself"
            : $"the {image.Of.Name}{place} ({image.Of.Symbol})";
    }

    /// <summary>The degree that a degree is carried to.</summary>
    private static int Image(Case one, int degree) =>
        Enumerable
            .Range(1, 7)
            .First(to => TurnClaims.CarriesDegree(one, new Claim.CarriesDegree(degree, to, Swaps: false)));
}
