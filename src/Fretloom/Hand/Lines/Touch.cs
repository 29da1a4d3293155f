namespace Fretloom.Hand.Lines;

/// <summary>One way to play a note of a line.</summary>
/// <param name="Place">The place of its string under the hand, counted from the floor.</param>
/// <param name="Fret">The fret, counted from the nut or capo; without meaning when the string is open.</param>
/// <param name="Finger">Index to little, or none for an open string.</param>
/// <param name="Position">The fret where the index finger is at home.</param>
internal readonly record struct Touch(int Place, int Fret, Finger Finger, int Position)
{
    /// <summary>Whether the string is open.</summary>
    public bool IsOpen => Finger == Finger.None;
}
