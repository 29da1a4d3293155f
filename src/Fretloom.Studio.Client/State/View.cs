using Fretloom.Neck;

namespace Fretloom.Studio.Client.State;

/// <summary>What the teacher is looking at.</summary>
/// <param name="Sentence">The show sentence, as it was said.</param>
/// <param name="Built">The spots chosen by hand, in the order chosen; empty for none.</param>
/// <param name="ShapeAt">Which of the sentence's shapes is brought out, counted from 0; null for none.</param>
public sealed record View(string Sentence, ValueList<Spot> Built = default, int? ShapeAt = null);
