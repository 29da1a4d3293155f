namespace Fretloom.Hand;

/// <summary>A part of what a fingering costs.</summary>
/// <param name="Name">The term's name in <c>docs/hand.md</c>, in camel case.</param>
/// <param name="Cost">Its share of the cost, weight included; without unit.</param>
/// <param name="Words">What it is about, for a teacher: <c>a 5-fret reach between fingers 1 and 2</c>.</param>
public sealed record CostTerm(string Name, double Cost, string Words);
