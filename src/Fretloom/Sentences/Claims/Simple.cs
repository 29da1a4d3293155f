using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>Reads one claim without <c>if</c>, <c>and</c> or <c>or</c>.</summary>
internal static class Simple
{
    private const string Expected =
        "what is claimed, such as 'there are', 'the key pattern', 'the half-turn', 'every', 'the full frets' or 'degree 2'";

    /// <summary>The words that a claim begins with.</summary>
    public static readonly string[] Openings =
    [
        "if",
        "there",
        "the",
        "every",
        "some",
        "no",
        "exactly",
        "degree",
        "fret",
        "frets",
        "neighbouring",
    ];

    /// <summary>Whether a claim begins here.</summary>
    public static bool Begins(Cursor at) =>
        at.Current.IsAny(Openings)
        || at.Current.IsAny("each", "all", "a", "an", "neighboring", "there's", "strings")
        || ShapeNouns.Numeral(at).Numeral is not null
        || (Numbers.Cardinal(at.Current) is not null && at.Peek(1).Is("of"));

    /// <summary>Reads the claim.</summary>
    public static Failure? Read(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        return at.Is("there") ? ThereAre.Read(at, scope, out claim)
            : at.Is("there's")
                ? Failure.At(at.Current, "expected 'there is', found 'there's'", Edit.Of(at.Current, "there is"))
            : at.Is("degree") ? ReadStands(at, scope, out claim)
            : Gaps.IsNeighbours(at) ? Gaps.ReadNeighbours(at, scope, out claim)
            : at.Is("the") ? ReadThe(at, scope, out claim)
            : FretSets.Begins(at) ? ReadFrets(at, scope, out claim)
            : at.Current.IsAny("every", "each", "all", "some", "no") ? ReadQuantified(at, scope, out claim)
            : at.Is("exactly") || Numbers.Cardinal(at.Current) is not null || ShapeNouns.Numeral(at).Numeral is not null
                ? ReadShapes(at, scope, out claim)
            : at.Is("strings") ? Patterns.ReadStrings(at, scope, out claim)
            : Failure.Expected(Expected, at.Current, Openings);
    }

    private static Failure? ReadThe(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        if (at.Peek(1).Is("string"))
        {
            return Conditions.ReadStringSet(at, out claim);
        }

        return at.Peek(1).Is("key") && at.Peek(2).Is("is") ? Conditions.ReadKey(at, out claim)
            : at.Peek(1).Is("key") ? Patterns.Read(at, scope, out claim)
            : at.Peek(1).Is("gap") ? Gaps.ReadGap(at, scope, out claim)
            : at.Peek(1).IsAny("span", "stretch") ? ShapePredicates.ReadMeasure(at, scope, out claim)
            : FretSets.Begins(at) ? ReadFrets(at, scope, out claim)
            : at.Peek(1).Is("half-turn") ? HalfTurns.Read(at, scope, out claim)
            : IsMisspelled(at.Peek(1)) ? Misspelled(at.Peek(1))
            : ReadShapes(at, scope, out claim);
    }

    private static Failure? ReadFrets(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        var article = at.Current;
        if (FretSets.Read(at, scope, out var frets) is { } failure)
        {
            return failure;
        }

        if (at.Is("and"))
        {
            return Gaps.ReadPair(at, scope, frets!, out claim);
        }

        if (frets is FretSet.Named named && Gaps.IsApart(at))
        {
            return Gaps.ReadApart(at, named.Noun, out claim);
        }

        if (article.IsAny("a", "an"))
        {
            return WhichOne(article, at.Previous, frets!);
        }

        var wrong = FretRelations.Read(at, scope, isWhole: true, out var relation);
        claim = wrong is null ? new Claim.OfFrets(frets!, null, relation!) : null;
        return wrong;
    }

