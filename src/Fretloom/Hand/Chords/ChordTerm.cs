namespace Fretloom.Hand.Chords;

/// <summary>What the cost of a hold is made of; <see cref="ChordWeights"/> gives each term's unit, weight and origin.</summary>
internal enum ChordTerm
{
    /// <summary>Two neighbouring fingers have more frets between them than one fret a finger.</summary>
    Apart,

    /// <summary>Two neighbouring fingers on different frets have fewer frets between them than one fret a finger.</summary>
    Close,

    /// <summary>Two neighbouring fingers share a fret.</summary>
    Beside,

    /// <summary>Index and middle finger share a fret.</summary>
    BesideIndex,

    /// <summary>Ring and little finger share a fret.</summary>
    BesideLittle,

    /// <summary>Two neighbouring fingers share a fret, and the higher one lies farther from the floor.</summary>
    Crossed,

    /// <summary>Of two adjacent fingers the one on the higher fret lies nearer the floor.</summary>
    TowardFloor,

    /// <summary>Two fingers are farther apart along the neck than at rest.</summary>
    Reach,

    /// <summary>The index lies across strings.</summary>
    Barre1,

    /// <summary>The middle finger lies across strings.</summary>
    Barre2,

    /// <summary>The ring finger lies across strings.</summary>
    Barre3,

    /// <summary>The little finger lies across strings.</summary>
    Barre4,

    /// <summary>The middle finger lies across more than two strings.</summary>
    LongBarre2,

    /// <summary>The ring finger lies across more than two strings.</summary>
    LongBarre3,

    /// <summary>The little finger lies across more than two strings.</summary>
    LongBarre4,

    /// <summary>A finger other than the index lies across more than three strings.</summary>
    BarreOfFour,

    /// <summary>A finger other than the index lies across more than two strings, and another finger shares its fret.</summary>
    LongBarreBeside,

    /// <summary>The index lies across strings, and one nearer the floor is played.</summary>
    BarreShort,

    /// <summary>A finger lies over a string that is not played.</summary>
    BarreMuted,

    /// <summary>The index must not touch a string nearer the floor that sounds lower.</summary>
    BarreLift,

    /// <summary>Another finger laid across strings must not touch one nearer the floor that sounds lower.</summary>
    BarreLiftHigher,

    /// <summary>A finger lies across strings while an open string sounds.</summary>
    BarreOpen,

    /// <summary>A finger other than the index lies across strings, and strings nearer the floor are stopped higher.</summary>
    BarreInner,

    /// <summary>Middle and ring finger, or ring and little finger, share a fret, one within the index's barre and one beside it.</summary>
    SplitPair,

    /// <summary>The ring finger, two frets above the index's barre, reaches nearest the floor of all.</summary>
    RingTip,

    /// <summary>Index and ring finger on neighbouring frets, without the middle finger.</summary>
    RingForMiddle,

    /// <summary>Fingers left out below the first one used, but in first position.</summary>
    Lead,

    /// <summary>The same in first position.</summary>
    LeadFirst,

    /// <summary>The little finger is used in first position.</summary>
    LittleFirst,

    /// <summary>The little finger is not on the string nearest the floor.</summary>
    LittleInside,

    /// <summary>Fingers left out between two that are used.</summary>
    Skip,

    /// <summary>In first position a finger lies on a higher fret than its own number.</summary>
    FirstPosition,

    /// <summary>In first position the index is not on the first fret.</summary>
    FirstIndex,

    /// <summary>In first position the only finger is not the one whose number is the fret.</summary>
    LoneNote,

    /// <summary>Four frets or more without the little finger.</summary>
    WideThree,

    /// <summary>The thumb stops a string.</summary>
    Thumb,

    /// <summary>The thumb is on another fret than the lowest finger.</summary>
    ThumbAway,
}
