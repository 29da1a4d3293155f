namespace Fretloom.Shapes;

/// <summary>How the members of a chord follow each other from the lowest-sounding string up.</summary>
public enum Arrangement
{
    /// <summary>In stacked order upward, each as near above the one before as it can be: triads and sevenths lie within an octave.</summary>
    Close,

    /// <summary>Close position with the second member from the top an octave lower.</summary>
    DropTwo,

    /// <summary>Close position with the third member from the top an octave lower.</summary>
    DropThree,

    /// <summary>Every order, members as far apart as the strings put them.</summary>
    AnyOrder,
}

/// <summary>Which chord shapes are looked for.</summary>
public abstract record Voicing
{
    private Voicing() { }

    /// <summary>Each string sounds exactly one member.</summary>
    /// <param name="Arrangement">The order of the members.</param>
    /// <param name="Inversions">Which member lies lowest: 0 the root, 1 the third; empty means every one.</param>
    /// <param name="Position">The index finger's fret when the shape must lie in one position (see <see cref="Strummed"/>), or null.</param>
    public sealed record OneNotePerString(Arrangement Arrangement, ValueList<int> Inversions, int? Position = null)
        : Voicing;

    /// <summary>All strings that fit sound a member, members may be doubled, the others are muted.</summary>
    /// <param name="Position">The index finger's fret; null looks along the whole range. First position is fret 1 with the open strings.</param>
    /// <param name="Inversions">As above.</param>
    public sealed record Strummed(int? Position, ValueList<int> Inversions) : Voicing;

    /// <summary>A run of neighbouring strings, few notes, small span, any member lowest: for beginners.</summary>
    /// <param name="StringCount">How many strings sound.</param>
    /// <param name="Position">As above.</param>
    public sealed record Easy(int StringCount, int? Position) : Voicing;
}
