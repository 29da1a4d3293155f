using Fretloom.Claims.Checking;

namespace Fretloom.Claims;

/// <summary>How a claim is checked. What comes out does not depend on it, but for how much is told.</summary>
public sealed record CheckOptions
{
    /// <summary>As a teacher wants it.</summary>
    public static CheckOptions Default { get; } = new();

    /// <summary>How many failures are told at most, 0 to 32.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 32.</exception>
    public int MostFailures
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfNegative(value);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value, Tally.Remembered);
            field = value;
        }
    } = 12;

    /// <summary>Whether a repair and other places are looked for.</summary>
    public bool LooksElsewhere { get; init; } = true;

    /// <summary>Whether one tonic decides for twelve where a proof says so.</summary>
    public bool UsesTransposition { get; init; } = true;

    /// <summary>How many threads at most, at least 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Less than 1.</exception>
    public int Threads
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
            field = value;
        }
    } = 1;

    /// <summary>What works the cases out; all give the same answer.</summary>
    internal CheckEngine Engine { get; init; } = CheckEngine.Vectors;

    /// <summary>How long a check may take on one thread, in nanoseconds, as foreseen by <see cref="ClaimCost"/>: a minute.</summary>
    public long Budget { get; init; } = 60_000_000_000;

    /// <summary>How long the repairs that are tried may take, likewise; never more than <see cref="Budget"/>.</summary>
    public long RepairBudget { get; init; } = 60_000_000_000;
}

/// <summary>Ways to work cases out.</summary>
internal enum CheckEngine
{
    /// <summary>Many string sets side by side, in the processor's vectors; word by word what no program is written for.</summary>
    Vectors,

    /// <summary>The same programs, number by number.</summary>
    Numbers,

    /// <summary>Word by word.</summary>
    Plain,
}
