using Fretloom.Claims;
using Fretloom.Sentences.Reading;
using Fretloom.Theory;

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

        if (at.AcceptAny("that", "those"))
        {
            return ReadThat(at, scope, subject, out says);
        }

        if (Counts.Begins(at))
        {
            return ShapePredicates.ReadReach(at, scope, verb, out says);
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

        if (IsShape(at))
        {
            return ReadShape(at, scope, subject, verb, out says);
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

    /// <summary>Reads <c>lies 2 frets above that of degree 4</c>, which is <c>is that of degree 4 moved up 2 frets</c>; <c>lies</c> was read.</summary>
    public static Failure? ReadLies(Cursor at, Scope scope, ShapeSet subject, out ShapePredicate? says)
    {
        says = null;
        if (Moves.ReadFrets(at, out var frets) is { } failure)
        {
            return failure;
        }

        var isBelow = at.Is("below");
        if (!at.AcceptAny("above", "below"))
        {
            return Failure.Expected("'above' or 'below'", at.Current, "above", "below");
        }

        if (!at.AcceptAny("that", "those"))
        {
            return Failure.Expected("'that of degree 4' or another degree", at.Current, "that");
        }

        var wrong = ReadThat(at, scope, subject, out var that);
        says = that is ShapePredicate.IsThatOfDegree of ? of with { Frets = isBelow ? -frets : frets } : null;
        return wrong;
    }

    private static bool IsShape(Cursor at)
    {
        var name = at.Peek(at.Is("the") ? 1 : 0);
        return name.IsAny(ShapeNouns.Words)
            || RomanNumeral.TryParse(name.Text, out _)
            || (
                at.Peek(at.Is("the") ? 2 : 1) is var noun && ShapeNouns.IsNoun(noun) && Chord.TryParse(name.Text, out _)
            );
    }

    // A shape of the same sort on another degree lies in one place; of others only the form can be compared.
    private static Failure? ReadShape(Cursor at, Scope scope, ShapeSet subject, Token verb, out ShapePredicate? says)
    {
        says = null;
        var first = at.Current;
        if (ShapeSets.Read(at, scope, out var other) is { } failure)
        {
            return failure;
        }

        var (mine, theirs) = (KeyChords.OnDegree(subject, scope.Keys!), KeyChords.OnDegree(other!, scope.Keys!));
        if (
            theirs is ShapeSet.OnDegree on
            && on.Family == FamilyOf(mine)
            && (on.Voicing, on.Of) == (mine.Voicing, mine.Of)
        )
        {
            var wrong = Moves.Read(at, out var frets);
            says = new ShapePredicate.IsThatOfDegree(on.Degree, frets);
            return wrong;
        }

        return Failure.At(
            first,
            at.Previous,
            $"one shape is another where both are chords of the key, with as many notes, on the same strings; of forms say 'has the same form as'",
            Edit.Of(verb, verb.Is("are") ? "have the same form as" : "has the same form as")
        );
    }

    private static ShapeFamily? FamilyOf(ShapeSet shapes) =>
        (shapes as ShapeSet.Several)?.Family ?? (shapes as ShapeSet.OnDegree)?.Family;

    private static Failure? ReadThat(Cursor at, Scope scope, ShapeSet subject, out ShapePredicate? says)
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

        if (FamilyOf(KeyChords.OnDegree(subject, scope.Keys!)) is null)
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
