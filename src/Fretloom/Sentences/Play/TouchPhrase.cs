using Fretloom.Exercises;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>sustained</c>, <c>short</c>: how notes end.</summary>
internal static class TouchPhrase
{
    private static readonly string[] Longs = ["sustained", "ringing"];
    private static readonly string[] Shorts = ["short", "staccato", "damped"];

    public static PlayPhraseKind Kind { get; } =
        new(
            "the touch",
            PlayPhrase.Touch,
            at => at.Current.IsAny([.. Longs, .. Shorts]) || (at.Is("let") && at.Peek(1).Is("ring")),
            Read,
            "sustained",
            "let ring",
            "short",
            "staccato"
        );

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        var isShort = at.Current.IsAny(Shorts);
        at.Skip(at.Is("let") ? 2 : 1);
        draft.Sentence = draft.Sentence with { Touch = isShort ? Touching.Short : Touching.Sustained };
        return null;
    }
}
