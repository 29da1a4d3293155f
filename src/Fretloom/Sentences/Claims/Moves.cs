using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>moved up 2 frets</c>, and numbers of frets.</summary>
internal static class Moves
{
    private const int Furthest = 40;

    /// <summary>Reads the phrase if it stands here.</summary>
    /// <param name="at">The place.</param>
    /// <param name="frets">Upward when positive; 0 when nothing is moved.</param>
    public static Failure? Read(Cursor at, out int frets)
    {
        frets = 0;
        if (at.AcceptAny("moved"))
        {
            return ReadMoved(at, out frets);
        }

        // 2 frets higher.
        var comma = at.Current.Kind == TokenKind.Comma ? 1 : 0;
        if (!at.Peek(comma + 1).IsAny("fret", "frets") || !at.Peek(comma + 2).IsAny("higher", "lower"))
        {
            return null;
        }

        at.Skip(comma);
        var wrong = ReadFrets(at, out frets);
        frets = at.Is("lower") ? -frets : frets;
        at.AcceptAny("higher", "lower");
        return wrong;
    }

    // Up 2 frets; 2 frets up.
    private static Failure? ReadMoved(Cursor at, out int frets)
    {
        frets = 0;
        var direction = at.Current;
        if (!at.AcceptAny("up", "down"))
        {
            if (Numbers.Cardinal(direction) is null)
            {
                return Failure.Expected("'up' or 'down' after 'moved'", direction, "up", "down");
            }

            if (ReadFrets(at, out frets) is { } wrong)
            {
                return wrong;
            }

            direction = at.Current;
            frets = direction.Is("down") ? -frets : frets;
            return at.AcceptAny("up", "down")
                ? null
                : Failure.Expected($"'up' or 'down' after '{at.Previous.Text}'", direction, "up", "down");
        }

        var failure = ReadFrets(at, out frets);
        frets = direction.Is("down") ? -frets : frets;
        return failure;
    }

    /// <summary>Reads <c>1 fret</c>, <c>5 frets</c>.</summary>
    public static Failure? ReadFrets(Cursor at, out int frets)
    {
        var token = at.Current;
        frets = Numbers.Cardinal(token) ?? 0;
        if (Numbers.Cardinal(token) is null)
        {
            return Failure.Expected("a number of frets, such as '2 frets'", token, Numbers.Words);
        }

        at.Skip();
        if (frets is < 1 or > Furthest)
        {
            return Failure.At(token, $"expected 1 to {Furthest} frets, found {Failure.Shown(token)}");
        }

        return at.AcceptAny("fret", "frets")
            ? null
            : Failure.Expected($"'frets' after '{token.Text}'", at.Current, "fret", "frets");
    }
}
