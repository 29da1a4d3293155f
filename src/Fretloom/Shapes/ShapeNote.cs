using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>One note of a shape.</summary>
/// <param name="Spot">Where it lies.</param>
/// <param name="Pitch">What sounds, spelled as the chord or scale spells it.</param>
/// <param name="Degree">The place in the key's own scale.</param>
/// <param name="Member">The place in the chord, <c>1</c> for the root, <c>3</c>, <c>5</c>, <c>7</c>; in a stretch of scale the place in that scale.</param>
public readonly record struct ShapeNote(Spot Spot, Pitch Pitch, Degree Degree, string Member);
