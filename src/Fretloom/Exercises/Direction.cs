namespace Fretloom.Exercises;

/// <summary>The way through notes that lie in a row from low to high.</summary>
public enum Direction
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
