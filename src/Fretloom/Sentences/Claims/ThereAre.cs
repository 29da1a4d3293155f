using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>there are exactly 3 full frets</c>, <c>there are as many full frets as half-turn centres</c>.</summary>
internal static class ThereAre
{
    /// <summary>Reads what is there; <c>there</c> stands here.</summary>
    public static Failure? Read(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        at.Skip();
        if (!at.AcceptAny("is", "are"))
        {
            return Failure.Expected("'is' or 'are' after 'there'", at.Current, "is", "are");
        }

        if (at.Accept("as"))
        {
            return ReadAsMany(at, scope, out claim);
        }

        if (Counts.Read(at, out var count) is { } failure)
        {
            return failure;
        }

        var wrong = FretNouns.Read(at, scope, out var noun);
        claim = new Claim.ThereAre(count, noun);
        return wrong;
    }

    private static Failure? ReadAsMany(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        if (Phrase.Read(at, "many") is { } failure)
        {
            return failure;
        }

        if (FretNouns.Read(at, scope, out var one) is { } wrong)
        {
            return wrong;
        }

        if (Phrase.Read(at, "as") is { } missing)
        {
            return missing;
        }

        var last = FretNouns.Read(at, scope, out var other);
        claim = new Claim.AsMany(one, other);
        return last;
    }
}
