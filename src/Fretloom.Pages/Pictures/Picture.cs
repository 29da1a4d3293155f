using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>A drawing with the same content as a table.</summary>
/// <param name="Drawing">What is seen, with its title and its description.</param>
/// <param name="Table">What it holds.</param>
public sealed record Picture(Drawing Drawing, TextTable Table)
{
    /// <summary>What kind of picture it is, as part of a file name: <c>neck</c>, <c>landmarks</c>, <c>cards</c> or <c>boxes</c>.</summary>
    public string Kind { get; init; } = "neck";
}
