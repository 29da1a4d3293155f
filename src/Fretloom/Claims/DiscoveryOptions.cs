namespace Fretloom.Claims;

/// <summary>How discovery is done.</summary>
public sealed record DiscoveryOptions
{
    /// <summary>As a teacher wants it.</summary>
    public static DiscoveryOptions Default { get; } = new();

    /// <summary>Decides which tunings are drawn where there are too many to try all, and the order of <see cref="DiscoveryResult.AtRandom"/>.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How many claims of each list at most.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 100.</exception>
    public int Count
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 100);
            field = value;
        }
    } = 20;
}
