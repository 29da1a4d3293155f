using Fretloom.Exercises;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>through the key by fourths</c>: the order of the chords.</summary>
internal static class ThroughPhrase
{
    private static readonly (string Word, ChordWay Way)[] Ways =
    [
        ("step", ChordWay.ByStep),
        ("steps", ChordWay.ByStep),
        ("thirds", ChordWay.ByThirds),
        ("fourths", ChordWay.ByFourths),
    ];

    public static PlayPhraseKind Kind { get; } =
        new(
            "the order of the chords",
            PlayPhrase.Through,
            at => at.Is("through") && !at.Peek(1).IsAny("every", "all"),
            Read,
            "through the key by step",
            "through the key by thirds",
            "through the key in fourths"
        );

    /// <summary>The words of an order.</summary>
    public static string WordsOf(ChordWay way) =>
        $"through the key by {Array.Find(Ways, pair => pair.Way == way).Word}";

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Skip();
        at.Accept("the");
        if (!at.Accept("key"))
        {
            return Failure.Expected($"'the key' after '{at.Previous.Text}'", at.Current, "key");
        }

        if (!at.AcceptAny("by", "in"))
        {
            return Failure.Expected("'by step', 'by thirds' or 'by fourths' after 'the key'", at.Current, "by");
        }

        var token = at.Current;
        var found = Array.FindIndex(Ways, pair => token.Is(pair.Word));
        if (found < 0)
        {
            return Failure.Expected("'step', 'thirds' or 'fourths' after 'by'", token, Ways.Select(pair => pair.Word));
        }

        at.Skip();
        draft.Sentence = draft.Sentence with { Through = Ways[found].Way };
        return null;
    }
}
