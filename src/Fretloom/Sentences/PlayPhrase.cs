namespace Fretloom.Sentences;

/// <summary>The parts of a play sentence, beside those of <see cref="ShowPhrase"/>, that an error can point at.</summary>
public enum PlayPhrase
{
    /// <summary>Up, down, and back.</summary>
    Direction,

    /// <summary>Broken thirds, groups.</summary>
    Grouping,

    /// <summary>The order of the chords.</summary>
    Through,

    /// <summary>The keys.</summary>
    Keys,

    /// <summary>Chords at once, or note by note.</summary>
    Sounding,

    /// <summary>How many octaves of a scale.</summary>
    Octaves,

    /// <summary>The note values.</summary>
    Values,

    /// <summary>The metre.</summary>
    Metre,

    /// <summary>The tempo.</summary>
    Tempo,

    /// <summary>How often.</summary>
    Times,

    /// <summary>The count-in.</summary>
    CountIn,

    /// <summary>The click.</summary>
    Click,

    /// <summary>How notes end.</summary>
    Touch,

    /// <summary>The strokes over chords.</summary>
    Strum,

    /// <summary>The picking hand.</summary>
    Picking,

    /// <summary>Bars to be answered.</summary>
    Echo,

    /// <summary>For tuning.</summary>
    Tuning,
}
