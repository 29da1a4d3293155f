using Fretloom.Neck;

namespace Fretloom.Exercises;

/// <summary>A string that sounds.</summary>
/// <param name="At">When it begins, in quarter notes.</param>
/// <param name="Length">How long it sounds, in quarter notes.</param>
/// <param name="Spot">Where it is played.</param>
/// <param name="Midi">What sounds, as a MIDI note number.</param>
/// <param name="IsAccented">Whether it begins a bar.</param>
/// <param name="IsPartner">Whether it is the second string of a pair.</param>
/// <param name="Note">The place of its note in <see cref="Exercise.Notes"/>, counted from 0.</param>
public readonly record struct SoundedNote(
    double At,
    double Length,
    Spot Spot,
    int Midi,
    bool IsAccented,
    bool IsPartner,
    int Note
);
