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
                (at.Is("as") && at.Peek(Article(at)).IsAny("arpeggios", "arpeggio", "block", "blocks", "chords"))
                || at.Current.IsAny("arpeggiated", "arpeggio", "arpeggios"),
            Read,
            "as arpeggios",
            "as block chords",
            "as chords",
            "as an arpeggio",
            "arpeggios"
        );

    private static int Article(Cursor at) => at.Peek(1).IsAny("a", "an") ? 2 : 1;

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Skip(at.Is("as") ? Article(at) : 0);
        var isBlock = !at.Current.IsAny("arpeggios", "arpeggio", "arpeggiated");
        var word = at.Current;
        at.Skip();
        at.Accept("of");
        draft.Sentence = draft.Sentence with { IsBlock = isBlock };
        return !word.Is("block") || at.Accept("chords")
            ? null
            : Failure.Expected("'chords' after 'block'", at.Current, "chords");
    }
}
