using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary>How the instrument is played: turned over, with the thumb.</summary>
internal static class PlayingPhrases
{
    private const int MostWords = 8;

    /// <summary><c>turned over</c>: a right-handed instrument held the other way round and not restrung.</summary>
    public static PhraseKind TurnedOver { get; } =
        new(
            "the way to hold the instrument",
            ShowPhrase.Player,
            at => TurnedOverLength(at) > 0,
            ReadTurnedOver,
            "turned over",
            "with the guitar turned over",
            "held upside down"
        );

    /// <summary><c>with the thumb</c>, <c>without the thumb</c>.</summary>
    public static PhraseKind Thumb { get; } =
        new(
            "the thumb",
            ShowPhrase.Hand,
            at => at.Peek(ThumbLead(at)).Is("thumb") && (ThumbLead(at) > 0 || at.Peek(1).Is("allowed")),
            ReadThumb,
            "with the thumb",
            "thumb allowed",
            "without the thumb"
        );

    private static Failure? ReadTurnedOver(Cursor at, ShowDraft draft)
    {
        at.Skip(TurnedOverLength(at));
        draft.Sentence = draft.Sentence with { IsTurnedOver = true };
        return null;
    }

    private static Failure? ReadThumb(Cursor at, ShowDraft draft)
    {
        var isLeftOut = at.Current.IsAny("without", "no");
        at.Skip(ThumbLead(at) + 1);
        at.Accept("allowed");
        draft.Sentence = draft.Sentence with { UsesThumb = !isLeftOut };
        return null;
    }

    private static int TurnedOverLength(Cursor at)
    {
        var lead = at.Is("with") ? InstrumentLength(at) : 0;
        lead += at.Peek(lead).Is("held") ? 1 : 0;
        var (first, second) = (at.Peek(lead), at.Peek(lead + 1));
        return (first.Is("turned") && second.Is("over")) || (first.Is("upside") && second.Is("down")) ? lead + 2 : 0;
    }

    // With the guitar, with my low-G ukulele, with the instrument.
    private static int InstrumentLength(Cursor at)
    {
        var lead = at.Peek(1).IsAny("a", "an", "the", "my") ? 2 : 1;
        for (var count = 1; count <= MostWords && at.Peek(lead + count - 1).Kind == TokenKind.Word; count++)
        {
            if (at.Peek(lead).Is("instrument") || Catalogue.TryFind(at.Words(lead, count), out _))
            {
                return lead + count;
            }
        }

        return 0;
    }

    private static int ThumbLead(Cursor at)
    {
        var lead = at.Current.IsAny("with", "without", "no") ? 1 : 0;
        return lead + (at.Peek(lead).Is("the") ? 1 : 0);
    }
}
