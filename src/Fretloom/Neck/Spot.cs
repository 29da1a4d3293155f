using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Fretloom.Neck;

/// <summary>One string and one fret. Text: <c>4:9</c> is string 4, fret 9.</summary>
/// <remarks>String 1 is nearest the floor; fret 0 is the open string. The <c>default</c> is string 1, open.</remarks>
public readonly record struct Spot
{
    private readonly int _stringIndex;

    /// <summary>Makes a spot.</summary>
    /// <param name="stringNumber">1 (nearest the floor) to 99.</param>
    /// <param name="fret">0 (open) to 99.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public Spot(int stringNumber, int fret)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(stringNumber, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(stringNumber, 99);
        ArgumentOutOfRangeException.ThrowIfNegative(fret);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(fret, 99);
        _stringIndex = stringNumber - 1;
        Fret = fret;
    }

    /// <summary>The string, counted from 1 nearest the floor.</summary>
    public int String => _stringIndex + 1;

    /// <summary>The fret, 0 for the open string.</summary>
    public int Fret { get; }

    /// <summary>Reads <c>4:9</c>.</summary>
    /// <exception cref="FormatException">The text is not a spot.</exception>
    public static Spot Parse(string text) =>
        TryParse(text, out var spot) ? spot : throw new FormatException($"'{text}' is not a spot such as 4:9.");

    /// <summary>Reads a spot if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Spot spot)
    {
        spot = default;
        var colon = text?.IndexOf(':', StringComparison.Ordinal) ?? -1;
        if (
            colon < 0
            || !TryReadNumber(text.AsSpan(0, colon), out var number)
            || !TryReadNumber(text.AsSpan(colon + 1), out var fret)
            || number < 1
        )
        {
            return false;
        }

        spot = new Spot(number, fret);
        return true;
    }

    /// <summary>String, colon, fret.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{String}:{Fret}");

    private static bool TryReadNumber(ReadOnlySpan<char> text, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number <= 99;
}
