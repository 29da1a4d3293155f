using Fretloom.Claims;
using Fretloom.Hand;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Claims;

/// <summary>What is said of shapes: <c>spans at most 5 frets</c>, <c>is its own half-turn</c>, <c>has its root on a full fret</c>.</summary>
internal static class ShapePredicates
{
    private const string Expected =
        "what the shape does ('spans', 'stretches', 'is', 'begins on', 'ends on', 'has its root on')";

    private static readonly string[] Verbs =
    [
        "spans",
        "span",
        "stretches",
        "stretch",
        "is",
        "are",
        "has",
        "have",
        "begins",
        "begin",
        "ends",
        "end",
        "can",
        "lies",
        "lie",
    ];

    /// <summary>Reads what is said.</summary>
    /// <param name="at">The place.</param>
    /// <param name="scope">What the sentence speaks of.</param>
    /// <param name="subject">The shapes before it.</param>
    /// <param name="says">What was read.</param>
    public static Failure? Read(Cursor at, Scope scope, ShapeSet subject, out ShapePredicate? says)
    {
        says = null;
        var verb = at.Current;
        at.Skip(verb.IsAny(Verbs) ? 1 : 0);
        return verb.IsAny("spans", "span", "stretches", "stretch") ? ReadReach(at, scope, verb, out says)
            : verb.IsAny("is", "are") ? IsPredicates.Read(at, scope, subject, verb, Expected, out says)
            : verb.IsAny("has", "have") ? ReadHas(at, scope, subject, verb, out says)
            : verb.IsAny("begins", "begin")
                ? ReadOn(at, scope, subject, verb, frets => new ShapePredicate.BeginsOn(frets), out says)
            : verb.IsAny("ends", "end")
                ? ReadOn(at, scope, subject, verb, frets => new ShapePredicate.EndsOn(frets), out says)
            : verb.IsAny("lies", "lie") ? IsPredicates.ReadLies(at, scope, subject, out says)
            : verb.Is("can") ? ReadCan(at, scope, verb, out says)
            : Failure.Expected(Expected, verb, Verbs);
    }

    /// <summary>Reads shapes and makes a predicate of them.</summary>
    public static Failure? ReadShapes(
        Cursor at,
        Scope scope,
        Func<ShapeSet, ShapePredicate> make,
        out ShapePredicate? says
    )
    {
        var failure = ShapeSets.Read(at, scope, out var shapes);
        says = failure is null ? make(shapes!) : null;
        return failure;
    }

    // Frets are counted, millimetres are measured somewhere.
    public static Failure? ReadReach(Cursor at, Scope scope, Token verb, out ShapePredicate? says)
    {
        says = null;
        if (Counts.Read(at, out var count) is { } failure)
        {
            return failure;
        }

        var isMeasured = verb.IsAny("stretches", "stretch");
        if (!isMeasured && at.AcceptAny("fret", "frets"))
        {
            says = new ShapePredicate.Spans(count);
            return null;
        }

        if (at.AcceptAny("mm", "millimetres", "millimeters", "millimetre", "millimeter"))
        {
            says = new ShapePredicate.Stretches(count);
            return Windows.Needed(scope, verb, "a stretch in millimetres");
        }

        var (number, unit) = (at.Previous, at.Current);
        return unit.IsAny("cm", "centimetres", "centimeters")
                ? Failure.At(
                    unit,
                    $"a stretch is measured in millimetres, found {Failure.Shown(unit)}",
                    Edit.Of(number, unit, $"{CountWords.Number(10 * count.Number)} mm")
                )
            : isMeasured ? Failure.Expected("'mm'", unit, "mm", "millimetres")
            : Failure.Expected("'frets' or 'mm'", unit, "frets", "fret", "mm");
    }

    /// <summary>Reads <c>the span of every seventh shape is at most 5 frets</c>, and the same of its stretch; <c>the</c> stands here.</summary>
    public static Failure? ReadMeasure(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        at.Skip();
        var measure = at.Current;
        at.Skip();
        if (Phrase.Read(at, "of") is { } missing)
        {
            return missing;
        }

        if ((ShapeSets.Read(at, scope, out var shapes) ?? Phrase.Read(at, "is")) is { } failure)
        {
            return failure;
        }

        var wrong = ReadReach(at, scope, measure, out var says);
        claim = wrong is null ? new Claim.OfShapes(shapes!, says!) : null;
        return wrong;
    }

    private static Failure? ReadHas(Cursor at, Scope scope, ShapeSet subject, Token verb, out ShapePredicate? says)
    {
        says = null;
        if (at.Accept("the", "same", "form", "as"))
        {
            return ReadShapes(at, scope, shapes => new ShapePredicate.HasSameFormAs(shapes), out says);
        }

        if (at.AcceptAny("its", "their"))
        {
            var its = at.Previous;
            return at.AcceptAny("root", "roots")
                ? ReadOn(at, scope, subject, verb, frets => new ShapePredicate.HasRootOn(frets), out says)
                : Failure.Expected($"'root on' after '{its.Text}'", at.Current, "root");
        }

        return Failure.Expected(
            $"'its root on' or 'the same form as' after '{verb.Text}'",
            Phrase.Missing(at, "the", "same", "form", "as"),
            "its",
            "the",
            "same",
            "form",
            "as"
        );
    }

    private static Failure? ReadOn(
        Cursor at,
        Scope scope,
        ShapeSet subject,
        Token verb,
        Func<FretSet, ShapePredicate> make,
        out ShapePredicate? says
    )
    {
        says = null;
        if (!at.Accept("on"))
        {
            return Failure.Expected($"'on' after '{at.Previous.Text}'", at.Current, "on");
        }

        if (ShapeSets.Placeless(subject, verb, at.Previous) is { } placeless)
        {
            return placeless;
        }

        var failure = FretSets.Read(at, scope, out var frets);
        says = failure is null ? make(frets!) : null;
        return failure;
    }

    private static Failure? ReadCan(Cursor at, Scope scope, Token can, out ShapePredicate? says)
    {
        says = null;
        if (at.Accept("be", "played", "by"))
        {
            return Failure.At(
                at.Previous,
                "what is meant by playing? expected 'with one finger a note' before 'by'",
                Edit.Of(at.Previous, "with one finger a note by")
            );
        }

        foreach (var word in "be played with one finger".Split(' '))
        {
            if (!at.Accept(word) && !(word == "one" && at.Accept("1")))
            {
                return at.Previous.Is("played")
                    ? Failure.At(
                        at.Current,
                        $"expected 'with one finger a note' after 'played', found {Failure.Shown(at.Current)}",
                        [.. Spelling.Edits(at.Current, ["with"]), Edit.Of(at.Previous, "played with one finger a note")]
                    )
                    : Failure.Expected($"'{word}' after '{at.Previous.Text}'", at.Current, word);
            }
        }

        at.Accept("to");
        if (!at.AcceptAny("a", "per", "each", "every") || !at.Accept("note"))
        {
            return Failure.Expected("'a note' after 'finger'", at.Current, "a", "note");
        }

        var hand = HandSize.Adult;
        if (at.Accept("by") && HandPhrases.Read(at, out hand) is { } failure)
        {
            return failure;
        }

        says = new ShapePredicate.CanBePlayed(hand);
        return Windows.Needed(scope, can, "what a hand can play");
    }
}
