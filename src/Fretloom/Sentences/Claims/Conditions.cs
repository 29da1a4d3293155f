using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>the string set is palindromic</c>, <c>the string set has equal steps</c>, <c>the key is not harmonic minor</c>.</summary>
internal static class Conditions
{
    /// <summary>Reads what is said of the string set.</summary>
    public static Failure? ReadStringSet(Cursor at, out Claim? claim)
    {
        claim = at.Peek(3).Is("has") ? new Claim.HasEqualSteps() : new Claim.IsPalindromic();
        return claim is Claim.HasEqualSteps
            ? Phrase.Read(at, "the", "string", "set", "has", "equal", "steps")
            : Phrase.Read(at, "the", "string", "set", "is", "palindromic");
    }

    /// <summary>Reads what is said of the kind of key.</summary>
    public static Failure? ReadKey(Cursor at, out Claim? claim)
    {
        claim = null;
        at.Skip(3);
        var isNot = at.Accept("not");
        var first = at.Current;
        var (kind, count) = Notes.ReadKind(at, 0);
        if (kind is null)
        {
            return Failure.Expected(
                $"a kind of key such as 'major' or 'harmonic minor' after '{at.Previous.Text}'",
                first,
                [.. Notes.KindWords, "not"]
            );
        }

        if (KeysPhrase.IsAnyMinor(first, count))
        {
            return Failure.At(
                first,
                "which minor? say 'natural minor', 'harmonic minor' or 'melodic minor'",
                Edit.Of(first, "natural minor")
            );
        }

        at.Skip(count);
        claim = kind.IsSevenNote ? new Claim.KeyIs(kind, isNot) : null;
        return claim is not null
            ? null
            : Failure.At(first, at.Previous, $"a key has seven notes and {kind} has {kind.Intervals.Count}");
    }
}
