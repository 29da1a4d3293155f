namespace Fretloom.Exercises;

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
