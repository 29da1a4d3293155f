using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>A drawing with the same content as a table.</summary>
/// <param name="Drawing">What is seen, with its title and its description.</param>
/// <param name="Table">What it holds.</param>
public sealed record Picture(Drawing Drawing, TextTable Table);
