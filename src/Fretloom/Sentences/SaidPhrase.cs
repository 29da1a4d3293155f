namespace Fretloom.Sentences;

/// <summary>A phrase of a show sentence as it is printed.</summary>
/// <param name="Kind">What it names.</param>
/// <param name="Words">What it says, as it stands between commas.</param>
public readonly record struct SaidPhrase(PhraseKind Kind, string Words);
