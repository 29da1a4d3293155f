using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary><c>with a capo at 2</c>, <c>without a capo</c>.</summary>
internal static class CapoPhrase
{
    private const int HighestFret = 39;

    public static PhraseKind Kind { get; } =
        new(
            "the capo",
            ShowPhrase.Instrument,
            at => at.Peek(Lead(at)).Is("capo"),
            Read,
            "with a capo at 2",
            "with a capo at fret 2",
            "with a capo on the second fret",
            "capo 2",
            "without a capo"
        );

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        var failure = Read(at, out int fret);
        draft.Sentence = draft.Sentence with { Capo = fret };
        return failure;
    }

    private static int Lead(Cursor at) =>
        !at.Current.IsAny("with", "without") ? 0
        : at.Peek(1).IsAny("a", "the", "no") ? 2
        : 1;

    /// <summary>Reads the whole phrase; 0 for none.</summary>
    public static Failure? Read(Cursor at, out int fret)
    {
        fret = 0;
        var isWithout = at.Is("without") || at.Peek(1).Is("no");
        at.Skip(Lead(at) + 1);
        if (isWithout)
        {
            return null;
        }

        at.AcceptAny("at", "on");
        at.Accept("the");
        var isNamed = at.AcceptAny("fret");
        var token = at.Current;
        var ordinal = Numbers.Ordinal(token);
        if ((Numbers.Cardinal(token) ?? ordinal) is not { } number)
        {
            return Failure.Expected("the fret of the capo, such as '2'", token);
        }

        at.Skip();
        if (ordinal is not null && !isNamed && !at.Accept("fret"))
        {
            return Failure.Expected($"'fret' after '{token.Text}'", at.Current, "fret");
        }

        fret = number;
        return fret <= HighestFret
            ? null
            : Failure.At(token, $"a capo sits at fret 1 to {HighestFret}, found {Failure.Shown(token)}");
    }
}
