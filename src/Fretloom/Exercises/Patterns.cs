namespace Fretloom.Exercises;

/// <summary>The way through notes that lie in a row from low to high.</summary>
public enum Direct
{
    /// <summary>From low to high.</summary>
    Up,

    /// <summary>From high to low.</summary>
    Down,

    /// <summary>Up and back again; the highest note comes once.</summary>
    UpAndDown,

    /// <summary>Down and back again; the lowest note comes once.</summary>
    DownAndUp,
}

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

/// <summary>The order in which the chords of a key come.</summary>
public enum ChordWay
{
    /// <summary>I ii iii IV.</summary>
    ByStep,

    /// <summary>I iii V vii ii IV vi.</summary>
    ByThirds,

    /// <summary>I IV vii iii vi ii V.</summary>
    ByFourths,
}

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
