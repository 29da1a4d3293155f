using Fretloom.Exercises;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>in broken thirds</c>, <c>in groups of three</c>.</summary>
internal static class GroupingPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the grouping",
            PlayPhrase.Grouping,
            at =>
                at.Peek(at.Is("in") ? 1 : 0).IsAny("broken", "groups", "threes", "fours")
                || (at.Is("in") && (at.Peek(1).Is("thirds") || IntervalWords.IsOther(at.Peek(1)))),
            Read,
            "in broken thirds",
            "in thirds",
            "in groups of three",
            "in groups of 4",
            "in fours"
        );

    /// <summary>The words of a grouping.</summary>
    public static string WordsOf(Grouping grouping) =>
        grouping switch
        {
            Grouping.BrokenThirds => "in broken thirds",
            Grouping.Threes => "in groups of three",
            Grouping.Fours => "in groups of four",
            _ => "",
        };

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        at.Accept("in");
        var word = at.Current;
        at.Skip();
        var interval = word.Is("broken") ? at.Current : word;
        if (IntervalWords.IsOther(interval))
        {
            return Failure.At(
                interval,
                $"a scale is played in broken thirds, or in groups of three or four notes, found {Failure.Shown(interval)}",
                Edit.Of(interval, "thirds")
            );
        }

        if (word.IsAny("broken", "thirds"))
        {
            draft.Sentence = draft.Sentence with { Grouping = Grouping.BrokenThirds };
            return word.Is("thirds") || at.Accept("thirds")
                ? null
                : Failure.Expected("'thirds' after 'broken'", at.Current, "thirds");
        }

        if (word.Is("groups"))
        {
            if (!at.Accept("of"))
            {
                return Failure.Expected("'of three' or 'of four' after 'groups'", at.Current, "of");
            }

            word = at.Current;
            if (Numbers.Cardinal(word) is not (3 or 4))
            {
                return Failure.Expected("'three' or 'four' after 'groups of'", word, "three", "four");
            }

            at.Skip();
        }

        var isThree = word.Is("threes") || Numbers.Cardinal(word) == 3;
        draft.Sentence = draft.Sentence with { Grouping = isThree ? Grouping.Threes : Grouping.Fours };
        return null;
    }
}
