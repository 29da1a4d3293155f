namespace Fretloom.Hand;

/// <summary>A part of what a fingering costs.</summary>
/// <param name="Name">The term's name in <c>docs/hand.md</c>, in camel case.</param>
/// <param name="Cost">Its share of the cost, weight included; without unit, 0 or more.</param>
/// <param name="Words">What it is about, for a teacher: <c>a 5-fret reach between fingers 1 and 2</c>.</param>
public sealed record CostTerm(string Name, double Cost, string Words)
{
    /// <inheritdoc cref="CostTerm(string, double, string)"/>
    /// <exception cref="ArgumentException">It is empty.</exception>
    public string Name { get; } =
        string.IsNullOrEmpty(Name) ? throw new ArgumentException("A term has a name.", nameof(Name)) : Name;

    /// <inheritdoc cref="CostTerm(string, double, string)"/>
    /// <exception cref="ArgumentOutOfRangeException">It is negative or not finite.</exception>
    public double Cost { get; } =
        Cost is >= 0 and < double.PositiveInfinity
            ? Cost
            : throw new ArgumentOutOfRangeException(nameof(Cost), Cost, "A term costs 0 or more.");

    /// <inheritdoc cref="CostTerm(string, double, string)"/>
    public string Words { get; } = Words ?? throw new ArgumentNullException(nameof(Words));
}
