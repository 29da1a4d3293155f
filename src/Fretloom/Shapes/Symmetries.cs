using Fretloom.Neck;

namespace Fretloom.Shapes;

/// <summary>What turning a key over does on a string set.</summary>
/// <param name="HalfTurnCentres">
/// Places, ascending, halves allowed, about which the key pattern of the endless neck is carried onto itself; those inside the range.
/// </param>
/// <param name="Pairs">
/// Shapes of the key that are images of one another: run of strings by run from the far side, then by degree of the first, degree of the second.
/// </param>
public sealed record Symmetries(ValueList<double> HalfTurnCentres, ValueList<ShapePair> Pairs);

/// <summary>Two chords of a key whose shapes are images of one another.</summary>
/// <param name="A">The first chord's Roman numeral; for thirds the degree of the lower note.</param>
/// <param name="B">The second's, of the same or a higher degree; equal to the first for a shape that is its own image.</param>
/// <param name="Motion"><c>half-turn</c>, <c>mirror</c> or <c>same form</c>. A pair stands once for each motion that is true of it.</param>
/// <param name="Strings">The strings both shapes lie on.</param>
public sealed record ShapePair(string A, string B, string Motion, StringSet Strings);
