using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary>What stands on the marks.</summary>
internal static class LabelsPhrases
{
    private static readonly (string Word, LabelStyle Style)[] Styles =
    [
        ("degrees", LabelStyle.Degrees),
        ("members", LabelStyle.Members),
        ("names", LabelStyle.Names),
        ("intervals", LabelStyle.Intervals),
        ("fingers", LabelStyle.Fingers),
    ];

    /// <summary><c>as degrees</c>, <c>as members</c>, <c>as names</c>, <c>as intervals</c>, <c>as fingers</c>.</summary>
    public static PhraseKind Labels { get; } =
        new(
            "the labels",
            ShowPhrase.Labels,
            at => at.Is("as"),
            ReadLabels,
            "as degrees",
            "as members",
            "as names",
            "as intervals",
            "as fingers",
            "as note names",
            "as scale degrees",
            "as chord members",
            "as finger numbers"
        );

    /// <summary><c>with fingers</c>, beside other labels.</summary>
    public static PhraseKind Fingers { get; } =
        new(
            "the fingers",
            ShowPhrase.Labels,
            at =>
                at.Is("with")
                && (at.Peek(1).IsAny("fingers", "fingering", "fingerings") || IsFingerNumbers(at.Peek(1), at.Peek(2))),
            ReadFingers,
            "with fingers",
            "with fingering",
            "with finger numbers"
        );

    /// <summary>The word of a style.</summary>
    public static string WordOf(LabelStyle style) => Array.Find(Styles, pair => pair.Style == style).Word;

    private static Failure? ReadLabels(Cursor at, ShowDraft draft)
    {
        at.Skip();
        if (IsFingerNumbers(at.Current, at.Peek(1)))
        {
            at.Skip(2);
            draft.Sentence = draft.Sentence with { Labels = LabelStyle.Fingers };
            return null;
        }

        var isPair =
            (at.Is("note") && at.Peek(1).Is("names"))
            || (at.Is("scale") && at.Peek(1).Is("degrees"))
            || (at.Is("chord") && at.Peek(1).Is("members"));
        at.Skip(isPair ? 1 : 0);
        var token = at.Current;
        if (Array.FindIndex(Styles, pair => token.Is(pair.Word)) is var found && found < 0)
        {
            return Failure.Expected(
                "'degrees', 'members', 'names', 'intervals' or 'fingers' after 'as'",
                token,
                Styles.Select(pair => pair.Word)
            );
        }

        at.Skip();
        draft.Sentence = draft.Sentence with { Labels = Styles[found].Style };
        return null;
    }

    private static bool IsFingerNumbers(Token first, Token second) =>
        first.IsAny("finger", "fingering") && second.IsAny("numbers", "number");

    private static Failure? ReadFingers(Cursor at, ShowDraft draft)
    {
        at.Skip(IsFingerNumbers(at.Peek(1), at.Peek(2)) ? 3 : 2);
        draft.Sentence = draft.Sentence with { IsWithFingers = true };
        return null;
    }
}
