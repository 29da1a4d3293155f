namespace Fretloom.Claims;

/// <summary>How a number is compared.</summary>
public enum Comparison
{
    /// <summary><c>exactly 3</c>; with 0, <c>no</c>.</summary>
    Exactly,

    /// <summary><c>at least 3</c>.</summary>
    AtLeast,

    /// <summary><c>at most 3</c>.</summary>
    AtMost,

    /// <summary><c>more than 3</c>.</summary>
    MoreThan,

    /// <summary><c>fewer than 3</c>.</summary>
    FewerThan,
}

/// <summary>A condition on a number: <c>exactly 3</c>, <c>at most 5</c>, <c>no</c>.</summary>
public readonly record struct Count
{
    /// <summary>Makes a condition.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside 0 to 999.</exception>
    public Count(Comparison comparison, int number)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(number);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, 999);
        (Comparison, Number) = (comparison, number);
    }

    /// <summary>How it is compared.</summary>
    public Comparison Comparison { get; }

    /// <summary>What it is compared with.</summary>
    public int Number { get; }

    /// <summary>Whether a number meets the condition.</summary>
    public bool Admits(int found) =>
        Comparison switch
        {
            Comparison.AtLeast => found >= Number,
            Comparison.AtMost => found <= Number,
            Comparison.MoreThan => found > Number,
            Comparison.FewerThan => found < Number,
            _ => found == Number,
        };
}

/// <summary>How many of some things a claim speaks of.</summary>
public abstract record Quantity
{
    private Quantity() { }

    /// <summary>All; with nothing there the case is untested.</summary>
    public sealed record Every : Quantity;

    /// <summary>At least one; with nothing there the case fails.</summary>
    public sealed record Some : Quantity;

    /// <summary>None; with nothing there the case is untested.</summary>
    public sealed record No : Quantity;

    /// <summary><c>exactly 2 of the</c>.</summary>
    /// <param name="Number">How many, 0 to 99.</param>
    public sealed record Exactly(int Number) : Quantity
    {
        /// <summary>How many, 0 to 99.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is outside that.</exception>
        public int Number { get; } = Require.Number(Number);
    }
}
