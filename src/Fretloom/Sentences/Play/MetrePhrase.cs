using System.Globalization;
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
                || Spoken(at, Lead(at)).Count > 0
                || (at.Peek(Lead(at)).IsAny("common", "waltz", "cut") && at.Peek(Lead(at) + 1).Is("time")),
            Read,
            "in 4/4",
            "in 3/4 time",
            "in 6/8",
            "in common time",
            "in three-four time",
            "3/4 time"
        );

    private static int Lead(Cursor at) => at.Is("in") ? 1 : 0;

    private static bool IsFraction(Token token) =>
        token.Kind == TokenKind.Word
        && token.Text.Length > 2
        && char.IsAsciiDigit(token.Text[0])
        && token.Text.Contains('/', StringComparison.Ordinal);

    // Three-four; three four time.
    private static (string Figures, int Count) Spoken(Cursor at, int ahead)
    {
        var token = at.Peek(ahead);
        var words = token.Text.Split('-');
        var isJoined = token.Kind == TokenKind.Word && words.Length == 2 && words[0].Length > 0 && words[1].Length > 0;
        var (upper, lower) = isJoined
            ? (token with { Text = words[0] }, token with { Text = words[1] })
            : (token, at.Peek(ahead + 1));
        return
            Numbers.Cardinal(upper) is { } count
            && Numbers.Cardinal(lower) is { } unit
            && (isJoined || at.Peek(ahead + 2).Is("time"))
            ? (string.Create(CultureInfo.InvariantCulture, $"{count}/{unit}"), isJoined ? 1 : 2)
            : ("", 0);
    }

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Accept("in");
        var token = at.Current;
        var (spoken, count) = Spoken(at, 0);
        at.Skip(Math.Max(1, count));
        var last = at.Previous;
        at.AcceptAny("time", "metre", "meter");
        var text =
            count > 0 ? spoken
            : token.Is("common") ? "4/4"
            : token.Is("waltz") ? "3/4"
            : token.Text;
        var isMetre = Metre.TryParse(text, out var metre);
        draft.Sentence = draft.Sentence with { Metre = metre };
        return isMetre
            ? null
            : Failure.At(
                token,
                last,
                $"a metre is 2/4, 3/4, 4/4, 5/4, 6/8, 9/8 or 12/8, found '{(count > 1 ? text : token.Text)}'",
                Edit.Of(token, at.Previous, token.Is("cut") ? "2/4" : "4/4")
            );
    }
}
