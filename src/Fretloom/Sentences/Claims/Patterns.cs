using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>the key pattern is its own half-turn</c>, <c>the key pattern of strings 4-2 has the same form as the key pattern of strings 3-1</c>.</summary>
internal static class Patterns
{
    /// <summary>Reads what is said of a pattern; <c>the key</c> stands here.</summary>
    public static Failure? Read(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        if (ReadPattern(at, scope, out var one) is { } failure)
        {
            return failure;
        }

        if (at.AcceptAny("has"))
        {
            return ReadForm(at, scope, one, out claim);
        }

        if (Moves.Read(at, out var frets) is { } wrong)
        {
            return wrong;
        }

        return at.Accept("is")
            ? ReadIs(at, scope, one, frets, out claim)
            : Failure.Expected("'is', 'has the same form as' or 'moved up 2 frets'", at.Current, "is", "has", "moved");
    }

    /// <summary>Reads <c>strings 4-2 have the same key pattern as strings 3-1</c>; <c>strings</c> stands here.</summary>
    public static Failure? ReadStrings(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        if (
            (
                OfStrings.ReadPlace(at, scope, out var one)
                ?? (
                    at.AcceptAny("have", "has") ? null : Failure.Expected("'have the same form as'", at.Current, "have")
                )
                ?? Phrase.Read(at, "the", "same")
            ) is
            { } failure
        )
        {
            return failure;
        }

        if (!at.Accept("key", "pattern") && !at.Accept("form"))
        {
            return Failure.Expected("'form' or 'key pattern' after 'same'", at.Current, "form", "key", "pattern");
        }

        if (Phrase.Read(at, "as") is { } missing)
        {
            return missing;
        }

        var wrong = OfStrings.ReadPlace(at, scope, out var other);
        claim = new Claim.PatternsHaveSameForm(one, other);
        return wrong ?? Unequal(at, scope, one, other);
    }

    private static Failure? ReadPattern(Cursor at, Scope scope, out OtherStrings? of)
    {
        of = null;
        return Phrase.Read(at, "the", "key", "pattern") ?? OfStrings.Read(at, scope, out of);
    }

    private static Failure? ReadForm(Cursor at, Scope scope, OtherStrings? one, out Claim? claim)
    {
        claim = null;
        if (Phrase.Read(at, "the", "same", "form", "as") is { } failure)
        {
            return failure;
        }

        var wrong = ReadPattern(at, scope, out var other);
        claim = new Claim.PatternsHaveSameForm(one, other);
        return wrong ?? Unequal(at, scope, one, other);
    }

    private static Failure? ReadIs(Cursor at, Scope scope, OtherStrings? one, int frets, out Claim? claim)
    {
        claim = null;
        if (at.Accept("its"))
        {
            if (Phrase.Read(at, "own") is { } wrong)
            {
                return wrong;
            }

            var own = Motion(at.Current);
            claim = own == PatternMotion.None ? null : new Claim.PatternIs(one, frets, own, null, IsOwn: true);
            at.Skip(own == PatternMotion.None ? 0 : 1);
            return own == PatternMotion.None
                ? Failure.Expected(
                    "'half-turn', 'mirror' or 'flip' after 'own'",
                    at.Current,
                    "half-turn",
                    "mirror",
                    "flip"
                )
                : null;
        }

        var motion = at.Is("the") ? Motion(at.Peek(1)) : PatternMotion.None;
        at.Skip(motion == PatternMotion.None ? 0 : 2);
        if (motion != PatternMotion.None && Phrase.Read(at, "of") is { } missing)
        {
            return missing;
        }

        if (!at.Is("the") || !at.Peek(1).Is("key"))
        {
            return Failure.Expected(
                "'its own half-turn', 'the half-turn of', 'the mirror of' or 'the key pattern'",
                at.Is("the") ? at.Peek(1) : at.Current,
                "its",
                "the",
                "half-turn",
                "mirror",
                "flip",
                "key"
            );
        }

        var failure = ReadPattern(at, scope, out var other);
        claim = new Claim.PatternIs(one, frets, motion, other, IsOwn: false);
        return failure ?? Unequal(at, scope, one, other);
    }

    // The place is that of the last word: both patterns are known only there.
    private static Failure? Unequal(Cursor at, Scope scope, OtherStrings? one, OtherStrings? other) =>
        scope.CountOf(one) is { } count && scope.CountOf(other) is { } otherCount && count != otherCount
            ? Failure.At(
                at.Previous,
                $"patterns are compared string by string: one has {count} strings, the other {otherCount}"
            )
            : null;

    private static PatternMotion Motion(Token token) =>
        token.Is("half-turn") ? PatternMotion.HalfTurn
        : token.Is("mirror") ? PatternMotion.Mirror
        : token.Is("flip") ? PatternMotion.Flip
        : PatternMotion.None;
}
