using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>A spot with what stops it.</summary>
/// <remarks>The <c>default</c> is string 1, open.</remarks>
/// <param name="Spot">Where.</param>
/// <param name="Finger">The finger; <see cref="Finger.None"/> for an open string.</param>
public readonly record struct FingeredNote(Spot Spot, Finger Finger);
