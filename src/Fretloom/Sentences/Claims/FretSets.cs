using Fretloom.Claims;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Claims;

/// <summary><c>the full frets</c>, <c>the frets of degree 5 on string 2</c>, <c>the root fret of every seventh shape</c>, <c>frets 0, 5 and 10</c>.</summary>
internal static class FretSets
{
    /// <summary>Whether a set of frets begins here, behind its article if it has one.</summary>
    public static bool Begins(Cursor at)
    {
        var article = at.Current.IsAny("the", "a", "an") ? 1 : 0;
        return FretNouns.Begins(at, article)
            || at.Peek(article).IsAny("fret", "frets")
            || (at.Peek(article).IsAny("root", "first", "last") && at.Peek(article + 1).IsAny("fret", "frets"))
            || (at.Peek(article).IsAny("root", "roots") && at.Peek(article + 1).Is("of"));
    }

    /// <summary>Reads a set, perhaps moved.</summary>
    public static Failure? Read(Cursor at, Scope scope, out FretSet? frets)
    {
        if (ReadUnmoved(at, scope, out frets) is { } failure)
        {
            return failure;
        }

        if (Moves.Read(at, out var distance) is { } wrong)
        {
            return wrong;
        }

        frets = distance == 0 ? frets : new FretSet.Moved(frets!, distance);
        return null;
    }

    private static Failure? ReadUnmoved(Cursor at, Scope scope, out FretSet? frets)
    {
        frets = null;
        var hasArticle = at.AcceptAny("the", "a", "an");
        if (at.Current.IsAny("root", "roots", "first", "last"))
        {
            return ReadEnds(at, scope, out frets);
        }

        if (at.Current.IsAny("fret", "frets"))
        {
            at.Skip();
            return at.Is("of") ? ReadDegree(at, scope, out frets) : ReadNumbers(at, out frets);
        }

        if (!FretNouns.Begins(at) && !at.Is("half-turn"))
        {
            return Failure.Expected(
                FretNouns.Expected,
                at.Current,
                hasArticle ? [.. FretNouns.Openings, "frets", "root", "first", "last"] : [.. FretNouns.Openings, "the"]
            );
        }

        var failure = FretNouns.Read(at, scope, out var noun);
        frets = new FretSet.Named(noun);
        return failure;
    }

    private static Failure? ReadEnds(Cursor at, Scope scope, out FretSet? frets)
    {
        frets = null;
        var word = at.Current;
        var end =
            word.IsAny("root", "roots") ? ShapeEnd.Root
            : word.Is("first") ? ShapeEnd.First
            : ShapeEnd.Last;
        at.Skip();
        // The root of a shape is its root fret.
        if (!at.AcceptAny("fret", "frets") && !(end == ShapeEnd.Root && at.Is("of")))
        {
            return Failure.Expected($"'fret' or 'frets' after '{word.Text}'", at.Current, "fret", "frets");
        }

        if (!at.Accept("of"))
        {
            return Failure.Expected("'of' and a shape", at.Current, "of");
        }

        var first = at.Current;
        var failure = ShapeSets.Read(at, scope, out var shapes);
        frets = shapes is null ? null : new FretSet.OfShapes(end, shapes);
        return failure ?? ShapeSets.Placeless(shapes!, first, at.Previous);
    }

    private static Failure? ReadDegree(Cursor at, Scope scope, out FretSet? frets)
    {
        frets = null;
        at.Skip();
        if (Degrees.Read(at, out var degree) is { } failure)
        {
            return failure;
        }

        if (!at.Accept("on"))
        {
            return Failure.Expected("'on string 2' or another string", at.Current, "on");
        }

        var wrong = Degrees.ReadString(at, scope, out var number);
        frets = wrong is null ? new FretSet.OfDegree(degree, number) : null;
        return wrong;
    }

    private static Failure? ReadNumbers(Cursor at, out FretSet? frets)
    {
        var numbers = new SortedSet<int>();
        frets = null;
        for (int? skip = 0; skip is { } count; skip = NextNumber(at))
        {
            at.Skip(count);
            var token = at.Current;
            if (FretsPhrase.ReadFret(at, out var fret) is { } failure)
            {
                return failure;
            }

            if (!numbers.Add(fret))
            {
                return Failure.At(token, $"fret {fret} is named twice");
            }
        }

        frets = new FretSet.Numbers(numbers.ToValueList());
        return null;
    }

    // "and" goes on with the list when a number follows, unless that counts shapes: 2 of the seventh shapes.
    private static int? NextNumber(Cursor at)
    {
        var skip = at.Current.Kind == TokenKind.Comma ? 1 : 0;
        skip += at.Peek(skip).Is("and") ? 1 : 0;
        return skip > 0 && Numbers.Cardinal(at.Peek(skip)) is not null && !at.Peek(skip + 1).Is("of") ? skip : null;
    }
}
