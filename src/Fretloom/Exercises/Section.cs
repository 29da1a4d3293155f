using Fretloom.Theory;

namespace Fretloom.Exercises;

/// <summary>A part of an exercise in one key.</summary>
/// <param name="At">Where it begins, at a bar line.</param>
/// <param name="Key">Its key, which gives the key signature.</param>
/// <param name="Heading">Words at its beginning, such as the key; null for none.</param>
public sealed record Section(Beats At, Key Key, string? Heading);
