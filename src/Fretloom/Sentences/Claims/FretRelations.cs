using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>How frets lie to others: <c>lie on</c>, <c>lie next to</c>, <c>lie 1 fret above</c>, <c>include</c>, <c>avoid</c>, <c>are</c>.</summary>
internal static class FretRelations
{
    private static readonly string[] Verbs = ["lies", "lie", "includes", "include", "avoids", "avoid", "is", "are"];

    /// <summary>Reads a relation.</summary>
    /// <param name="at">The place.</param>
    /// <param name="scope">What the sentence speaks of.</param>
    /// <param name="isWhole">Whether the frets before it are spoken of as a whole, and so may be equal to others.</param>
    /// <param name="relation">What was read.</param>
    public static Failure? Read(Cursor at, Scope scope, bool isWhole, out FretRelation? relation)
    {
        relation = null;
        var verb = at.Current;
        at.Skip(verb.IsAny(Verbs) ? 1 : 0);
        return verb.IsAny("lies", "lie") ? ReadLie(at, scope, verb, out relation)
            : verb.IsAny("includes", "include") ? ReadInclude(at, scope, out relation)
            : verb.IsAny("avoids", "avoid") ? ReadFrets(at, scope, frets => new FretRelation.Avoid(frets), out relation)
            : verb.IsAny("is", "are") ? ReadAre(at, scope, isWhole, verb, out relation)
            : Failure.Expected(
                isWhole
                    ? "how the frets lie ('lie on', 'lie next to', 'lie halfway between', 'include', 'are')"
                    : "how the fret lies ('lies on', 'lies next to', 'lies halfway between', 'includes', 'avoids')",
                verb,
                Verbs
            );
    }

    // All of them: "a full fret" would be one.
    private static Failure? ReadInclude(Cursor at, Scope scope, out FretRelation? relation)
    {
        relation = null;
        var article = at.Current;
        return article.IsAny("a", "an") && FretNouns.Begins(at, 1)
            ? Failure.At(
                article,
                at.Peek(2),
                $"one or all of them? say 'include the {at.Peek(1).Text.ToLowerInvariant()} {FretNouns.Plural(at.Peek(1))}', or 'some {at.Words(1, 2).ToLowerInvariant()} lies on ...'",
                Edit.Of(article, at.Peek(2), $"the {at.Peek(1).Text} {FretNouns.Plural(at.Peek(1))}")
            )
            : ReadFrets(at, scope, frets => new FretRelation.Include(frets), out relation);
    }

    private static Failure? ReadLie(Cursor at, Scope scope, Token verb, out FretRelation? relation)
    {
        relation = null;
        if (at.Accept("on"))
        {
            return ReadFrets(at, scope, frets => new FretRelation.LieOn(frets), out relation);
        }

        if (at.Accept("next"))
        {
            return at.Accept("to")
                ? ReadFrets(at, scope, frets => new FretRelation.LieNextTo(frets), out relation)
                : Failure.Expected("'to' after 'next'", at.Current, "to");
        }

        if (at.Accept("halfway"))
        {
            return ReadHalfway(at, scope, out relation);
        }

        if (at.Is("between"))
        {
            return Failure.At(
                at.Current,
                "anywhere between them, or in the middle? expected 'halfway between', found 'between'",
                Edit.Of(at.Current, "halfway between")
            );
        }

        if (Numbers.Cardinal(at.Current) is null)
        {
            return Failure.Expected(
                $"'on', 'next to', 'halfway between' or a distance such as '1 fret above' after '{verb.Text}'",
                at.Current,
                ["on", "next", "halfway", .. Numbers.Words]
            );
        }

        if (Moves.ReadFrets(at, out var distance) is { } failure)
        {
            return failure;
        }

        var isBelow = at.Is("below");
        return at.AcceptAny("above", "below")
            ? ReadFrets(
                at,
                scope,
                frets => new FretRelation.LieApart(isBelow ? -distance : distance, frets),
                out relation
            )
            : Failure.Expected("'above' or 'below'", at.Current, "above", "below");
    }

