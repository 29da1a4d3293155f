using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>as arpeggios</c>, <c>as block chords</c>.</summary>
internal static class SoundingPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the way to sound chords",
            PlayPhrase.Sounding,
            at =>
                (at.Is("as") && at.Peek(1).IsAny("arpeggios", "arpeggio", "block", "blocks", "chords"))
                || at.Is("arpeggiated"),
            Read,
            "as arpeggios",
            "as block chords",
            "as chords"
        );

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Accept("as");
        var isBlock = !at.Current.IsAny("arpeggios", "arpeggio", "arpeggiated");
        var word = at.Current;
        at.Skip();
        draft.Sentence = draft.Sentence with { IsBlock = isBlock };
        return !word.Is("block") || at.Accept("chords")
            ? null
            : Failure.Expected("'chords' after 'block'", at.Current, "chords");
    }
}
