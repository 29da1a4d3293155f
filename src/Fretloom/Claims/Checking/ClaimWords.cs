using System.Globalization;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Sentences.Claims;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>The words in which a verdict is told.</summary>
internal static class ClaimWords
{
    public static string Number(int number) => CountWords.Number(number);

    /// <summary><c>exactly 3</c>, <c>at most 5</c>.</summary>
    public static string Of(Count count) => CountWords.Of(count);

    /// <summary>What was wanted instead: <c>not 3</c>, <c>not at most 5</c>.</summary>
    public static string Not(Count count) =>
        count.Comparison == Comparison.Exactly ? $"not {Number(count.Number)}" : $"not {Of(count)}";

    public static string Counted(int count, string noun) => $"{Number(count)} {noun}{(count == 1 ? "" : "s")}";

    /// <summary>Frets given in half frets: <c>0, 5, 7</c>, <c>3.5</c>.</summary>
    public static string Frets(IEnumerable<int> halfFrets) => string.Join(", ", halfFrets.Select(Fret));

    public static string Fret(int halfFret) => (halfFret / 2.0).ToString(CultureInfo.InvariantCulture);

    /// <summary><c>the guitar</c>, <c>guitar strings 4-1</c>, <c>strings in steps of 5, 4 and 5 semitones</c>.</summary>
    public static string Of(Place place, OtherStrings? other = null)
    {
        var instrument = other?.Instrument ?? place.Instrument;
        var strings = other is null ? place.Strings.Numbers : other.Strings;
        if (instrument is null)
        {
            return (other is null ? "strings" : $"strings {strings}")
                + $" tuned in steps of {string.Join(' ', place.Strings.Steps)} semitones";
        }

        return strings is null || strings == instrument.AllStrings
            ? $"the {instrument.Name}"
            : $"{instrument.Name} strings {strings}";
    }

    /// <summary>Whether a verb after <see cref="Of(Place, OtherStrings?)"/> stands in the singular.</summary>
    public static bool IsOne(Place place, OtherStrings? other) =>
        Of(place, other).StartsWith("the ", StringComparison.Ordinal);

    /// <summary><c>full fret</c>, <c>half-turn centre</c>.</summary>
    public static string Of(FretKind kind) => FretWords.Noun(new FretNoun(kind), isPlural: false);

    /// <summary><c>the full frets of strings 4-2</c>.</summary>
    public static string Of(FretSet set) =>
        set is FretSet.Numbers numbers ? (numbers.Frets.Count == 1 ? "fret" : "frets") : FretWords.The(set);

    /// <summary>The same, with where they lie: <c>the full frets (0, 5, 7)</c>, <c>the empty frets (there are none)</c>, <c>fret 0</c>.</summary>
    public static string Of(Case one, FretSet set)
    {
        var frets = FretSets.Of(one, set);
        return set is FretSet.Numbers ? $"{Of(set)} {Frets(frets)}"
            : frets.Count == 0 ? $"{Of(set)} (there are none)"
            : $"{Of(set)} ({Frets(frets)})";
    }

    /// <summary>Which frets of a kind there are, as a clause: <c>the full frets of strings 4-2 are 0, 5, 7</c>, <c>there is no empty fret</c>.</summary>
    public static string Are(FretNoun noun, ValueList<int> frets)
    {
        var (name, strings) = (Of(noun.Kind), OfStrings(noun.Of));
        return frets.Count switch
        {
            0 => $"there is no {name}{strings}",
            1 => $"the only {name}{strings} is {Frets(frets)}",
            _ => $"the {name}s{strings} are {Frets(frets)}",
        };
    }

    /// <summary><c>every seventh shape</c>, <c>the dominant seventh shape of strings 4-1</c>.</summary>
    public static string Of(ShapeSet set) => ShapeWords.Of(set);

    /// <summary><c>the seventh shape on degree 2 (Dm7)</c>.</summary>
    public static string Of(PlacedShape shape) =>
        $"the {shape.Of.Name}" + (shape.Of.Symbol is { } symbol ? $" ({symbol})" : "");

    /// <summary><c>up 2 frets</c>.</summary>
    public static string Moved(int frets) => $"{(frets < 0 ? "down" : "up")} {Counted(Math.Abs(frets), "fret")}";

    public static string OfStrings(OtherStrings? other) => StringWords.Of(other);

    /// <summary>How the words of a sentence name keys: <c>in every major key</c>.</summary>
    public static string Every(ScaleKind kind) => ClaimPrinter.Print(new KeyScope.EveryOf(kind));

    /// <summary>The kind in a sentence: <c>natural minor</c>.</summary>
    public static string Of(ScaleKind kind) => ClaimPrinter.Print(kind);

    public static string List(IEnumerable<string> words)
    {
        var all = words.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }
}
