using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>twice</c>, <c>4 times</c>: how often each tempo is played through.</summary>
internal static class TimesPhrase
{
    /// <summary>What to say where a length is asked for.</summary>
    public const string HowLong =
        "an exercise is as long as what is played; say how often it is played, such as 'four times'";

    public static PlayPhraseKind Kind { get; } =
        new(
            "the number of times",
            PlayPhrase.Times,
            at =>
                at.Current.IsAny("repeat", "repeated", "loop", "looped")
                || (at.Is("for") && Numbers.Cardinal(at.Peek(1)) is not null && at.Peek(2).IsAny(Lengths))
                || at.Peek(Lead(at)).IsAny("once", "twice")
                || (Numbers.Cardinal(at.Peek(Lead(at))) is not null && at.Peek(Lead(at) + 1).IsAny("time", "times")),
            Read,
            "once",
            "twice",
            "three times",
            "played 4 times",
            "repeat twice"
        );

    private static readonly string[] Lengths =
    [
        "bar",
        "bars",
        "measure",
        "measures",
        "minute",
        "minutes",
        "second",
        "seconds",
    ];

    private static int Lead(Cursor at) =>
        at.Current.IsAny("played", "repeat", "repeated", "loop", "looped", "each") ? 1 : 0;

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        if (at.Is("for"))
        {
            return Failure.At(at.Current, at.Peek(2), HowLong);
        }

        at.Skip(Lead(at));
        var token = at.Current;
        if (!token.IsAny("once", "twice") && Numbers.Cardinal(token) is null)
        {
            return Failure.Expected($"how often, such as 'twice' or '4 times', after '{at.Previous.Text}'", token);
        }

        at.Skip();
        at.AcceptAny("time", "times");
        var times =
            token.Is("once") ? 1
            : token.Is("twice") ? 2
            : Numbers.Cardinal(token)!.Value;
        if (times is < 1 or > PlaySentence.MostTimes)
        {
            return Failure.At(
                token,
                $"expected once to {PlaySentence.MostTimes} times, found {Failure.Shown(token)}",
                Edit.Of(token, times < 1 ? "1" : $"{PlaySentence.MostTimes}")
            );
        }

        draft.Sentence = draft.Sentence with { Times = times };
        return null;
    }
}
