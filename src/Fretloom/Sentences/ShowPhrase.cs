namespace Fretloom.Sentences;

/// <summary>The parts of a show sentence that an error can point at. See <see cref="Phrases"/> for the phrases that make them.</summary>
public enum ShowPhrase
{
    /// <summary>What to see.</summary>
    Subject,

    /// <summary>The instrument, its tuning and capo.</summary>
    Instrument,

    /// <summary>The key.</summary>
    Key,

    /// <summary>The strings.</summary>
    Strings,

    /// <summary>The frets.</summary>
    Frets,

    /// <summary>How chords are voiced.</summary>
    Voicing,

    /// <summary>Which member lies lowest.</summary>
    Inversion,

    /// <summary>The position of the hand.</summary>
    Position,

    /// <summary>How many shapes of each chord.</summary>
    Shapes,

    /// <summary>What stands on the marks.</summary>
    Labels,

    /// <summary>The hand.</summary>
    Hand,

    /// <summary>The player.</summary>
    Player,
}
