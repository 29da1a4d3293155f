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
        if (!at.Accept("moved"))
        {
            return null;
        }

        var isDown = at.Is("down");
        if (!at.AcceptAny("up", "down"))
        {
            return Failure.Expected("'up' or 'down' after 'moved'", at.Current, "up", "down");
        }

        var failure = ReadFrets(at, out frets);
        frets = isDown ? -frets : frets;
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
