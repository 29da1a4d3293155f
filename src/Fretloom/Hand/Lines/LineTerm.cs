namespace Fretloom.Hand.Lines;

/// <summary>What a line can cost. Names, units and weights stand in <c>docs/hand.md</c>.</summary>
internal enum LineTerm
{
    /// <summary>The hand moves along the neck.</summary>
    Shift,

    /// <summary>Neighbouring notes lie farther apart than their fingers.</summary>
    Stretch,

    /// <summary>Neighbouring notes lie nearer together than their fingers.</summary>
    Squeeze,

    /// <summary>A finger plays beside its own place in the position.</summary>
    OutOfPlace,

    /// <summary>One finger slides along a string.</summary>
    Slide,

    /// <summary>One finger leaps to another string and fret.</summary>
    Leap,

    /// <summary>One finger stops the same fret on another string.</summary>
    Roll,

    /// <summary>Fingers on one fret lie across each other.</summary>
    Tangle,

    /// <summary>A finger passes over another while the hand moves.</summary>
    Passing,

    /// <summary>A note is repeated with another finger.</summary>
    Substitution,

    /// <summary>The next note is on another string.</summary>
    Crossing,

    /// <summary>An open string sounds while the hand is away from first position.</summary>
    OpenAway,

    /// <summary>Fingers that are weaker than the index.</summary>
    Weak,

    /// <summary>Notes where the body of the instrument is in the way.</summary>
    High,

    /// <summary>How far up the neck the hand lies.</summary>
    Up,
}
