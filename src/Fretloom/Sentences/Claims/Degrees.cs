using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>degree 2</c>, <c>string 4</c>.</summary>
internal static class Degrees
{
    /// <summary>Reads <c>degree 1</c> to <c>degree 7</c>.</summary>
    public static Failure? Read(Cursor at, out int degree)
    {
        degree = 0;
        if (!at.Accept("degree"))
        {
            return Failure.Expected("'degree' and its number, 1 to 7", at.Current, "degree");
        }

        var token = at.Current;
        if (Numbers.Cardinal(token) is not { } number)
        {
            return Failure.Expected("the number of the degree, 1 to 7", token, Numbers.Words);
        }

        at.Skip();
        degree = number;
        return number is >= 1 and <= 7
            ? null
            : Failure.At(token, $"a key has degrees 1 to 7; there is no degree {Failure.Shown(token).Trim('\'')}");
    }

    /// <summary>Reads <c>string 4</c>: one of the instrument, where that is known, with all frets that are asked of it.</summary>
    public static Failure? ReadString(Cursor at, Scope scope, out int number)
    {
        number = 0;
        if (!at.Accept("string"))
        {
            return Failure.Expected("'string' and its number", at.Current, "string");
        }

        var token = at.Current;
        if (Numbers.Cardinal(token) is not { } said)
        {
            return Failure.Expected("the number of a string, such as '1'", token, Numbers.Words);
        }

        at.Skip();
        number = said;
        return said is < 1 or > 20
                ? Failure.At(
                    token,
                    $"strings are counted from 1, the one nearest the floor; there is no string {Failure.Shown(token).Trim('\'')}"
                )
            : scope.ChosenInstrument is { } chosen
                ? StringNames.Missing([(said, token)], chosen) ?? BeyondNeck(token, scope, chosen)
            : null;
    }

    private static Failure? BeyondNeck(Token number, Scope scope, Instrument instrument) =>
        scope.BeyondNeck(instrument, new StringSet([Numbers.Cardinal(number)!.Value])) is { } beyond
            ? Failure.At(number, beyond)
            : null;
}
