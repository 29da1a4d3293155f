using Fretloom.Neck;

namespace Fretloom.Studio.Client.State;

/// <summary>What the teacher is looking at.</summary>
/// <param name="Sentence">The show sentence, as it was said.</param>
/// <param name="Built">The spots chosen by hand, in the order chosen; empty for none.</param>
/// <param name="ShapeAt">Which of the sentence's shapes is brought out, counted from 0; null for none.</param>
/// <param name="HasTwin">Whether the twin of the shape that is brought out is seen beside it.</param>
public sealed record View(string Sentence, ValueList<Spot> Built = default, int? ShapeAt = null, bool HasTwin = false);
