namespace Fretloom.Theory;

/// <summary>Division that rounds down, so that going below zero keeps counting in the same direction.</summary>
internal static class Modulo
{
    /// <summary>The remainder of <paramref name="value"/> by <paramref name="divisor"/>, always 0 to divisor - 1.</summary>
    public static int Of(int value, int divisor)
    {
        var remainder = value % divisor;
        return remainder < 0 ? remainder + divisor : remainder;
    }

    /// <summary>The quotient that belongs to <see cref="Of"/>.</summary>
    public static int Floor(int value, int divisor) => (value - Of(value, divisor)) / divisor;
}
