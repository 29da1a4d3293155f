using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary><c>in D major</c>, <c>in B-flat major</c>, <c>in the key of A minor</c>.</summary>
internal static class KeyPhrase
{
    public static PhraseKind Kind { get; } =
        new(
            "the key",
            ShowPhrase.Key,
            Begins,
            Read,
            "in D major",
            "in A minor",
            "in B-flat major",
            "in Bb major",
            "in F# harmonic minor",
            "in A melodic minor",
            "in E dorian",
            "in the key of G major"
        );

    /// <summary>Reads a key, without <c>in</c>.</summary>
    public static Failure? Read(Cursor at, out Key? key)
    {
        key = null;
        var first = at.Current;
        if (Notes.German(first) is { } german)
        {
            return german;
        }

        var tonicLength = Notes.Read(at, 0, out var tonic);
        if (tonicLength == 0)
        {
            return Failure.Expected("a key such as 'D major' or 'A minor'", first);
        }

        var (kind, kindLength) = Notes.ReadKind(at, tonicLength);
        if (kind is null)
        {
            return WithoutKind(at, tonicLength);
        }

        at.Skip(tonicLength + kindLength);
        if (!kind.IsSevenNote)
        {
            var name = $"{tonic} {kind}";
            var near = $"{tonic} {(kind.IsMinor ? ScaleKind.NaturalMinor : ScaleKind.Major)}";
            return Failure.At(
                first,
                at.Previous,
                $"a key has seven notes and {name} has {kind.Intervals.Count}: name {name} as what to show",
                Edit.Of(first, at.Previous, near)
            );
        }

        key = new Key(tonic, kind);
        return null;
    }

    private static bool Begins(Cursor at)
    {
        if (!at.Is("in"))
        {
            // The triads of G major.
            return at.Is("of") && Notes.ReadScale(at, 1).Scale?.Kind.IsSevenNote == true;
        }

        var isArticle =
            at.Peek(1) is { Text: "a" } && Notes.ReadKind(at, 2).Kind is null && !at.Peek(2).IsAny("flat", "sharp");
        return at.Peek(Lead(at)) is var token
            && (Lead(at) > 1 || Notes.German(token) is not null || (!isArticle && Notes.Read(at, 1, out _) > 0));
    }

    private static int Lead(Cursor at) =>
        at.Peek(1).Is("the") && at.Peek(2).Is("key") && at.Peek(3).Is("of") ? 4
        : at.Peek(1).Is("key") && at.Peek(2).Is("of") ? 3
        : 1;

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        at.Skip(Lead(at));
        var failure = Read(at, out var key);
        draft.Sentence = draft.Sentence with { Key = key };
        return failure;
    }

    private static Failure WithoutKind(Cursor at, int tonicLength)
    {
        var (first, last, next) = (at.Current, at.Peek(tonicLength - 1), at.Peek(tonicLength));
        var tonic = at.Words(0, tonicLength);
        var words = Spelling.Edits(next, Notes.KindWords);
        if (next.Kind == TokenKind.Word && (words.Length > 0 || !Vocabulary.Knows(next.Text)))
        {
            return Failure.Expected(
                $"'major', 'minor', 'harmonic minor', 'dorian' or another kind of key after '{tonic}'",
                next,
                Notes.KindWords
            );
        }

        return Failure.At(
            first,
            last,
            $"expected a key after 'in', found only its tonic '{tonic}'",
            Edit.Of(first, last, $"{tonic} major")
        );
    }
}
