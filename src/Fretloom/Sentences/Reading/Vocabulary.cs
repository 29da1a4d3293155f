using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Sentences.Claims;

namespace Fretloom.Sentences.Reading;

/// <summary>Every word that a sentence can hold apart from numbers, notes and chords: such a word is never misspelled.</summary>
internal static class Vocabulary
{
    // Words that are understood without standing in an example.
    private const string Understood =
        "show play instrument an my each all no per only just right handed number note hands players inversions adult's fingerings millimetres millimeters kind double flat sharp";

    // Those of claims, apart from the names of shapes.
    private const string Claimed =
        "every each key mode listed palindromic equal not four string strings set sets tuning tunings that is are steps if then there exactly at least most more fewer less than many full empty fret frets half-turn half-turns centre centres center centers of or moved up down lies lie next above below includes include avoids avoid carried themselves itself by carries carry swaps swap degree stands some root last neighbouring neighboring gap halfway between apart higher lower voicing inversion cm centimetres centimeters pattern two-note sixths octave octaves tenths own mirror mirrors flip same form shape shapes spans span stretches stretch mm millimetre millimeter begins begin ends end has have its their those fingered like can be played finger to";

    private static readonly HashSet<string> Words = new(
        Phrases
            .All.SelectMany(kind => kind.Examples)
            .Concat(PlayPhrases.All.SelectMany(kind => kind.Examples).Select(WithoutLetters))
            .Concat(Catalogue.Entries.SelectMany(entry => entry.OtherNames.Prepend(entry.Instrument.Name)))
            .SelectMany(phrase => phrase.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries))
            .SelectMany(word => word.Split('-').Append(word))
            .Concat(Notes.KindWords)
            .Concat(Numbers.Words)
            .Concat(ShapeQuality.All.SelectMany(quality => quality.Name.Split(' ')))
            .Concat(Claimed.Split(' '))
            .Concat(Idioms.Words)
            .Concat(Understood.Split(' ')),
        StringComparer.OrdinalIgnoreCase
    );

    // The letters of the picking fingers stay free for chords.
    private static string WithoutLetters(string phrase) =>
        string.Join(' ', phrase.Split(' ', '-').Where(word => word.Length > 1));

    /// <summary>Whether a word is known, in any case.</summary>
    public static bool Knows(string word) => Words.Contains(word);
}
