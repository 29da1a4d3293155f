using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>is its own half-turn</c>, <c>is the mirror of</c>, <c>is that of degree 4 moved up 2 frets</c>, <c>is fingered as</c>.</summary>
internal static class IsPredicates
{
    /// <summary>Reads what stands behind <c>is</c> or <c>are</c>.</summary>
    public static Failure? Read(
        Cursor at,
        Scope scope,
        ShapeSet subject,
        Token verb,
        string expected,
        out ShapePredicate? says
    )
    {
        says = null;
        if (at.AcceptAny("its", "their"))
        {
            return ReadOwn(at, out says);
        }

        if (at.Accept("that") || at.Accept("those"))
        {
            return ReadThat(at, subject, out says);
        }

        if (at.Accept("fingered"))
        {
            return at.AcceptAny("as", "like")
                ? ShapePredicates.ReadShapes(at, scope, shapes => new ShapePredicate.IsFingeredAs(shapes), out says)
                    ?? Windows.Needed(scope, verb, "a fingering")
                : Failure.Expected("'as' after 'fingered'", at.Current, "as");
        }

        if (at.Is("the") && Phrase.IsMotion(at.Peek(1)) && at.Peek(2).Is("of"))
        {
            var isMirror = at.Peek(1).IsAny("mirror", "mirrors");
            at.Skip(3);
            return ShapePredicates.ReadShapes(
                at,
                scope,
                shapes => isMirror ? new ShapePredicate.IsMirrorOf(shapes) : new ShapePredicate.IsHalfTurnOf(shapes),
                out says
            );
        }

        return verb.Is("are")
            ? Failure.Expected(expected, verb)
            : Failure.Expected(
                "'its own half-turn', 'the half-turn of', 'the mirror of', 'that of degree 4' or 'fingered as' after 'is'",
                at.Is("the") && !Vocabulary.Knows(at.Peek(1).Text) ? at.Peek(1) : at.Current,
                "its",
                "the",
                "that",
                "fingered",
                "half-turn",
                "mirror"
            );
    }

    private static Failure? ReadOwn(Cursor at, out ShapePredicate? says)
    {
        says = null;
        if (!at.Accept("own"))
        {
            return Failure.Expected($"'own' after '{at.Previous.Text}'", at.Current, "own");
        }

        says = at.Current.IsAny("mirror", "mirrors")
            ? new ShapePredicate.IsOwnMirror()
            : new ShapePredicate.IsOwnHalfTurn();
        return at.AcceptAny("half-turn", "half-turns", "mirror", "mirrors")
            ? null
            : Failure.Expected("'half-turn' or 'mirror' after 'own'", at.Current, "half-turn", "mirror");
    }

    private static Failure? ReadThat(Cursor at, ShapeSet subject, out ShapePredicate? says)
    {
        says = null;
        var that = at.Previous;
        if (!at.Accept("of"))
        {
            return Failure.Expected("'of degree 4' or another degree after 'that'", at.Current, "of");
        }

        if (Degrees.Read(at, out var degree) is { } failure)
        {
            return failure;
        }

        if (subject is not (ShapeSet.Several or ShapeSet.OnDegree))
        {
            return Failure.At(
                that,
                at.Previous,
                $"'that of degree {degree}' is said of shapes on a degree, such as 'the seventh shape on degree 1'"
            );
        }

        var wrong = Moves.Read(at, out var frets);
        says = new ShapePredicate.IsThatOfDegree(degree, frets);
        return wrong;
    }
}
