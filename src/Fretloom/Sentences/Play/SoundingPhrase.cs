using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>as arpeggios</c>, <c>as block chords</c>.</summary>
internal static class SoundingPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the way to sound chords",
            PlayPhrase.Sounding,
            at => NameAt(at, Lead(at)) is not null && (Lead(at) > 0 || !at.Current.IsAny("block", "blocks", "chords")),
            Read,
            "as arpeggios",
            "as block chords",
            "as chords",
            "as an arpeggio",
            "arpeggios",
            "broken chords",
            "in block chords"
        );

    // As, as an, in; the, before arpeggios of some chords.
    private static int Lead(Cursor at)
    {
        var lead = at.Current.IsAny("as", "in") ? 1 : 0;
        return at.Peek(lead).IsAny("a", "an") || (at.Is("the") && at.Peek(2).Is("of")) ? lead + 1 : lead;
    }

    // Whether block chords are named; null when neither they nor arpeggios are.
    private static bool? NameAt(Cursor at, int ahead)
    {
        var word = at.Peek(ahead);
        return word.IsAny("arpeggios", "arpeggio", "arpeggiated") ? false
            : word.Is("broken") && at.Peek(ahead + 1).IsAny("chord", "chords") ? false
            : word.Is("block") || (at.Is("as") && word.IsAny("blocks", "chords")) ? true
            : null;
    }

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Skip(Lead(at));
        var isBlock = NameAt(at, 0) ?? at.Current.IsAny("blocks", "chords");
        var word = at.Current;
        at.Skip(word.Is("broken") ? 2 : 1);
        at.Accept("of");
        draft.Sentence = draft.Sentence with { IsBlock = isBlock };
        return !word.Is("block") || at.AcceptAny("chords", "chord")
            ? null
            : Failure.Expected("'chords' after 'block'", at.Current, "chords");
    }
}
