using System.Runtime.CompilerServices;

namespace Fretloom.Claims;

/// <summary>Values that a claim may hold, checked where it is made.</summary>
internal static class Require
{
    /// <summary>A degree of a key, 1 to 7.</summary>
    public static int Degree(int value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, 1, name);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 7, name);
        return value;
    }

    /// <summary>At least one fret, ascending from 0 or more.</summary>
    public static ValueList<int> Ascending(
        ValueList<int> frets,
        [CallerArgumentExpression(nameof(frets))] string? name = null
    )
    {
        var least = 0;
        foreach (var fret in frets.AsSpan())
        {
            least = fret >= least ? fret + 1 : int.MaxValue;
        }

        return frets.Count > 0 && least < int.MaxValue
            ? frets
            : throw new ArgumentException("Frets ascend, each is named once, and there is at least one.", name);
    }
}
