using Fretloom.Exercises;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>up</c>, <c>down</c>, <c>up and down</c>, <c>from low to high</c>.</summary>
internal static class DirectionPhrase
{
    private static readonly string[] Ups = ["up", "upward", "upwards", "ascending"];
    private static readonly string[] Downs = ["down", "downward", "downwards", "descending", "backwards", "backward"];

    public static PlayPhraseKind Kind { get; } =
        new(
            "the direction",
            PlayPhrase.Direction,
            at =>
                at.Current.IsAny([.. Ups, .. Downs])
                || (at.Is("both") && at.Peek(1).Is("ways"))
                || (at.Is("from") && at.Peek(1).IsAny("low", "high")),
            Read,
            "up",
            "down",
            "up and down",
            "down and up",
            "ascending and descending",
            "both ways",
            "from low to high",
            "from high to low"
        );

    /// <summary>The words of a direction.</summary>
    public static string WordsOf(Direct direct) =>
        direct switch
        {
            Direct.Up => "up",
            Direct.Down => "down",
            Direct.UpAndDown => "up and down",
            _ => "down and up",
        };

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        if (at.Accept("from"))
        {
            return ReadFrom(at, draft);
        }

        if (at.Accept("both", "ways"))
        {
            draft.Sentence = draft.Sentence with { Direct = Direct.UpAndDown };
            return null;
        }

        var isUp = at.Current.IsAny(Ups);
        at.Skip();
        var skip = at.Is("and") ? 1 : 0;
        skip += at.Peek(skip).Is("then") ? 1 : 0;
        var turns = skip > 0 && at.Peek(skip).IsAny(isUp ? Downs : Ups);
        at.Skip(turns ? skip + 1 : 0);
        draft.Sentence = draft.Sentence with
        {
            Direct = (isUp, turns) switch
            {
                (true, false) => Direct.Up,
                (false, false) => Direct.Down,
                (true, true) => Direct.UpAndDown,
                _ => Direct.DownAndUp,
            },
        };
        return null;
    }

    private static Failure? ReadFrom(Cursor at, PlayDraft draft)
    {
        var isUp = at.Is("low");
        at.Skip();
        var (end, direct) = isUp ? ("high", Direct.Up) : ("low", Direct.Down);
        draft.Sentence = draft.Sentence with { Direct = direct };
        return !at.Accept("to") ? Failure.Expected($"'to {end}' after '{at.Previous.Text}'", at.Current, "to")
            : at.Accept(end) ? null
            : Failure.Expected($"'{end}' after 'to'", at.Current, end);
    }
}
