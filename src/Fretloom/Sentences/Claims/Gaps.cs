using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>Distances as values: <c>neighbouring full frets lie at most 5 frets apart</c>, <c>the gap between the full frets and the empty frets is exactly 1 fret</c>.</summary>
internal static class Gaps
{
    private static readonly string[] Spellings = ["neighbouring", "neighboring"];

    /// <summary>Whether neighbours are spoken of here.</summary>
    public static bool IsNeighbours(Cursor at) => at.Current.IsAny(Spellings);

    /// <summary>Reads <c>neighbouring full frets lie at most 5 frets apart</c>.</summary>
    public static Failure? ReadNeighbours(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        at.Skip();
        return FretNouns.Read(at, scope, out var noun) ?? ReadApart(at, noun, out claim);
    }

    /// <summary>Whether <c>lie at most 5 frets apart</c> stands here.</summary>
    public static bool IsApart(Cursor at)
    {
        var ahead = 1;
        while (ahead < 4 && (at.Peek(ahead).IsAny("exactly", "at", "least", "most", "more", "fewer", "less", "than")))
        {
            ahead++;
        }

        return at.Current.IsAny("lie", "are")
            && Numbers.Cardinal(at.Peek(ahead)) is not null
            && at.Peek(ahead + 1).IsAny("fret", "frets")
            && at.Peek(ahead + 2).Is("apart");
    }

    /// <summary>Reads <c>lie at most 5 frets apart</c>.</summary>
    public static Failure? ReadApart(Cursor at, FretNoun noun, out Claim? claim)
    {
        claim = null;
        if (!at.AcceptAny("lie", "are"))
        {
            return Failure.Expected("'lie' and how far apart", at.Current, "lie");
        }

        if (ReadFrets(at, out var count) is { } failure)
        {
            return failure;
        }

        claim = new Claim.NeighboursLieApart(noun, count);
        return Phrase.Read(at, "apart");
    }

    /// <summary>Reads what is said of a gap; <c>the gap</c> stands here.</summary>
    public static Failure? ReadGap(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        at.Skip(2);
        if (Phrase.Read(at, "between") is { } missing)
        {
            return missing;
        }

        if (IsNeighbours(at))
        {
            at.Skip();
            if ((FretNouns.Read(at, scope, out var noun) ?? Phrase.Read(at, "is")) is { } wrong)
            {
                return wrong;
            }

            var failure = ReadFrets(at, out var apart);
            claim = new Claim.NeighboursLieApart(noun, apart);
            return failure;
        }

        return ReadBetween(at, scope, out claim);
    }

    private static Failure? ReadBetween(Cursor at, Scope scope, out Claim? claim)
    {
        claim = null;
        if (FretSets.Read(at, scope, out var one) is { } failure)
        {
            return failure;
        }

        if (Phrase.Read(at, "and") is { } missing)
        {
            return missing;
        }

        if ((FretSets.Read(at, scope, out var other) ?? Phrase.Read(at, "is")) is { } wrong)
        {
            return wrong;
        }

        var last = ReadFrets(at, out var count);
        claim = new Claim.GapIs(one!, other!, count);
        return last;
    }

    /// <summary>Reads <c>and the empty frets lie 1 fret apart</c>, which is said of two sets; <c>fret 5 and fret 10</c> may also be one.</summary>
    public static Failure? ReadPair(Cursor at, Scope scope, FretSet one, out Claim? claim)
    {
        claim = null;
        at.Skip();
        if (FretSets.Read(at, scope, out var other) is { } failure)
        {
            return failure;
        }

        if (one is FretSet.Numbers some && other is FretSet.Numbers more && !IsApart(at))
        {
            var both = new FretSet.Numbers(some.Frets.Concat(more.Frets).Distinct().Order().ToValueList());
            var lies = FretRelations.Read(at, scope, isWhole: true, out var relation);
            claim = lies is null ? new Claim.OfFrets(both, null, relation!) : null;
            return lies;
        }

        if (!at.AcceptAny("lie", "are"))
        {
            return Failure.Expected("'lie' and how far apart the two are", at.Current, "lie");
        }

        if (ReadFrets(at, out var count) is { } wrong)
        {
            return wrong;
        }

        claim = new Claim.GapIs(one, other!, count);
        return Phrase.Read(at, "apart");
    }

    private static Failure? ReadFrets(Cursor at, out Count count) =>
        Counts.Read(at, out count)
        ?? (at.AcceptAny("fret", "frets") ? null : Failure.Expected("'frets'", at.Current, "frets", "fret"));
}
