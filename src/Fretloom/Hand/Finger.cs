namespace Fretloom.Hand;

/// <summary>What stops a string: a finger of the fretting hand, numbered as in music for fretted instruments.</summary>
public enum Finger
{
    /// <summary>The open string.</summary>
    None = 0,

    /// <summary>1.</summary>
    Index = 1,

    /// <summary>2.</summary>
    Middle = 2,

    /// <summary>3.</summary>
    Ring = 3,

    /// <summary>4.</summary>
    Little = 4,

    /// <summary>The thumb, reaching over the neck; printed as T.</summary>
    Thumb = 5,
}
