using System.Globalization;

namespace Fretloom.Exercises;

/// <summary>A length of musical time, or a place counted from the beginning, in whole ticks of 480 to the quarter note.</summary>
/// <remarks>
/// Exact for every value down to sixty-fourths, their triplets and quintuplets. The <c>default</c> is no time at all.
/// 480 is the division of the MIDI files that are written.
/// </remarks>
public readonly record struct Beats : IComparable<Beats>
{
    /// <summary>Ticks in a quarter note.</summary>
    public const int TicksPerQuarter = 480;

    private Beats(int ticks) => Ticks = ticks;

    /// <summary>A quarter note.</summary>
    public static Beats Quarter { get; } = new(TicksPerQuarter);

    /// <summary>Ticks, 0 or more.</summary>
    public int Ticks { get; }

    /// <summary>Quarter notes.</summary>
    public double Quarters => (double)Ticks / TicksPerQuarter;

    /// <summary>So many ticks.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static Beats FromTicks(int ticks)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(ticks);
        return new Beats(ticks);
    }

    /// <summary>A fraction of a whole note: <c>Of(1, 8)</c> is an eighth, <c>Of(3, 8)</c> a dotted quarter, <c>Of(1, 12)</c> a note of an eighth triplet.</summary>
    /// <exception cref="ArgumentException">The fraction is negative or no whole number of ticks.</exception>
    public static Beats Of(int count, int unit)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfLessThan(unit, 1);
        var ticks = checked(4 * TicksPerQuarter * count);
        return ticks % unit == 0
            ? new Beats(ticks / unit)
            : throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{count}/{unit} of a whole note is no whole number of ticks."
                ),
                nameof(unit)
            );
    }

    /// <summary>Both together.</summary>
    public static Beats operator +(Beats one, Beats other) => new(checked(one.Ticks + other.Ticks));

    /// <summary>What is left.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The second is longer.</exception>
    public static Beats operator -(Beats one, Beats other) => FromTicks(one.Ticks - other.Ticks);

    /// <summary>So many times as long.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static Beats operator *(Beats one, int times) => FromTicks(checked(one.Ticks * times));

    /// <summary>How often the second goes into the first, rounded down.</summary>
    /// <exception cref="DivideByZeroException">The second is no time at all.</exception>
    public static int operator /(Beats one, Beats other) => one.Ticks / other.Ticks;

    /// <summary>What is left of the first when the second is taken away as often as it goes.</summary>
    /// <exception cref="DivideByZeroException">The second is no time at all.</exception>
    public static Beats operator %(Beats one, Beats other) => new(one.Ticks % other.Ticks);

    /// <summary>Whether the first is shorter.</summary>
    public static bool operator <(Beats one, Beats other) => one.Ticks < other.Ticks;

    /// <summary>Whether the first is longer.</summary>
    public static bool operator >(Beats one, Beats other) => one.Ticks > other.Ticks;

    /// <summary>Whether the first is no longer.</summary>
    public static bool operator <=(Beats one, Beats other) => one.Ticks <= other.Ticks;

    /// <summary>Whether the first is no shorter.</summary>
    public static bool operator >=(Beats one, Beats other) => one.Ticks >= other.Ticks;

    /// <inheritdoc/>
    public int CompareTo(Beats other) => Ticks.CompareTo(other.Ticks);

    /// <summary>Quarter notes, such as <c>1.5</c>.</summary>
    public override string ToString() => Quarters.ToString("0.######", CultureInfo.InvariantCulture);
}
