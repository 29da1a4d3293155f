using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Claims;

/// <summary><c>on frets 0 to 12</c>, also <c>frets 0-12</c> and <c>from fret 5 to fret 9</c>.</summary>
internal static class WindowPhrase
{
    /// <summary>Whether a window begins here; <c>frets 0, 5 and 10</c> is none.</summary>
    public static bool Begins(Cursor at) =>
        at.Current.IsAny("from", "between")
        || (at.Is("on") && at.Peek(1).IsAny("fret", "frets"))
        || (at.Current.IsAny("fret", "frets") && IsJoint(at.Peek(2), isBetween: false));

    /// <summary>Reads the window.</summary>
    public static Failure? Read(Cursor at, out FretRange? window)
    {
        window = null;
        var opening = at.Current;
        at.AcceptAny("on", "from", "between");
        at.Accept("the");
        if (!at.AcceptAny("fret", "frets"))
        {
            return Failure.Expected($"'fret' or 'frets' after '{opening.Text}'", at.Current, "fret", "frets");
        }

        if (FretsPhrase.ReadFret(at, out var first) is { } wrong)
        {
            return wrong;
        }

        if (!IsJoint(at.Current, opening.Is("between")))
        {
            window = new FretRange(first, first);
            return opening.IsAny("from", "between")
                ? Failure.Expected("the last fret, such as 'to 9'", at.Current, "to")
                : null;
        }

        at.Skip();
        at.AcceptAny("fret", "frets");
        if (FretsPhrase.ReadFret(at, out var last) is { } failure)
        {
            return failure;
        }

        if (last < first)
        {
            return Failure.At(
                opening,
                at.Previous,
                $"frets {first} to {last} runs backwards; the lower fret comes first",
                Edit.Of(opening, at.Previous, $"on frets {last} to {first}")
            );
        }

        window = new FretRange(first, last);
        return null;
    }

    private static bool IsJoint(Token token, bool isBetween) =>
        token.Kind == TokenKind.Dash || token.IsAny("to", "through", isBetween ? "and" : "to");
}
