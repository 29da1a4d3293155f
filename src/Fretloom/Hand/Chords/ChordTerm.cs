namespace Fretloom.Hand.Chords;

/// <summary>What the cost of a hold is made of; the table of weights says each term's unit, weight and origin.</summary>
internal enum ChordTerm
{
    /// <summary>Frets between two neighbouring fingers beyond one fret a finger.</summary>
    Apart,

    /// <summary>Frets missing to one fret a finger, two neighbouring fingers on different frets.</summary>
    Close,

    /// <summary>Frets missing to one fret a finger, two neighbouring fingers on one fret.</summary>
    Beside,

    /// <summary>Two fingers on one fret, the higher one farther from the floor.</summary>
    Crossed,
    TowardFloor1,
    TowardFloor2,
    FromFloor1,
    FromFloor2,
    Reach12,
    Reach23,
    Reach34,
    Reach13,
    Reach24,
    Reach14,
    Squeeze12,
    Squeeze23,
    Squeeze34,
    Squeeze13,
    Squeeze24,
    Squeeze14,
    Barre1,
    Barre2,
    Barre3,
    Barre4,
    BarreLength1,
    BarreLength2,
    BarreLength3,
    BarreLength4,
    BarreMuted,
    BarreLift1,
    BarreLiftX,
    BarreGap,
    BarreOpen,
    BarreFew1,
    BarreAbove,
    BarreShort,
    NoIndex,
    Lead,
    Little,
    Skip,
    FirstPosition,
    Used,
    Thumb,
    ThumbAway,
}
