using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary><c>in fifth position</c>: the fret of the index finger.</summary>
internal static class PositionPhrase
{
    public static PhraseKind Kind { get; } =
        new(
            "the position",
            ShowPhrase.Position,
            at => at.Is("in") && (at.Peek(1).Is("position") || Numbers.Ordinal(at.Peek(Lead(at))) is not null),
            Read,
            "in first position",
            "in fifth position",
            "in the twelfth position",
            "in 5th position",
            "in position 5"
        );

    private static int Lead(Cursor at) => at.Peek(1).Is("the") ? 2 : 1;

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        at.Skip(Lead(at));
        var isNumbered = at.Accept("position");
        var number = at.Current;
        if ((isNumbered ? Numbers.Cardinal(number) : Numbers.Ordinal(number)) is not { } position)
        {
            return Failure.Expected("the number of the position, such as '5'", number);
        }

        at.Skip();
        draft.Voicing = draft.Voicing with { Position = position };
        if (!isNumbered && !at.Accept("position"))
        {
            return Failure.Expected(
                $"'position' or 'inversion' after '{number.Text}'",
                at.Current,
                "position",
                "inversion"
            );
        }

        return position is >= 1 and <= VoicingPhrase.LastPosition
            ? null
            : Failure.At(
                number,
                $"expected first to {Numbers.OrdinalWord(VoicingPhrase.LastPosition)} position, found {Failure.Shown(number)}"
            );
    }
}
