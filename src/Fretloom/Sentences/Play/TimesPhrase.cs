using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>twice</c>, <c>4 times</c>: how often each tempo is played through.</summary>
internal static class TimesPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the number of times",
            PlayPhrase.Times,
            at =>
                at.Peek(Lead(at)).IsAny("once", "twice")
                || (Numbers.Cardinal(at.Peek(Lead(at))) is not null && at.Peek(Lead(at) + 1).IsAny("time", "times")),
            Read,
            "once",
            "twice",
            "three times",
            "played 4 times",
            "repeat twice"
        );

    private static int Lead(Cursor at) => at.Current.IsAny("played", "repeat", "repeated", "each") ? 1 : 0;

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Skip(Lead(at));
        var token = at.Current;
        at.Skip();
        at.AcceptAny("time", "times");
        var times =
            token.Is("once") ? 1
            : token.Is("twice") ? 2
            : Numbers.Cardinal(token)!.Value;
        if (times is < 1 or > PlaySentence.MostTimes)
        {
            return Failure.At(token, $"expected once to {PlaySentence.MostTimes} times, found {Failure.Shown(token)}");
        }

        draft.Sentence = draft.Sentence with { Times = times };
        return null;
    }
}
