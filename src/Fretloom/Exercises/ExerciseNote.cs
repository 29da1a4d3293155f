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

/// <summary>How the picking hand sounds a note.</summary>
public enum Picked
{
    /// <summary>As the player likes.</summary>
    Unsaid,

    /// <summary>With a stroke toward the floor.</summary>
    Down,

    /// <summary>With a stroke away from the floor.</summary>
    Up,

    /// <summary>With the thumb, p (pulgar).</summary>
    Thumb,

    /// <summary>With the index finger, i.</summary>
    Index,

    /// <summary>With the middle finger, m.</summary>
    Middle,

    /// <summary>With the ring finger, a (anular).</summary>
    Ring,
}
