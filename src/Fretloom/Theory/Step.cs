namespace Fretloom.Theory;

/// <summary>One of the seven letter names, in the order of the octave, from C (0) to B (6).</summary>
public enum Step
{
    /// <summary>C.</summary>
    C,

    /// <summary>D.</summary>
    D,

    /// <summary>E.</summary>
    E,

    /// <summary>F.</summary>
    F,

    /// <summary>G.</summary>
    G,

    /// <summary>A.</summary>
    A,

    /// <summary>B.</summary>
    B,
}

/// <summary>What a letter name alone tells.</summary>
public static class Steps
{
    private static ReadOnlySpan<byte> SemitonesAboveC => [0, 2, 4, 5, 7, 9, 11];

    /// <summary>Semitones from C up to the natural note of this letter, 0 to 11.</summary>
    public static int Semitones(this Step step) => SemitonesAboveC[(int)step];

    /// <summary>The letter <paramref name="count"/> letters further up (or down when negative), round and round.</summary>
    public static Step Plus(this Step step, int count) => (Step)Modulo.Of((int)step + count, 7);
}
