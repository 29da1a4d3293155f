namespace Fretloom.Sentences;

/// <summary>The kinds of phrase of a show sentence; each stands at most once.</summary>
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

    /// <summary>What stands on the marks.</summary>
    Labels,

    /// <summary>The hand.</summary>
    Hand,

    /// <summary>The player.</summary>
    Player,
}
