using Fretloom.Exercises;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>with a count-in</c>, <c>with a count-in of two bars</c>, <c>without a count-in</c>.</summary>
internal static class CountInPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the count-in",
            PlayPhrase.CountIn,
            at => NameLength(at, Lead(at)) > 0,
            Read,
            "with a count-in",
            "with a count-in of two bars",
            "with two bars' count-in",
            "with a two-bar count-in",
            "without a count-in",
            "count in"
        );

    // With a, with two bars', a two-bar, without a, no; or nothing.
    private static int Lead(Cursor at)
    {
        var lead = at.Current.IsAny("with", "without", "no") ? 1 : 0;
        lead += at.Peek(lead).IsAny("a", "the") ? 1 : 0;
        if (JoinedBars(at.Peek(lead)) is not null)
        {
            return lead + 1;
        }

        var isCounted = Numbers.Cardinal(at.Peek(lead)) is not null || at.Peek(lead).Is("bar's");
        var bars = lead + (Numbers.Cardinal(at.Peek(lead)) is null ? 0 : 1);
        return isCounted && at.Peek(bars).IsAny("bar", "bars", "bar's", "bars'", "measure", "measures")
            ? bars + 1
            : lead;
    }

    private static int? JoinedBars(Token token) => Numbers.Joined(token, "bar", "bars", "measure", "measures");

    private static int NameLength(Cursor at, int ahead) =>
        at.Peek(ahead).IsAny("count-in", "countin") ? 1
        : at.Peek(ahead).Is("count") && at.Peek(ahead + 1).Is("in") ? 2
        : 0;

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        var isWith = !at.Current.IsAny("without", "no");
        var lead = Lead(at);
        var (bars, place) = (1, at.Current);
        for (var ahead = 0; ahead < lead; ahead++)
        {
            var said = Numbers.Cardinal(at.Peek(ahead)) ?? JoinedBars(at.Peek(ahead));
            (bars, place) = said is { } number ? (number, at.Peek(ahead)) : (bars, place);
        }

        at.Skip(lead + NameLength(at, lead));
        var skip = at.Is("of") ? 1 : 0;
        var isSaid = skip > 0 || at.Peek(1).IsAny("bar", "bars", "measure", "measures");
        if (isWith && isSaid && Numbers.Cardinal(at.Peek(skip)) is { } counted)
        {
            (bars, place) = (counted, at.Peek(skip));
            at.Skip(skip + 1);
            if (!at.AcceptAny("bar", "bars", "measure", "measures"))
            {
                return Failure.Expected($"'bars' after '{place.Text}'", at.Current, "bars", "bar");
            }
        }

        if (isWith && bars is < 1 or > Exercise.MostCountInBars)
        {
            return Failure.At(
                place,
                $"a count-in is 1 to {Exercise.MostCountInBars} bars, found {Failure.Shown(place)}"
            );
        }

        draft.Sentence = draft.Sentence with { CountInBars = isWith ? bars : 0 };
        return null;
    }
}
