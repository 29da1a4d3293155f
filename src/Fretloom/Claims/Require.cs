using System.Runtime.CompilerServices;
using Fretloom.Neck;
using Fretloom.Theory;

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

    /// <summary>A string by its number, 1 to 99.</summary>
    public static int String(int value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, 1, name);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 99, name);
        return value;
    }

    /// <summary>Strings that an instrument has; null for all of them.</summary>
    public static StringSet? Has(
        Instrument instrument,
        StringSet? strings,
        [CallerArgumentExpression(nameof(strings))] string? name = null
    ) =>
        strings is { } some && (some.Count == 0 || some.Numbers[0] > instrument.Strings.Count)
            ? throw new ArgumentException(
                $"The {instrument} has {instrument.Strings.Count} strings; the set is {some}.",
                name
            )
            : strings;

    /// <summary>A kind of key: a kind of scale of seven notes.</summary>
    public static ScaleKind KindOfKey(ScaleKind kind, [CallerArgumentExpression(nameof(kind))] string? name = null) =>
        kind.IsSevenNote ? kind : throw new ArgumentException($"A key has seven notes, {kind} has not.", name);

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
