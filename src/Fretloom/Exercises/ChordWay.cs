namespace Fretloom.Exercises;

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
