using Fretloom.Exercises;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>in 3/4</c>.</summary>
internal static class MetrePhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the metre",
            PlayPhrase.Metre,
            at =>
                IsFraction(at.Peek(Lead(at)))
                || (at.Peek(Lead(at)).IsAny("common", "waltz") && at.Peek(Lead(at) + 1).Is("time")),
            Read,
            "in 4/4",
            "in 3/4 time",
            "in 6/8",
            "in common time",
            "3/4 time"
        );

    private static int Lead(Cursor at) => at.Is("in") ? 1 : 0;

    private static bool IsFraction(Token token) =>
        token.Kind == TokenKind.Word
        && token.Text.Length > 2
        && char.IsAsciiDigit(token.Text[0])
        && token.Text.Contains('/', StringComparison.Ordinal);

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Accept("in");
        var token = at.Current;
        at.Skip();
        at.AcceptAny("time", "metre", "meter");
        var text =
            token.Is("common") ? "4/4"
            : token.Is("waltz") ? "3/4"
            : token.Text;
        var isMetre = Metre.TryParse(text, out var metre);
        draft.Sentence = draft.Sentence with { Metre = metre };
        return isMetre
            ? null
            : Failure.At(token, $"expected 2/4, 3/4, 4/4, 5/4, 6/8, 9/8 or 12/8, found {Failure.Shown(token)}");
    }
}
