namespace Fretloom.Exercises;

/// <summary>How a row of notes is gone through.</summary>
public enum Grouping
{
    /// <summary>Note by note: 1 2 3 4.</summary>
    Plain,

    /// <summary>1 3 2 4 3 5.</summary>
    BrokenThirds,

    /// <summary>1 2 3, 2 3 4, 3 4 5.</summary>
    Threes,

    /// <summary>1 2 3 4, 2 3 4 5.</summary>
    Fours,
}
