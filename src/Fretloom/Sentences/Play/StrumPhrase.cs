using Fretloom.Exercises;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>strum down down-up up-down-up</c>: the strokes of a bar. A lone <c>up</c> or <c>down</c> is a direction.</summary>
internal static class StrumPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the strum pattern",
            PlayPhrase.Strum,
            at =>
                at.Current.IsAny("strum", "strumming")
                || (Strokes(at.Current) is { } said && (said.Length > 1 || Strokes(at.Peek(1)) is not null)),
            Read,
            "strum down down-up up-down-up",
            "down down-up up-down-up",
            "strumming down down down-up"
        );

    /// <summary>The strokes of a word such as <c>down-up</c>, true for down; null when it is no such word.</summary>
    public static bool[]? Strokes(Token token)
    {
        if (token.Kind != TokenKind.Word)
        {
            return null;
        }

        var words = token.Text.Split('-');
        return Array.TrueForAll(words, IsStroke) ? Array.ConvertAll(words, IsDown) : null;
    }

    private static bool IsStroke(string word) => IsDown(word) || word.Equals("up", StringComparison.OrdinalIgnoreCase);

    private static bool IsDown(string word) => word.Equals("down", StringComparison.OrdinalIgnoreCase);

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.AcceptAny("strum", "strumming");
        at.Accept("pattern");
        var first = at.Current;
        var groups = new List<ValueList<bool>>();
        while (Strokes(at.Current) is { } more)
        {
            groups.Add(more.ToValueList());
            at.Skip();
        }

        if (groups.Count == 0)
        {
            return Failure.Expected("strokes such as 'down down-up up-down-up'", first, "down", "up");
        }

        if (groups.Sum(group => group.Count) > StrumPattern.MostEighths)
        {
            return Failure.At(
                first,
                at.Previous,
                $"a strum pattern is that of one bar and has at most {StrumPattern.MostEighths} strokes"
            );
        }

        draft.Sentence = draft.Sentence with { Strum = new StrumPattern(groups) };
        return null;
    }
}
