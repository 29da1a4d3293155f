using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exercises;

/// <summary>A chord over the staff.</summary>
/// <param name="At">Where it begins.</param>
/// <param name="Chord">The chord.</param>
/// <param name="Roman">Its numeral in the key, or null.</param>
/// <param name="Shape">The shape that is held, for a chord box; null when the notes are not held as one.</param>
public sealed record ChordMark(Beats At, Chord Chord, RomanNumeral? Roman, Shape? Shape);
