namespace Fretloom.Exercises;

/// <summary>How long notes are.</summary>
public enum NoteValue
{
    /// <summary>One to a bar of 4/4.</summary>
    Wholes,

    /// <summary>Two to a bar of 4/4.</summary>
    Halves,

    /// <summary>Quarters.</summary>
    Quarters,

    /// <summary>Eighths.</summary>
    Eighths,

    /// <summary>Eighths, long and short.</summary>
    SwingEighths,

    /// <summary>Three to a quarter.</summary>
    Triplets,

    /// <summary>Sixteenths.</summary>
    Sixteenths,
}
