using Fretloom.Claims;
using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Claims;

/// <summary><c>every seventh shape</c>, <c>exactly 2 of the triad shapes of strings 3-1</c>, <c>the seventh shape on degree 5 in drop 2</c>, <c>the V7 shape</c>.</summary>
internal static class ShapeSets
{
    private const int MostShapes = 7;

    /// <summary>The words that begin one.</summary>
    public static readonly string[] Openings = ["every", "some", "no", "exactly", "the"];

    /// <summary>Reads a set of shapes.</summary>
    public static Failure? Read(Cursor at, Scope scope, out ShapeSet? shapes)
    {
        shapes = null;
        if (at.Accept("the") || ShapeNouns.Numeral(at).Numeral is not null)
        {
            return ReadOne(at, scope, out shapes);
        }

        if (ReadQuantity(at, out var quantity) is { } wrong)
        {
            return wrong;
        }

        var noun = new ShapeNoun(scope);
        if (noun.ReadFamily(at, out var family) is { } failure)
        {
            return failure;
        }

        var end = noun.ReadRest(at, mayHaveDegree: false);
        family = noun.Meant(family);
        shapes = new ShapeSet.Several(quantity!, family, noun.Voicings.Voicing, noun.Of);
        return end ?? noun.Check(shapes, ShapeNouns.WordOf(family));
    }

    /// <summary>The failure for a form whose root is left open where its place is asked for; null for shapes that have one.</summary>
    public static Failure? Placeless(ShapeSet shapes, Token first, Token last) =>
        shapes is ShapeSet.OfQuality form
            ? Failure.At(
                first,
                last,
                $"the {form.Quality} shape is a form that may lie anywhere: name its degree, such as 'the {(form.Notes == 4 ? "V7" : form.Notes == 3 ? "IV" : "third")} shape{(form.Notes == 2 ? " on degree 1" : "")}'"
            )
            : null;

    private static Failure? ReadQuantity(Cursor at, out Quantity? quantity)
    {
        quantity = null;
        var first = at.Current;
        if (at.AcceptAny("every", "each", "all"))
        {
            at.Accept("the");
            quantity = new Quantity.Every();
            return null;
        }

        if (at.AcceptAny("some", "no"))
        {
            quantity = first.Is("no") ? new Quantity.No() : new Quantity.Some();
            return null;
        }

        at.Accept("exactly");
        var token = at.Current;
        if (Numbers.Cardinal(token) is not { } number)
        {
            return Failure.Expected("shapes, such as 'every seventh shape' or 'the V7 shape'", token, Openings);
        }

        at.Skip();
        quantity = new Quantity.Exactly(Math.Min(number, MostShapes));
        if (!at.Accept("of", "the"))
        {
            return Failure.Expected($"'of the' after '{token.Text}'", Phrase.Missing(at, "of", "the"), "of", "the");
        }

        return number <= MostShapes
            ? null
            : Failure.At(
                token,
                $"a key has {MostShapes} shapes of a sort, one on each degree, found {Failure.Shown(token)}"
            );
    }

    private static Failure? ReadOne(Cursor at, Scope scope, out ShapeSet? shapes)
    {
        shapes = null;
        var noun = new ShapeNoun(scope);
        if (noun.Voicings.ReadBefore(at) is { } failure)
        {
            return failure;
        }

        if (ShapeNouns.Quality(at) is ({ } quality, var count))
        {
            var wrong = noun.ReadName(at, count) ?? noun.ReadRest(at, mayHaveDegree: false);
            shapes = new ShapeSet.OfQuality(quality, noun.Voicings.Voicing, noun.Of);
            return wrong ?? noun.Check(shapes, quality.Name);
        }

        if (ShapeNouns.Numeral(at) is ({ } numeral, var length))
        {
            return ReadNumeral(at, noun, numeral, length, out shapes);
        }

        if (ShapeNouns.Chord(at) is { } chord)
        {
            return scope.Keys is KeyScope.One one
                ? ReadNumeral(at, noun, RomanNumeral.Of(chord, one.Key), 1, out shapes)
                : Failure.At(
                    at.Current,
                    $"the {chord} chord is another one in each key: say its numeral, such as 'the V7 shape', or name one key"
                );
        }

        return ReadOnDegree(at, noun, out shapes);
    }

    private static Failure? ReadNumeral(
        Cursor at,
        ShapeNoun noun,
        RomanNumeral numeral,
        int length,
        out ShapeSet? shapes
    )
    {
        var place = at.Current;
        var inRootPosition = new RomanNumeral(numeral.Degree, numeral.Quality, 0, numeral.Target);
        var failure =
            noun.Voicings.TakeFigures(numeral.Inversion, place)
            ?? noun.ReadName(at, length)
            ?? noun.ReadRest(at, mayHaveDegree: false);
        shapes = new ShapeSet.ByNumeral(inRootPosition, noun.Voicings.Voicing, noun.Of);
        return failure ?? noun.Check(shapes, inRootPosition.ToString());
    }

    private static Failure? ReadOnDegree(Cursor at, ShapeNoun noun, out ShapeSet? shapes)
    {
        shapes = null;
        if (noun.ReadFamily(at, out var family) is { } failure)
        {
            return failure;
        }

        if (noun.ReadRest(at, mayHaveDegree: true) is { } wrong)
        {
            return wrong;
        }

        family = noun.Meant(family);
        var word = ShapeNouns.WordOf(family);
        if (noun.Degree is not { } degree)
        {
            // The seventh shapes.
            if (noun.Last.IsAny("shapes", "chords", "thirds", "triads", "sevenths", "sixths", "octaves", "tenths"))
            {
                shapes = new ShapeSet.Several(new Quantity.Every(), family, noun.Voicings.Voicing, noun.Of);
                return noun.Check(shapes, word);
            }

            return Failure.At(
                noun.First,
                noun.Last,
                $"which {word} shape? say 'the {word} shape on degree 1' or 'every {word} shape'",
                Edit.Of(noun.First, noun.Last, $"{word} shape on degree 1")
            ) with
            {
                NamesChange = true,
            };
        }

        shapes = new ShapeSet.OnDegree(family, degree, noun.Voicings.Voicing, noun.Of);
        return noun.Check(shapes, word);
    }
}