    // "A full fret lies next to an empty fret" may be meant of every one or of some.
    private static Failure WhichOne(Token article, Token last, FretSet frets)
    {
        if (frets is not FretSet.Named { Noun: var noun })
        {
            return Failure.At(
                article,
                $"expected 'the' before these frets, found {Failure.Shown(article)}",
                Edit.Of(article, "the")
            );
        }

        var name = FretWords.Noun(noun, isPlural: false);
        return Failure.At(
            article,
            last,
            $"which {name}? say 'every {name}' or 'some {name}'",
            Edit.Of(article, "every")
        ) with
        {
            NamesChange = true,
        };
    }

    private static Failure? ReadQuantified(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        var word = at.Current;
        if (!FretNouns.Begins(at, 1))
        {
            return IsMisspelled(at.Peek(1)) ? Misspelled(at.Peek(1)) : ReadShapes(at, scope, out claim);
        }

        at.Skip();
        if (FretNouns.Read(at, scope, out var noun) is { } failure)
        {
            return failure;
        }

        var wrong = FretRelations.Read(at, scope, isWhole: false, out var relation);
        claim = wrong is null ? new Claim.OfFrets(new FretSet.Named(noun), QuantityOf(word), relation!) : null;
        return wrong;
    }

    private static Failure? ReadShapes(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        if (ShapeSets.Read(at, scope, out var shapes) is { } failure)
        {
            return failure;
        }

        if (at.Accept("and"))
        {
            return ReadAlike(at, scope, shapes!, out claim);
        }

        var wrong = ShapePredicates.Read(at, scope, shapes!, out var says);
        var subject = says is ShapePredicate.IsThatOfDegree ? KeyChords.OnDegree(shapes!, scope.Keys!) : shapes!;
        claim = wrong is null ? new Claim.OfShapes(subject, says!) : null;
        return wrong;
    }

    // V and IV have the same shape.
    private static Failure? ReadAlike(Cursor at, Scope scope, ShapeSet one, out Claim? claim)
    {
        claim = null;
        if ((ShapeSets.Read(at, scope, out var other) ?? Phrase.Read(at, "have", "the", "same")) is { } failure)
        {
            return failure;
        }

        claim = new Claim.OfShapes(one, new ShapePredicate.HasSameFormAs(other!));
        return at.AcceptAny("form", "shape")
            ? null
            : Failure.Expected("'form' after 'same'", at.Current, "form", "shape");
    }

    private static Failure? ReadStands(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        if (Degrees.Read(at, out var degree) is { } failure)
        {
            return failure;
        }

        if (Phrase.Read(at, "stands", "on") is { } missing)
        {
            return missing;
        }

        if ((Degrees.ReadString(at, scope, out var number) ?? Phrase.Read(at, "at")) is { } wrong)
        {
            return wrong;
        }

        var word = at.Current;
        if (!at.AcceptAny("every", "each", "some", "a", "an", "no"))
        {
            return Failure.Expected("'every', 'some' or 'no' after 'at'", word, "every", "some", "no");
        }

        var last = FretNouns.Read(at, scope, out var noun);
        claim = new Claim.DegreeStands(degree, number, QuantityOf(word), noun);
        return last;
    }

    private static Quantity QuantityOf(Token word) =>
        word.IsAny("every", "each", "all") ? new Quantity.Every()
        : word.Is("no") ? new Quantity.No()
        : new Quantity.Some();

    // Behind "the" and "every" many things may stand: one list of words for all of them.
    private static bool IsMisspelled(Token token) =>
        token.Kind == TokenKind.Word && !Vocabulary.Knows(token.Text) && Spelling.Edits(token, Nouns).Length > 0;

    private static readonly string[] Nouns =
    [
        .. FretNouns.Openings,
        .. ShapeNouns.Words,
        "key",
        "string",
        "gap",
        "span",
        "stretch",
        "frets",
        "root",
        "first",
        "last",
    ];

    private static Failure Misspelled(Token token) => Failure.Expected("frets, a shape or a pattern", token, Nouns);
}
