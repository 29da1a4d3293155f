using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>with a click</c>: a click on every beat, in sound.</summary>
internal static class ClickPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the click",
            PlayPhrase.Click,
            at => at.Peek(Lead(at)).IsAny("click", "clicks", "metronome"),
            Read,
            "with a click",
            "with the metronome",
            "to a click",
            "click on",
            "without a click"
        );

    private static int Lead(Cursor at)
    {
        var lead = at.Current.IsAny("with", "without", "to", "no") ? 1 : 0;
        return lead + (lead > 0 && at.Peek(1).IsAny("a", "the") ? 1 : 0);
    }

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        var isWithout = at.Current.IsAny("without", "no");
        at.Skip(Lead(at) + 1);
        isWithout |= !at.Accept("on") && at.Accept("off");
        draft.Sentence = draft.Sentence with { HasClick = !isWithout };
        return null;
    }
}
