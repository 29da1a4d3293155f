using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary><c>one shape each</c>: of everything that has many shapes, only the first.</summary>
internal static class OneShapePhrase
{
    public static PhraseKind Kind { get; } =
        new(
            "the number of shapes",
            ShowPhrase.Shapes,
            at => Begins(at, 0),
            Read,
            "one shape each",
            "one shape per chord",
            "one of each",
            "the first shape of each chord"
        );

    /// <summary>Whether the phrase stands some tokens ahead.</summary>
    public static bool Begins(Cursor at, int ahead) =>
        Lead(at, ahead) is > 0 and var lead
        && (
            at.Peek(ahead + lead).IsAny("shape", "each")
            || (at.Peek(ahead + lead).IsAny("of", "for") && at.Peek(ahead + lead + 1).IsAny("each", "every"))
        );

    // One, the first, only one, just the first.
    private static int Lead(Cursor at, int ahead)
    {
        var lead = at.Peek(ahead).IsAny("only", "just") ? 1 : 0;
        lead += at.Peek(ahead + lead).Is("the") ? 1 : 0;
        return at.Peek(ahead + lead).IsAny("first", "one", "1") ? lead + 1 : 0;
    }

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        at.Skip(Lead(at, 0));
        at.Accept("shape");
        at.AcceptAny("of", "for");
        draft.Sentence = draft.Sentence with { IsOneShapeEach = true };
        if (!at.AcceptAny("each", "every", "per", "a"))
        {
            return Failure.Expected("'each' or 'per chord' after 'one shape'", at.Current, "each", "per");
        }

        var isEach = at.Previous.Is("each");
        return at.AcceptAny("chord", "scale") || isEach
            ? null
            : Failure.Expected($"'chord' after '{at.Previous.Text}'", at.Current, "chord");
    }
}
