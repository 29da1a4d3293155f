using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary><c>on strings 4-1</c>, <c>on strings 6, 4, 3 and 2</c>, <c>on all strings</c>.</summary>
internal static class StringsPhrase
{
    public static PhraseKind Kind { get; } =
        new(
            "the strings",
            ShowPhrase.Strings,
            at =>
                at.Peek(Lead(at)).IsAny("string", "strings")
                && (at.Is("on") || Numbers.Cardinal(at.Peek(1)) is not null),
            Read,
            "on strings 4-1",
            "on strings 4 to 1",
            "on strings 6, 4, 3 and 2",
            "on string 3",
            "on all strings",
            "on every string"
        );

    private static int Lead(Cursor at)
    {
        var ahead = at.Is("on") ? 1 : 0;
        ahead += at.Peek(ahead).IsAny("all", "every", "each") ? 1 : 0;
        return ahead + (at.Peek(ahead).Is("the") ? 1 : 0);
    }

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        var isAll = at.Peek(1).IsAny("all", "every", "each");
        at.Skip(Lead(at) + 1);
        draft.Strings.Clear();
        if (isAll)
        {
            draft.Sentence = draft.Sentence with { IsOnAllStrings = true };
            return null;
        }

        // A number of notes a string, or of shapes, is no string.
        bool IsOther(int ahead) => at.Peek(ahead + 1).IsAny("note", "notes") || OneShapePhrase.Begins(at, ahead);
        var failure = StringNumbers.Read(at, draft.Strings, IsOther, out var set);
        draft.Sentence = draft.Sentence with { Strings = failure is null ? set : null };
        return failure;
    }
}
