using System.Globalization;

namespace Fretloom.Sentences.Reading;

/// <summary>Numbers in figures and in words.</summary>
internal static class Numbers
{
    private static readonly string[] Cardinals =
        "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty".Split(
            ' '
        );

    private static readonly string[] Ordinals =
        "zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth".Split(
            ' '
        );

    /// <summary>Every number word.</summary>
    public static IEnumerable<string> Words => Cardinals.Concat(Ordinals.Skip(1));

    /// <summary>The ordinals from first on.</summary>
    public static IEnumerable<string> OrdinalWords => Ordinals.Skip(1);

    /// <summary>Reads <c>3</c> or <c>three</c>; a number too large to hold becomes the largest one.</summary>
    /// <returns>The number, or null when the token is none.</returns>
    public static int? Cardinal(Token token)
    {
        if (token.Kind != TokenKind.Word)
        {
            return null;
        }

        if (!token.Text.AsSpan().ContainsAnyExceptInRange('0', '9'))
        {
            return int.TryParse(token.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                ? number
                : int.MaxValue;
        }

        var at = Array.FindIndex(Cardinals, token.Is);
        return at < 0 ? null : at;
    }

    /// <summary>Reads <c>first</c> to <c>twentieth</c>, or <c>1st</c>, <c>2nd</c>, <c>3rd</c>, <c>4th</c> and so on.</summary>
    /// <returns>The number, or null when the token is none.</returns>
    public static int? Ordinal(Token token)
    {
        if (token.Kind != TokenKind.Word)
        {
            return null;
        }

        var at = Array.FindIndex(Ordinals, 1, token.Is);
        var isFigure =
            token.Text.Length is 3 or 4
            && (
                token.Text.EndsWith("st", StringComparison.OrdinalIgnoreCase)
                || token.Text.EndsWith("nd", StringComparison.OrdinalIgnoreCase)
                || token.Text.EndsWith("rd", StringComparison.OrdinalIgnoreCase)
                || token.Text.EndsWith("th", StringComparison.OrdinalIgnoreCase)
            );
        return at > 0 ? at
            : isFigure
            && int.TryParse(token.Text.AsSpan(..^2), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                ? number
            : null;
    }

    /// <summary>Reads <c>two-bar</c>, <c>2-octave</c>: a number joined to a unit.</summary>
    /// <returns>The number, or null when the token is none, or has another unit.</returns>
    public static int? Joined(Token token, params ReadOnlySpan<string> units)
    {
        var dash = token.Text.LastIndexOf('-');
        var unit = token with { Text = token.Text[(dash + 1)..] };
        return dash > 0 && unit.IsAny(units) ? Cardinal(token with { Text = token.Text[..dash] }) : null;
    }

    /// <summary>A number in words up to twenty, else in figures.</summary>
    public static string InWords(int number) =>
        number >= 0 && number < Cardinals.Length ? Cardinals[number] : number.ToString(CultureInfo.InvariantCulture);

    /// <summary>An ordinal in words, first to twentieth.</summary>
    public static string OrdinalWord(int number) => Ordinals[number];
}
