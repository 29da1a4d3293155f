using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>A spot with what stops it.</summary>
/// <remarks>The <c>default</c> is string 1, open.</remarks>
public readonly record struct FingeredNote
{
    /// <summary>Makes a note.</summary>
    /// <param name="spot">Where.</param>
    /// <param name="finger">The finger; <see cref="Finger.None"/> for an open string.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such finger.</exception>
    public FingeredNote(Spot spot, Finger finger)
    {
        Spot = spot;
        Finger = finger is >= Finger.None and <= Finger.Thumb
            ? finger
            : throw new ArgumentOutOfRangeException(nameof(finger), finger, "There is no such finger.");
    }

    /// <summary>Where.</summary>
    public Spot Spot { get; }

    /// <summary>The finger; <see cref="Finger.None"/> for an open string.</summary>
    public Finger Finger { get; }
}
