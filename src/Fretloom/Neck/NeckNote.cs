using Fretloom.Theory;

namespace Fretloom.Neck;

/// <summary>A spot with what it sounds: the spelled pitch and its degree in the key.</summary>
/// <param name="Spot">Where.</param>
/// <param name="Pitch">What sounds, spelled in the key.</param>
/// <param name="Degree">The place in the key's own scale.</param>
public readonly record struct NeckNote(Spot Spot, Pitch Pitch, Degree Degree)
{
    /// <summary>Whether the note is the tonic of the key.</summary>
    public bool IsTonic => Degree == new Degree(1);
}
