namespace Fretloom.Theory;

/// <summary>The kind of stack a chord is.</summary>
public enum ChordFamily
{
    /// <summary>Two members: the power chord.</summary>
    Dyad,

    /// <summary>Root, third and fifth.</summary>
    Triad,

    /// <summary>A second or fourth in place of the third, with or without a seventh and more.</summary>
    Suspended,

    /// <summary>A triad with a sixth.</summary>
    Sixth,

    /// <summary>A triad with a note beyond the octave and no seventh.</summary>
    Added,

    /// <summary>A triad with a seventh, also with members altered.</summary>
    Seventh,

    /// <summary>A seventh chord with a ninth.</summary>
    Ninth,

    /// <summary>A seventh chord with an eleventh.</summary>
    Eleventh,

    /// <summary>A seventh chord with a thirteenth.</summary>
    Thirteenth,

    /// <summary>Stacked in fourths.</summary>
    Quartal,
}
