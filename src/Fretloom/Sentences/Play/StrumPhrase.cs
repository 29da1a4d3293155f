using Fretloom.Exercises;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>strum down down-up up-down-up</c>, <c>D DU UDU</c>: the strokes of a bar. A lone <c>up</c> or <c>down</c> is a direction.</summary>
internal static class StrumPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the strum pattern",
            PlayPhrase.Strum,
            at => at.Current.IsAny("strum", "strumming") || Strokes.BeginAt(at, 0),
            Read,
            "strum down down-up up-down-up",
            "down down-up up-down-up",
            "D DU UDU",
            "strum D D U U D U",
            "strumming down down down-up"
        );

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.AcceptAny("strum", "strumming");
        at.Accept("pattern");
        var first = at.Current;
        var groups = new List<ValueList<bool>>();
        while (Strokes.Of(at.Current) is { } more)
        {
            groups.AddRange(more);
            at.Skip();
        }

        if (groups.Count > 0 && (at.Current.Kind == TokenKind.Dash || at.Is("_")))
        {
            return Failure.At(
                at.Current,
                $"rests are not written in a strum pattern: down falls on the next beat, up on the next half beat, as in 'down down-up up-down-up'"
            );
        }

        if (groups.Count == 0)
        {
            return Failure.Expected("strokes such as 'down down-up up-down-up' or 'D DU UDU'", first, "down", "up");
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