    // Between a full fret and an empty fret; between two full frets.
    private static Failure? ReadHalfway(Cursor at, Scope scope, out FretRelation? relation)
    {
        relation = null;
        if (Phrase.Read(at, "between") is { } missing)
        {
            return missing;
        }

        if (FretNouns.Begins(at, 1) && at.AcceptAny("two", "2"))
        {
            var wrong = FretNouns.Read(at, scope, out var noun);
            relation = new FretRelation.LieHalfway(new FretSet.Named(noun), new FretSet.Named(noun));
            return wrong;
        }

        if ((FretSets.Read(at, scope, out var one) ?? Phrase.Read(at, "and")) is { } failure)
        {
            return failure;
        }

        var last = FretSets.Read(at, scope, out var other);
        relation = last is null ? new FretRelation.LieHalfway(one!, other!) : null;
        return last;
    }

    private static Failure? ReadAre(Cursor at, Scope scope, bool isWhole, Token verb, out FretRelation? relation)
    {
        relation = null;
        if (at.Accept("carried"))
        {
            return ReadCarried(at, out relation);
        }

        if (IsOneOf(at))
        {
            return ReadOneOf(at, scope, out relation);
        }

        if (at.Is("not"))
        {
            return ReadNot(at, scope, verb, out relation);
        }

        return isWhole
            ? ReadFrets(at, scope, frets => new FretRelation.Are(frets), out relation)
            : Failure.At(
                at.Current,
                $"expected 'lies on' (use 'are' only after 'the'), found {Failure.Shown(at.Current)}",
                Edit.Of(verb, "lies on")
            );
    }

    // A full fret, not a full fret, full frets, full: each fret is one of them. The full frets: both are the same.
    private static bool IsOneOf(Cursor at)
    {
        var ahead = at.Current.IsAny("not", "never") ? 1 : 0;
        ahead += at.Peek(ahead).IsAny("a", "an") ? 1 : 0;
        return FretNouns.Begins(at, ahead)
            || FretNouns.IsAdjective(at, ahead)
            || (at.Peek(ahead).IsAny("one", "none") && at.Peek(ahead + 1).Is("of"));
    }

    private static Failure? ReadOneOf(Cursor at, Scope scope, out FretRelation? relation)
    {
        relation = null;
        var not = at.Current;
        var isNot = at.AcceptAny("not", "never");
        if (isNot && at.Is("none"))
        {
            return Failure.At(
                not,
                at.Current,
                $"'{not.Text} none' says no twice: say 'one of' or 'none of'",
                Edit.Of(not, at.Current, "one")
            ) with
            {
                NamesChange = true,
            };
        }

        isNot |= at.Is("none");
        if (FretNouns.IsAdjective(at, 0))
        {
            relation = Lie(new FretSet.Named(FretNouns.ReadAdjective(at)));
            return null;
        }

        at.Skip(at.Peek(1).Is("of") && at.Current.IsAny("one", "none") ? 2 : 0);
        return ReadFrets(at, scope, Lie, out relation);

        FretRelation Lie(FretSet frets) => isNot ? new FretRelation.Avoid(frets) : new FretRelation.LieOn(frets);
    }

    // Fret 5 is not fret 7. Of several "are not" may mean that none is one of the others, or that both are not the same.
    private static Failure? ReadNot(Cursor at, Scope scope, Token verb, out FretRelation? relation)
    {
        var not = at.Current;
        at.Skip();
        var failure = FretSets.Read(at, scope, out var frets);
        relation = failure is null ? new FretRelation.Avoid(frets!) : null;
        if (failure is not null || (verb.Is("is") && !FretWords.IsPlural(frets!)))
        {
            return failure;
        }

        relation = null;
        var avoid = verb.Is("is") ? "avoids" : "avoid";
        return Failure.At(
            verb,
            not,
            $"'{verb.Text} not' may be said of each or of all together: say '{avoid}' if none is one of these",
            Edit.Of(verb, not, avoid)
        ) with
        {
            NamesChange = true,
        };
    }

    private static Failure? ReadCarried(Cursor at, out FretRelation? relation)
    {
        relation = null;
        foreach (var word in "to themselves by the half-turn".Split(' '))
        {
            if (!at.Accept(word) && !(word == "themselves" && at.Accept("itself")))
            {
                return Failure.Expected($"'{word}' after '{at.Previous.Text}'", at.Current, word);
            }
        }

        relation = new FretRelation.AreCarriedToThemselves();
        return null;
    }

    private static Failure? ReadFrets(
        Cursor at,
        Scope scope,
        Func<FretSet, FretRelation> make,
        out FretRelation? relation
    )
    {
        var failure = FretSets.Read(at, scope, out var frets);
        relation = failure is null ? make(frets!) : null;
        return failure;
    }
}
