using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>for tuning</c>, which goes with the open strings.</summary>
internal static class TuningPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the tuning",
            PlayPhrase.Tuning,
            at => at.Is("for") && at.Peek(1).Is("tuning"),
            Read,
            "for tuning",
            "for tuning up"
        );

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Skip(2);
        at.Accept("up");
        draft.Sentence = draft.Sentence with { IsForTuning = true };
        return null;
    }
}
