namespace Fretloom.Exercises;

/// <summary>A stroke of a bar.</summary>
/// <param name="Eighth">When, counted from 0.</param>
/// <param name="IsDown">Whether it goes toward the floor.</param>
public readonly record struct StrumStroke(int Eighth, bool IsDown);
