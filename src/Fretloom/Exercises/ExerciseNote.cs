using Fretloom.Hand;
using Fretloom.Neck;

namespace Fretloom.Exercises;

/// <summary>One note of an exercise. Notes with the same <see cref="At"/> are a chord.</summary>
/// <param name="At">When it begins, as written: counted from the beginning, before any swing.</param>
/// <param name="Length">How long it is, as written.</param>
/// <param name="Note">Where it is played, what sounds, its degree in the key of its section.</param>
/// <param name="Finger">What stops it; none for an open string.</param>
/// <param name="Picked">How the picking hand sounds it.</param>
public readonly record struct ExerciseNote(
    Beats At,
    Beats Length,
    NeckNote Note,
    Finger Finger,
    Picked Picked = Picked.Unsaid
)
{
    /// <summary>When it ends, as written.</summary>
    public Beats End => At + Length;
}
