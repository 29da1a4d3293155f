namespace Fretloom.Claims.Checking;

/// <summary>Tells why the half-turn does not carry things as claimed.</summary>
internal static class TurnExplainer
{
    public static Explanation OfDegree(Case one, Claim.CarriesDegree claim)
    {
        if (one.Centres.Count == 0)
        {
            return NoCentre(one);
        }

        var (from, to) = Image(one, claim.From) == claim.To ? (claim.To, claim.From) : (claim.From, claim.To);
        return new Explanation(
            $"the half-turn about fret {ClaimWords.Fret(one.Centres[0])} of {ClaimWords.Of(one.Place)} carries degree {from} to degree {Image(one, from)}, not to degree {to}",
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
        return Explanation.OfFrets(
            $"the half-turn about fret {ClaimWords.Fret(one.Centres[0])} of {ClaimWords.Of(one.Place)} carries {ClaimWords.Of(one, from)} to {ClaimWords.Frets(image)}"
                + (to is null ? "" : $", not to {ClaimWords.Of(one, to)}"),
            one.Neck.Set(frets.Concat(image))
        );
    }

    public static Explanation OfShapes(Case one, Claim.CarriesShapes claim)
    {
        if (one.Centres.Count == 0)
        {
            return NoCentre(one);
        }

        var target = claim.To is null ? "itself" : ClaimWords.Of(claim.To);
        return ShapeExplainer.OfQuantity(
            one,
            claim.From,
            shape => TurnClaims.Carries(one, claim, shape, one.Centres[0]),
            shape =>
                $"the half-turn about fret {ClaimWords.Fret(one.Centres[0])} does not carry {ClaimWords.Of(shape)} to {target}",
            shape => $"the half-turn carries {ClaimWords.Of(shape)} to {target}",
            "carried so",
            shape => claim.To is ShapeSet.Several or null ? [shape] : [shape, .. PlacedShapes.Of(one, claim.To)]
        );
    }

    private static Explanation NoCentre(Case one)
    {
        var strings = one.Place.Strings;
        var reason = strings.IsPalindromic
            ? $"the notes of {one.Key} do not read the same both ways about any note"
            : Explainer.Palindrome(strings.Steps).Text;
        return Explanation.OfFrets(
            one.Neck.Window is null
                ? $"{Has(one)} no half-turn centre, as {reason}"
                : $"{Has(one)} no half-turn centre on frets {one.Neck.Window}"
        );
    }

    private static string Has(Case one) =>
        $"{ClaimWords.Of(one.Place)} {(ClaimWords.IsOne(one.Place, null) ? "has" : "have")}";

    /// <summary>The degree that a degree is carried to.</summary>
    private static int Image(Case one, int degree) =>
        Enumerable
            .Range(1, 7)
            .First(to => TurnClaims.CarriesDegree(one, new Claim.CarriesDegree(degree, to, Swaps: false)));
}
