namespace Fretloom.Studio.Client.Ask;

/// <summary>Phrases that a picker offers together.</summary>
/// <param name="Name">The heading; empty for none.</param>
/// <param name="Words">The phrases.</param>
public sealed record ChoiceGroup(string Name, ValueList<string> Words)
{
    /// <summary>Phrases that need no heading.</summary>
    public static ValueList<ChoiceGroup> One(IEnumerable<string> words) => [new("", words.Distinct().ToValueList())];
}

/// <summary>What phrases are about.</summary>
public enum PhraseGroup
{
    /// <summary>Where on the neck.</summary>
    Place,

    /// <summary>Which notes.</summary>
    Notes,

    /// <summary>How chords are laid out.</summary>
    Chords,

    /// <summary>What stands on the marks.</summary>
    Marks,

    /// <summary>Hand and player.</summary>
    Hand,
}
