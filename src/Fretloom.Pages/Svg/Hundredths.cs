using System.Text;

namespace Fretloom.Pages.Svg;

/// <summary>Writes coordinates. A picture has thousands of them, and in a browser every one counts.</summary>
internal static class Hundredths
{
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

        var hundredths = (long)Math.Round(Math.Round(value, 2) * 100);
        if (hundredths < 0)
        {
            text.Append('-');
            hundredths = -hundredths;
        }

        text.Append(hundredths / 100);
        var (tenth, hundredth) = ((int)(hundredths / 10 % 10), (int)(hundredths % 10));
        if (tenth != 0 || hundredth != 0)
        {
            text.Append('.').Append((char)('0' + tenth));
        }

        return hundredth != 0 ? text.Append((char)('0' + hundredth)) : text;
    }
}
