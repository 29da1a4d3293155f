using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary><c>3 notes a string</c>: how a scale is laid out. (One note per string is a voicing of chords.)</summary>
internal static class NotesPerStringPhrase
{
    private const int Most = 6;

    public static PhraseKind Kind { get; } =
        new(
            "the number of notes a string",
            ShowPhrase.Subject,
            at => Numbers.Cardinal(at.Current) is not (null or 1) && at.Peek(1).IsAny("note", "notes"),
            Read,
            "3 notes a string",
            "three notes per string",
            "2 notes on each string"
        );

    /// <summary>Reads <c>a string</c>, <c>per string</c>, <c>on each string</c>.</summary>
    public static Failure? ReadPerString(Cursor at)
    {
        at.Accept("on");
        if (!at.AcceptAny("a", "per", "each", "every"))
        {
            return Failure.Expected("'a string' or 'per string'", at.Current, "a", "per", "on");
        }

        return at.Accept("string")
            ? null
            : Failure.Expected($"'string' after '{at.Previous.Text}'", at.Current, "string");
    }

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        var token = at.Current;
        var count = Numbers.Cardinal(token)!.Value;
        at.Skip(2);
        draft.NotesPerString = count;
        return ReadPerString(at)
            ?? (
                count is >= 2 and <= Most
                    ? null
                    : Failure.At(token, $"expected 2 to {Most} notes a string, found {Failure.Shown(token)}")
            );
    }
}
