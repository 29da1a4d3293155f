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
    public static string WordsOf(Direction direction) =>
        direction switch
        {
            Direction.Up => "up",
            Direction.Down => "down",
            Direction.UpAndDown => "up and down",
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
            draft.Sentence = draft.Sentence with { Direction = Direction.UpAndDown };
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
            Direction = (isUp, turns) switch
            {
                (true, false) => Direction.Up,
                (false, false) => Direction.Down,
                (true, true) => Direction.UpAndDown,
                _ => Direction.DownAndUp,
            },
        };
        return null;
    }

    private static Failure? ReadFrom(Cursor at, PlayDraft draft)
    {
        var isUp = at.Is("low");
        at.Skip();
        var (end, direction) = isUp ? ("high", Direction.Up) : ("low", Direction.Down);
        draft.Sentence = draft.Sentence with { Direction = direction };
        return !at.Accept("to") ? Failure.Expected($"'to {end}' after '{at.Previous.Text}'", at.Current, "to")
            : at.Accept(end) ? null
            : Failure.Expected($"'{end}' after 'to'", at.Current, end);
    }
}
