namespace Fretloom.Exercises;

/// <summary>A tempo that begins.</summary>
/// <param name="At">When, in quarter notes.</param>
/// <param name="Tempo">The tempo.</param>
public readonly record struct TempoChange(double At, Tempo Tempo);
