using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>Claims about where the half-turn of the whole string set carries things: about a centre of the key pattern, if there is one.</summary>
internal static class TurnClaims
{
    public static bool CarriesDegree(Case one, Claim.CarriesDegree claim) =>
        one.Centres.Any(centre =>
            Image(one, centre, claim.From) == one.DegreeNote(claim.To)
            && (!claim.Swaps || Image(one, centre, claim.To) == one.DegreeNote(claim.From))
        );

    public static bool CarriesFrets(Case one, Claim.CarriesFrets claim)
    {
        var from = FretSets.Of(one, claim.From);
        var to = claim.To is { } other ? FretSets.Of(one, other) : from;
        return one.Centres.Any(centre => one.Neck.Turned(from, centre) == to);
    }

    /// <summary>Whether about one of the centres as many shapes are carried as said; without a centre it fails.</summary>
    public static Outcome CarriesShapes(Case one, Claim.CarriesShapes claim)
    {
        var about = one
            .Centres.Select(centre =>
                Outcomes.Of(
                    PlacedShapes.QuantityOf(claim.From),
                    PlacedShapes.Of(one, claim.From),
                    shape => Carries(one, claim, shape, centre)
                )
            )
            .ToList();
        return about.Count == 0 ? Outcome.Fails : Outcomes.Or(about);
    }

    /// <summary>Whether a shape is carried as said about a centre.</summary>
    public static bool Carries(Case one, Claim.CarriesShapes claim, PlacedShape shape, int centre)
    {
        var chosen = one.Place.Strings;
        return claim.To is { } to
            ? Outcomes.IsTrueOf(
                PlacedShapes.QuantityOf(to),
                PlacedShapes.Of(one, to),
                other => shape.IsCarried(chosen, centre, other)
            )
            : shape.IsCarried(chosen, centre, shape);
    }

    /// <summary>What the places that sound a degree sound after the half-turn; it inverts every string alike.</summary>
    private static int Image(Case one, int centre, int degree)
    {
        var strings = one.Place.Strings;
        return Modulo.Of(strings.Opens[0] + strings.Opens[^1] + centre - one.DegreeNote(degree), 12);
    }
}
