using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>full frets</c>, <c>empty fret of strings 4-2</c>, <c>half-turn centres</c>.</summary>
internal static class FretNouns
{
    /// <summary>What is said to stand where a set of frets should.</summary>
    public const string Expected = "a fret set (full frets, empty frets, half-turn centres)";

    /// <summary>The words that begin one.</summary>
    public static readonly string[] Openings = ["full", "empty", "half-turn"];

    /// <summary>Whether one begins some tokens ahead; a half-turn without its centre is none.</summary>
    public static bool Begins(Cursor at, int ahead = 0) =>
        at.Peek(ahead).IsAny("full", "empty")
        || (at.Peek(ahead).Is("half-turn") && at.Peek(ahead + 1).IsAny("centre", "centres", "center", "centers"));

    /// <summary>Whether <c>full</c> or <c>empty</c> stands alone, without its noun: <c>fret 5 is full</c>.</summary>
    public static bool IsAdjective(Cursor at, int ahead) =>
        at.Peek(ahead).IsAny("full", "empty")
        && (at.Peek(ahead + 1).Kind != TokenKind.Word || at.Peek(ahead + 1).IsAny("and", "or", "then"));

    /// <summary>Reads <c>full</c> or <c>empty</c> alone.</summary>
    public static FretNoun ReadAdjective(Cursor at)
    {
        at.Skip();
        return new FretNoun(at.Previous.Is("full") ? FretKind.Full : FretKind.Empty);
    }

    /// <summary>The plural of the noun behind <c>full</c>, <c>empty</c> or <c>half-turn</c>.</summary>
    public static string Plural(Token first) => first.Is("half-turn") ? "centres" : "frets";

    /// <summary>Reads one, in the singular or plural.</summary>
    public static Failure? Read(Cursor at, Scope scope, out FretNoun noun)
    {
        noun = new FretNoun(FretKind.Full);
        var first = at.Current;
        if (first.Is("half-turn"))
        {
            at.Skip();
            if (!at.AcceptAny("centre", "centres", "center", "centers"))
            {
                return Failure.Expected("'centre' or 'centres' after 'half-turn'", at.Current, "centre", "centres");
            }
        }
        else
        {
            if (!at.AcceptAny("full", "empty"))
            {
                return Failure.Expected(Expected, first, Openings);
            }

            if (!at.AcceptAny("fret", "frets"))
            {
                return Failure.Expected($"'fret' or 'frets' after '{first.Text}'", at.Current, "fret", "frets");
            }
        }

        var kind =
            first.Is("full") ? FretKind.Full
            : first.Is("empty") ? FretKind.Empty
            : FretKind.HalfTurnCentre;
        var failure = OfStrings.Read(at, scope, out var of);
        noun = new FretNoun(kind, of);
        return failure;
    }
}
