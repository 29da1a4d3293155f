using Fretloom.Sentences.Reading;
using Fretloom.Shapes;

namespace Fretloom.Sentences.Show;

/// <summary>How the members of a chord lie on the strings.</summary>
internal static class VoicingPhrases
{
    private const int MostStrings = 20;

    /// <summary><c>one note per string</c>, <c>strummed</c>.</summary>
    public static PhraseKind Sounding { get; } =
        new(
            "the voicing",
            ShowPhrase.Voicing,
            at => at.Is("strummed") || (Numbers.Cardinal(at.Current) == 1 && at.Peek(1).IsAny("note", "notes")),
            ReadSounding,
            "one note per string",
            "one note a string",
            "strummed"
        );

    /// <summary><c>in close position</c>, <c>in drop 2</c>, <c>in drop 3</c>, <c>in any order</c>.</summary>
    public static PhraseKind Arrangement { get; } =
        new(
            "the order of the members",
            ShowPhrase.Voicing,
            at => at.Is("in") && at.Peek(1).IsAny("close", "drop", "any") && !at.Peek(2).IsAny("inversion"),
            ReadArrangement,
            "in close position",
            "in drop 2",
            "in drop 3",
            "in any order"
        );

    /// <summary><c>easy, three strings</c>.</summary>
    public static PhraseKind Easy { get; } =
        new(
            "the number of strings",
            ShowPhrase.Voicing,
            at => at.Is("easy"),
            ReadEasy,
            "easy, three strings",
            "easy, on 4 strings"
        );

    private static Failure? ReadSounding(Cursor at, ShowDraft draft)
    {
        var isStrummed = at.Accept("strummed");
        draft.Voicing = draft.Voicing with { Kind = isStrummed ? VoicingKind.Strummed : VoicingKind.OneNotePerString };
        at.Skip(isStrummed ? 0 : 2);
        return isStrummed ? null : NotesPerStringPhrase.ReadPerString(at);
    }

    private static Failure? ReadArrangement(Cursor at, ShowDraft draft)
    {
        at.Skip();
        var word = at.Current;
        at.Skip();
        if (word.Is("drop"))
        {
            return ReadDrop(at, draft);
        }

        var (second, arrangement) = word.Is("close")
            ? ("position", Shapes.Arrangement.Close)
            : ("order", Shapes.Arrangement.AnyOrder);
        draft.Voicing = draft.Voicing with { Arrangement = arrangement };
        return at.Accept(second) ? null : Failure.Expected($"'{second}' after '{word.Text}'", at.Current, second);
    }

    private static Failure? ReadDrop(Cursor at, ShowDraft draft)
    {
        var number = at.Current;
        at.Skip();
        draft.Voicing = draft.Voicing with
        {
            Arrangement = Numbers.Cardinal(number) == 2 ? Shapes.Arrangement.DropTwo : Shapes.Arrangement.DropThree,
        };
        return Numbers.Cardinal(number) is 2 or 3
            ? null
            : Failure.Expected("'2' or '3' after 'drop'", number, "two", "three");
    }

    private static Failure? ReadEasy(Cursor at, ShowDraft draft)
    {
        at.Skip();
        at.Accept(TokenKind.Comma);
        at.Accept("on");
        var number = at.Current;
        if (Numbers.Cardinal(number) is not { } count)
        {
            return Failure.Expected(
                "the number of strings, such as 'three strings', after 'easy'",
                number,
                Numbers.Words
            );
        }

        at.Skip();
        draft.Voicing = draft.Voicing with { EasyStrings = count };
        if (!at.AcceptAny("string", "strings"))
        {
            return Failure.Expected($"'strings' after '{number.Text}'", at.Current, "strings");
        }

        return count is >= 2 and <= MostStrings
            ? null
            : Failure.At(number, $"expected 2 to {MostStrings} strings, found {Failure.Shown(number)}");
    }
}
