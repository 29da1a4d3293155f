using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Fretloom.Neck;

/// <summary>A run of frets, both ends included; fret 0 is the open string. Text: <c>0-12</c>. The <c>default</c> is fret 0 alone.</summary>
public readonly record struct FretRange
{
    /// <summary>Makes a range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An end is outside 0 to 99, or the last comes before the first.</exception>
    public FretRange(int first, int last)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(first);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(last, 99);
        ArgumentOutOfRangeException.ThrowIfLessThan(last, first);
        First = first;
        Last = last;
    }

    /// <summary>The lowest fret.</summary>
    public int First { get; }

    /// <summary>The highest fret.</summary>
    public int Last { get; }

    /// <summary>How many frets there are, at least 1.</summary>
    public int Count => Last - First + 1;

    /// <summary>The frets, ascending.</summary>
    public IEnumerable<int> Frets => Enumerable.Range(First, Count);

    /// <summary>Whether a fret lies in the range.</summary>
    public bool Contains(int fret) => fret >= First && fret <= Last;

    /// <summary>Reads <c>0-12</c>.</summary>
    /// <exception cref="FormatException">The text is not a range.</exception>
    public static FretRange Parse(string text) =>
        TryParse(text, out var range)
            ? range
            : throw new FormatException($"'{text}' is not a range of frets such as 0-12.");

    /// <summary>Reads a range if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out FretRange range)
    {
        range = default;
        var ends = (text ?? "").Split('-');
        if (
            ends.Length != 2
            || !int.TryParse(ends[0], NumberStyles.None, CultureInfo.InvariantCulture, out var first)
            || !int.TryParse(ends[1], NumberStyles.None, CultureInfo.InvariantCulture, out var last)
            || last > 99
            || last < first
        )
        {
            return false;
        }

        range = new FretRange(first, last);
        return true;
    }

    /// <summary>First, hyphen, last.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{First}-{Last}");
}
