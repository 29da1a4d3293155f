using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>A shape has one note on each string of its set: whether the numbers agree is known before a claim is checked.</summary>
internal static class ShapeStrings
{
    /// <summary>The failure for a set of the wrong size; null when it fits or is not known, as among listed sets.</summary>
    /// <param name="scope">What the sentence speaks of.</param>
    /// <param name="of">The strings of the shape itself.</param>
    /// <param name="first">Where the shape is named, from here.</param>
    /// <param name="last">To here.</param>
    /// <param name="notes">How many notes it has.</param>
    /// <param name="word">What it is called.</param>
    public static Failure? Check(Scope scope, OtherStrings? of, Token first, Token last, int notes, string word)
    {
        var failure = CheckCount(scope, of, first, last, notes, word);
        return failure is not null && IsSixFigure(first, notes)
            ? Failure.At(
                first,
                $"{first.Text} is {word} in first inversion, and has {notes} notes; with an added sixth it is {word}add6, which has {notes + 1}",
                Edit.Of(first, $"{word}add6")
            )
            : failure;
    }

    // I6: the figure of an inversion, which many read as an added sixth.
    private static bool IsSixFigure(Token numeral, int notes) =>
        notes == 3 && numeral.Text.EndsWith('6') && !numeral.Text.Contains("add", StringComparison.Ordinal);

    private static Failure? CheckCount(Scope scope, OtherStrings? of, Token first, Token last, int notes, string word)
    {
        if (of?.Strings is { } own)
        {
            return own.Count == notes
                ? null
                : Failure.At(first, last, $"{Needs(notes, word)}; 'of strings {own}' names {own.Count}");
        }

        var instrument = of?.Instrument ?? scope.ChosenInstrument;
        var set = of?.Instrument?.AllStrings ?? scope.ChosenStrings;
        if (instrument is null || set is not { } chosen || chosen.Count == notes)
        {
            return null;
        }

        var bare = instrument.Name.Split(" tuned ")[0];
        var has = $"{Needs(notes, word)}; the {bare}'s set has {chosen.Count}";
        var choose = $"choose {Numbers.InWords(notes)} strings.";
        if (chosen.Count < notes)
        {
            return Failure.At(first, last, $"{has}. {char.ToUpperInvariant(choose[0])}{choose[1..]}");
        }

        var near = chosen.Neighbours(notes).Last();
        var (place, repair) = of is null ? ("", $" of strings {near}") : ($"{instrument} ", "");
        return Failure.At(
            first,
            last,
            $"{has}. Say \"of {place}strings {near}\", or {choose}",
            of is null ? [new Edit(last.End, 0, repair)] : []
        ) with
        {
            NamesChange = true,
        };
    }

    /// <summary>The indefinite article of a shape's name: <c>an augmented triad</c>, <c>an octave</c>, <c>a V7</c>, <c>a ii7</c>.</summary>
    public static string Article(string word) =>
        word.StartsWith("augmented", StringComparison.Ordinal) || word == "octave" ? "an" : "a";

    private static string Needs(int notes, string word) =>
        $"{Article(word)} {word} shape{(word == "sixth" ? " is a triad with an added sixth: it" : "")} needs {notes} strings";
}
