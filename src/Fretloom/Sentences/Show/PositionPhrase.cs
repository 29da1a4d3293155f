using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary><c>in fifth position</c>: the fret of the index finger.</summary>
internal static class PositionPhrase
{
    public static PhraseKind Kind { get; } =
        new(
            "the position",
            ShowPhrase.Position,
            at =>
                at.Is("in")
                && (at.Peek(1).Is("position") || IsOpen(at) || Numbers.Ordinal(at.Peek(Lead(at))) is not null),
            Read,
            "in first position",
            "in fifth position",
            "in the twelfth position",
            "in 5th position",
            "in position 5",
            "in open position"
        );

    private static int Lead(Cursor at) => at.Peek(1).Is("the") ? 2 : 1;

    // The position that the open strings belong to.
    private static bool IsOpen(Cursor at) => at.Peek(Lead(at)).Is("open") && at.Peek(Lead(at) + 1).Is("position");

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        if (IsOpen(at))
        {
            at.Skip(Lead(at) + 2);
            draft.Voicing = draft.Voicing with { Position = 1 };
            return null;
        }

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
