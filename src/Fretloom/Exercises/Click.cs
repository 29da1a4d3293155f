namespace Fretloom.Exercises;

/// <summary>A click of the metronome.</summary>
/// <param name="At">When, in quarter notes.</param>
/// <param name="IsFirst">Whether it begins a bar.</param>
public readonly record struct Click(double At, bool IsFirst);
