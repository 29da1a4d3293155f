using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary><c>frets 0-12</c>, <c>fret 5</c>, <c>from fret 5 to fret 9</c>.</summary>
internal static class FretsPhrase
{
    private const int MostFrets = 40;

    public static PhraseKind Kind { get; } =
        new(
            "the frets",
            ShowPhrase.Frets,
            at =>
                at.Current.IsAny("fret", "frets", "from", "between")
                || (at.Is("on") && at.Peek(1).IsAny("fret", "frets")),
            Read,
            "frets 0-12",
            "frets 5 to 9",
            "frets 5 through 9",
            "from fret 5 to fret 9",
            "between frets 5 and 9",
            "fret 5",
            "on frets 0-12"
        );

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        at.Accept("on");
        var opening = at.Current;
        if (opening.IsAny("from", "between"))
        {
            at.Skip();
        }

        at.Accept("the");
        if (!at.AcceptAny("fret", "frets"))
        {
            return Failure.Expected($"'fret' or 'frets' after '{opening.Text}'", at.Current, "fret", "frets");
        }

        var firstToken = at.Current;
        if (ReadFret(at, out var first) is { } failure)
        {
            return failure;
        }

        var joint = at.Current;
        if (joint.Kind != TokenKind.Dash && !joint.IsAny("to", "through", opening.Is("between") ? "and" : "to"))
        {
            draft.Sentence = draft.Sentence with { Frets = new FretRange(first, first) };
            return opening.IsAny("from", "between")
                ? Failure.Expected("the last fret, such as 'to 9'", joint, "to")
                : null;
        }

        at.Skip();
        at.AcceptAny("fret", "frets");
        return ReadFret(at, out var last) ?? Range(firstToken, at.Previous, first, last, draft);
    }

    /// <summary>Reads the number of a fret, 0 to 40.</summary>
    public static Failure? ReadFret(Cursor at, out int fret)
    {
        var token = at.Current;
        fret = Numbers.Cardinal(token) ?? -1;
        if (fret < 0)
        {
            return Failure.Expected("a fret number such as '0' or '12'", token);
        }

        at.Skip();
        return fret <= MostFrets
            ? null
            : Failure.At(token, $"no neck here has more than {MostFrets} frets, found {Failure.Shown(token)}");
    }

    private static Failure? Range(Token firstToken, Token lastToken, int first, int last, ShowDraft draft)
    {
        if (last < first)
        {
            return Failure.At(
                firstToken,
                lastToken,
                $"frets {first} to {last} runs backwards; the lower fret comes first",
                Edit.Of(firstToken, lastToken, $"{last}-{first}")
            );
        }

        draft.Sentence = draft.Sentence with { Frets = new FretRange(first, last) };
        return null;
    }
}
