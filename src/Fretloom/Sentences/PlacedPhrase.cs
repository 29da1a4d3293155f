namespace Fretloom.Sentences;

/// <summary>A phrase of a show sentence and where it stands.</summary>
/// <param name="Kind">What it names.</param>
/// <param name="Column">Where it begins, counted from 1.</param>
/// <param name="Length">How many characters it takes.</param>
public readonly record struct PlacedPhrase(PhraseKind Kind, int Column, int Length)
{
    /// <summary>Its words in the sentence.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It belongs to a longer sentence.</exception>
    public string In(string sentence) => sentence.Substring(Column - 1, Length);
}
