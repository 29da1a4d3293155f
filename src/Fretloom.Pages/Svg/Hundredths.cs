using System.Text;

namespace Fretloom.Pages.Svg;

/// <summary>Writes coordinates. A picture has thousands of them, and in a browser every one counts.</summary>
internal static class Hundredths
{
    // Eleven digits, a point and a sign.
    private const int MostDigits = 16;

    /// <summary>Writes a number with two decimals at most, rounded to the nearest, never a negative zero.</summary>
    /// <param name="text">Where to.</param>
    /// <param name="value">Finite, and less than a billion either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not.</exception>
    public static StringBuilder AppendHundredths(this StringBuilder text, double value)
    {
        if (!(Math.Abs(value) < 1e9))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A coordinate is less than a billion.");
        }

        var hundredths = (long)Math.Round(value * 100);
        var left = Math.Abs(hundredths);
        // From the last digit to the first; zeros at the end of a fraction are not written.
        Span<char> digits = stackalloc char[MostDigits];
        var at = MostDigits;
        for (var place = -2; place <= 0 || left > 0; place++, left /= 10)
        {
            if (place == 0 && at < MostDigits)
            {
                digits[--at] = '.';
            }

            var digit = (int)(left % 10);
            if (place >= 0 || digit != 0 || at < MostDigits)
            {
                digits[--at] = (char)('0' + digit);
            }
        }

        if (hundredths < 0)
        {
            digits[--at] = '-';
        }

        return text.Append(digits[at..]);
    }
}
