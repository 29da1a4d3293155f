using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Play;

/// <summary><c>in every key by fourths</c>.</summary>
internal static class EveryKeyPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the keys",
            PlayPhrase.Keys,
            at => at.Current.IsAny("in", "through") && at.Peek(Lead(at)).IsAny("key", "keys"),
            Read,
            "in every key by fourths",
            "in every key by half-steps",
            "in every key by fewest moves",
            "in all twelve keys",
            "through every key by fourths"
        );

    /// <summary>The words of an order.</summary>
    public static string WordsOf(KeyOrder order) =>
        "in every key by "
        + order switch
        {
            KeyOrder.Fourths => "fourths",
            KeyOrder.HalfSteps => "half-steps",
            _ => "fewest moves",
        };

    // In every, in all, in all twelve, in all the, in all the twelve.
    private static int Lead(Cursor at)
    {
        if (!at.Peek(1).IsAny("every", "all", "each"))
        {
            return 0;
        }

        var lead = at.Peek(2).Is("the") ? 3 : 2;
        return lead + (Numbers.Cardinal(at.Peek(lead)) == 12 ? 1 : 0);
    }

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Skip(Lead(at) + 1);
        var skip = at.Current.Kind == TokenKind.Comma ? 1 : 0;
        var isOrdered = at.Peek(skip).Is("by");
        draft.Sentence = draft.Sentence with { EveryKey = KeyOrder.Fourths };
        if (!isOrdered)
        {
            return null;
        }

        at.Skip(skip + 1);
        at.Accept("the");
        KeyOrder? order =
            at.AcceptAny("fourths", "fourth") ? KeyOrder.Fourths
            : at.AcceptAny("half-steps", "half-step", "semitones", "semitone") || at.Accept("half", "steps")
                ? KeyOrder.HalfSteps
            : at.Accept("fewest", "moves") ? KeyOrder.FewestMoves
            : null;
        draft.Sentence = draft.Sentence with { EveryKey = order ?? KeyOrder.Fourths };
        return order is null
            ? Failure.Expected(
                "'fourths', 'half-steps' or 'fewest moves' after 'by'",
                at.Current,
                "fourths",
                "half-steps",
                "fewest"
            )
            : null;
    }
}
