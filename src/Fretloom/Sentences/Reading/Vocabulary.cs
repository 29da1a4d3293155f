using Fretloom.Neck;

namespace Fretloom.Sentences.Reading;

/// <summary>Every word that a sentence can hold apart from numbers, notes and chords: such a word is never misspelled.</summary>
internal static class Vocabulary
{
    // Words that are understood without standing in an example.
    private const string Understood =
        "show instrument an my each all no per only just right handed number note hands players inversions adult's fingerings millimetres millimeters kind double flat sharp";

    private static readonly HashSet<string> Words = new(
        Phrases
            .All.SelectMany(kind => kind.Examples)
            .Concat(Catalogue.Entries.SelectMany(entry => entry.OtherNames.Prepend(entry.Instrument.Name)))
            .SelectMany(phrase => phrase.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries))
            .SelectMany(word => word.Split('-').Append(word))
            .Concat(Notes.KindWords)
            .Concat(Numbers.Words)
            .Concat(Understood.Split(' ')),
        StringComparer.OrdinalIgnoreCase
    );

    /// <summary>Whether a word is known, in any case.</summary>
    public static bool Knows(string word) => Words.Contains(word);
}
