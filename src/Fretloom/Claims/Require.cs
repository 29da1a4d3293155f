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

    /// <summary>How many of some things, 0 to 99.</summary>
    public static int Number(int value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value, name);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 99, name);
        return value;
    }

    /// <summary>A distance in frets, upward or downward.</summary>
    public static int Distance(int frets, [CallerArgumentExpression(nameof(frets))] string? name = null)
    {
        ArgumentOutOfRangeException.ThrowIfZero(frets, name);
        return frets;
    }

    /// <summary>Claims that are joined: at least two.</summary>
    public static ValueList<Claim> Several(
        ValueList<Claim> parts,
        [CallerArgumentExpression(nameof(parts))] string? name = null
    ) => parts.Count > 1 ? parts : throw new ArgumentException("At least two claims are joined.", name);

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
