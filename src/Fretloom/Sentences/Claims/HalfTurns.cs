using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>the half-turn carries degree 5 to degree 7</c>, <c>the half-turn swaps degree 1 and degree 3</c>.</summary>
internal static class HalfTurns
{
    /// <summary>Reads what the half-turn does; <c>the half-turn</c> stands here.</summary>
    public static Failure? Read(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        at.Skip(2);
        if (at.AcceptAny("swaps", "swap"))
        {
            return ReadDegrees(at, "and", swaps: true, out claim);
        }

        if (!at.AcceptAny("carries", "carry"))
        {
            return Failure.Expected(
                "'carries' or 'swaps' after 'the half-turn'",
                at.Current,
                "carries",
                "swaps",
                "centres",
                "centre"
            );
        }

        return at.Is("degree") ? ReadDegrees(at, "to", swaps: false, out claim)
            : FretSets.Begins(at) ? ReadFrets(at, scope, out claim)
            : ReadShapes(at, scope, out claim);
    }

    private static Failure? ReadDegrees(Cursor at, string joint, bool swaps, out Claim? claim)
    {
        claim = null;
        if (Degrees.Read(at, out var from) is { } failure)
        {
            return failure;
        }

        if (Phrase.Read(at, joint) is { } missing)
        {
            return missing;
        }

        var wrong = Degrees.Read(at, out var to);
        claim = wrong is null ? new Claim.CarriesDegree(from, to, swaps) : null;
        return wrong;
    }

    private static Failure? ReadFrets(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        if (FretSets.Read(at, scope, out var from) is { } failure)
        {
            return failure;
        }

        if (Phrase.Read(at, "to") is { } missing)
        {
            return missing;
        }

        FretSet? to = null;
        var wrong = at.AcceptAny("themselves", "itself") ? null : FretSets.Read(at, scope, out to);
        claim = new Claim.CarriesFrets(from!, to);
        return wrong;
    }

    private static Failure? ReadShapes(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        if (!at.Current.IsAny(ShapeSets.Openings) && Numbers.Cardinal(at.Current) is null)
        {
            return Failure.Expected(
                "'degree 1', frets such as 'the full frets' or shapes such as 'every seventh shape'",
                at.Current,
                ["degree", .. ShapeSets.Openings]
            );
        }

        if (ReadOfPlace(at, scope, out var from) is { } failure)
        {
            return failure;
        }

        if (Phrase.Read(at, "to") is { } missing)
        {
            return missing;
        }

        ShapeSet? to = null;
        var wrong = at.AcceptAny("itself", "themselves") ? null : ReadOfPlace(at, scope, out to);
        claim = new Claim.CarriesShapes(from!, to);
        return wrong;
    }

    private static Failure? ReadOfPlace(Cursor at, Scope scope, out ShapeSet? shapes)
    {
        var first = at.Current;
        return ShapeSets.Read(at, scope, out shapes)
            ?? (
                shapes?.Of?.Instrument is { } other
                    ? Failure.At(
                        first,
                        at.Previous,
                        $"the half-turn is that of the strings chosen; it carries nothing of the {other}"
                    )
                    : null
            );
    }
}
