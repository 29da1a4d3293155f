using Fretloom.Exercises;
using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Play;

/// <summary><c>picked p-i-m-a</c>, <c>picked down-up</c>, <c>rolls T I M</c>: the picking hand.</summary>
/// <remarks>Banjo players write T for the thumb. Common practice, no source.</remarks>
internal static class PickingPhrase
{
    private const int Most = 24;

    private static readonly (string Word, Picked Picked)[] Signs =
    [
        ("p", Picked.Thumb),
        ("i", Picked.Index),
        ("m", Picked.Middle),
        ("a", Picked.Ring),
        ("down", Picked.Down),
        ("up", Picked.Up),
        ("t", Picked.Thumb),
        ("thumb", Picked.Thumb),
        ("index", Picked.Index),
        ("middle", Picked.Middle),
        ("ring", Picked.Ring),
    ];

    public static PlayPhraseKind Kind { get; } =
        new(
            "the picking",
            PlayPhrase.Picking,
            at =>
                at.Current.IsAny("picked", "pick", "plucked", "fingerpicked")
                || (at.Is("with") && at.Peek(1).Is("alternate"))
                || IsRoll(at)
                || IsUnknown(at),
            Read,
            "picked p-i-m-a",
            "picked p i m a m i",
            "picked pima",
            "plucked p-i-m",
            "picked T I M",
            "rolls T I M T",
            "with thumb-index-middle rolls",
            "picked down-up",
            "with alternate strokes"
        );

    /// <summary>The words of a picking.</summary>
    public static string WordsOf(ValueList<Picked> picking) =>
        "picked " + string.Join('-', picking.Select(one => Array.Find(Signs, sign => sign.Picked == one).Word));

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        if (at.Accept("with", "alternate"))
        {
            draft.Sentence = draft.Sentence with { Picking = [Picked.Down, Picked.Up] };
            return at.AcceptAny("strokes", "picking")
                ? null
                : Failure.Expected("'strokes' after 'alternate'", at.Current, "strokes", "picking");
        }

        if (IsUnknown(at))
        {
            return Failure.Expected("'picked' and fingers such as 'p-i-m-a', or strokes such as 'down-up'", at.Current);
        }

        at.Skip(Lead(at));
        at.AcceptAny("picked", "pick", "plucked", "fingerpicked");
        AcceptRolls(at);
        at.AcceptAny("with", "by");
        var first = at.Current;
        var picking = new List<Picked>();
        while (Of(at.Current) is { } more)
        {
            picking.AddRange(more);
            at.Skip();
        }

        AcceptRolls(at);
        if (picking.Count == 0)
        {
            return Failure.Expected(
                "fingers such as 'p-i-m-a' (p or T thumb, i index, m middle, a ring) or strokes such as 'down-up'",
                first,
                "down",
                "up",
                "thumb"
            );
        }

        if (at.Current is { Kind: TokenKind.Word, Length: 1 } odd && char.IsAsciiLetter(odd.Text[0]))
        {
            return Failure.Expected("a finger of the picking hand, p, i, m or a, or a comma", odd);
        }

        if (picking.Count > Most)
        {
            return Failure.At(
                first,
                at.Previous,
                $"a picking has at most {Most} notes before it comes again, found {picking.Count}"
            );
        }

        draft.Sentence = draft.Sentence with { Picking = picking.ToValueList() };
        return Mixed(picking)
            ? Failure.At(
                first,
                at.Previous,
                "strokes of a pick and fingers of the picking hand do not go together; write one or the other"
            )
            : null;
    }

    // Fingerstyle, alternating picking: kinds of it that have a name.
    private static bool IsUnknown(Cursor at) =>
        at.Current.IsAny("fingerstyle", "fingerpicking")
        || (at.Current.Kind == TokenKind.Word && at.Peek(1).Is("picking") && !at.Current.IsAny("alternate", "with"));

    // But for the chord of Am rolls T I M: rolls T I M; T I M rolls; in T-I-M rolls; with a thumb-index-middle roll.
    private static bool IsRoll(Cursor at)
    {
        var end = Lead(at);
        if (
            end == 0
            && char.IsAsciiLetterUpper(at.Current.Text.FirstOrDefault())
            && Chord.TryParse(at.Current.Text, out _)
        )
        {
            return false;
        }

        while (Of(at.Peek(end)) is not null)
        {
            end++;
        }

        return at.Peek(end).IsAny("roll", "rolls");
    }

    private static int Lead(Cursor at)
    {
        var lead = at.Current.IsAny("in", "with") ? 1 : 0;
        return lead > 0 && at.Peek(1).Is("a") && (Of(at.Peek(2)) is not null || at.Peek(2).IsAny("roll", "rolls"))
            ? 2
            : lead;
    }

    private static void AcceptRolls(Cursor at)
    {
        at.AcceptAny("roll", "rolls");
        at.Accept("of");
    }

    private static bool Mixed(List<Picked> picking) =>
        picking.Exists(one => one <= Picked.Up) && picking.Exists(one => one > Picked.Up);

    private static Picked[]? Of(Token token)
    {
        if (token.Kind != TokenKind.Word)
        {
            return null;
        }

        var words = AreLetters(token.Text)
            ? Array.ConvertAll(token.Text.ToCharArray(), letter => letter.ToString())
            : token.Text.Split('-');
        var found = Array.ConvertAll(
            words,
            word => Array.FindIndex(Signs, sign => sign.Word.Equals(word, StringComparison.OrdinalIgnoreCase))
        );
        return Array.Exists(found, at => at < 0) ? null : Array.ConvertAll(found, at => Signs[at].Picked);
    }

    // Pima, TIMT; 'at' is a word, since nobody calls the thumb T and the ring finger a.
    private static bool AreLetters(string text) =>
        text.All(letter => char.ToLowerInvariant(letter) is 'p' or 'i' or 'm' or 'a')
        || text.All(letter => char.ToLowerInvariant(letter) is 't' or 'i' or 'm');
}
