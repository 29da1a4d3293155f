namespace Fretloom.Exercises;

/// <summary>Words at a place of an exercise.</summary>
/// <param name="At">Where.</param>
/// <param name="Text">What, such as <c>1 &amp; 2 &amp;</c>.</param>
public sealed record StaffWords(Beats At, string Text);
