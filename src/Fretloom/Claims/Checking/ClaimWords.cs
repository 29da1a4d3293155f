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

    /// <summary>A number that was found beside what is claimed of it: <c>not 3</c>, <c>fewer than 4</c>, <c>more than 2</c>.</summary>
    public static string Against(Count count, string fewer = "fewer") =>
        count.Comparison switch
        {
            Comparison.AtLeast => $"{fewer} than {Number(count.Number)}",
            Comparison.AtMost => $"more than {Number(count.Number)}",
            Comparison.MoreThan => $"not more than {Number(count.Number)}",
            Comparison.FewerThan => $"not {fewer} than {Number(count.Number)}",
            _ => $"not {Number(count.Number)}",
        };

    public static string Counted(int count, string noun) => $"{Number(count)} {noun}{(count == 1 ? "" : "s")}";

    /// <summary>Frets given in half frets: <c>0, 5 and 7</c>, <c>3.5</c>.</summary>
    public static string Frets(IEnumerable<int> halfFrets) => List(halfFrets.Select(Fret));

    /// <summary><c>fret 5</c>, <c>frets 0, 5 and 7</c>, <c>no fret</c>.</summary>
    public static string AtFrets(ValueList<int> halfFrets) =>
        halfFrets.Count == 0 ? "no fret" : $"{(halfFrets.Count == 1 ? "fret" : "frets")} {Frets(halfFrets)}";

    public static string Fret(int halfFret) => (halfFret / 2.0).ToString(CultureInfo.InvariantCulture);

    /// <summary><c>1 fret</c>, <c>5.5 frets</c>.</summary>
    public static string Distance(int halfFrets) => $"{Fret(halfFrets)} {(halfFrets == 2 ? "fret" : "frets")}";

    /// <summary>Where a case is looked at, in the order of a claim: <c>In C major, on guitar strings 4-1, on frets 0 to 12</c>.</summary>
    public static string Where(Case one)
    {
        var capo = one.Place.Instrument is { Capo: > 0 and var at } ? $", with a capo at {Number(at)}" : "";
        var place = one.Place.Instrument is null ? one.Place.ToInstrument().Name : one.Place.Name;
        var window = one.Neck.Window is { } frets ? $", {ClaimPrinter.Print(frets)}" : "";
        return $"In {one.Key.Tonic} {Of(one.Key.Kind)}, on {place}{capo}{window}";
    }

    /// <summary><c>the strings</c>, <c>strings 4-2</c>, <c>banjo strings 4-1</c>, <c>the strings of the bass</c>.</summary>
    public static string Strings(OtherStrings? other) =>
        other switch
        {
            { Strings: { } strings, Instrument: var instrument } => instrument is null
                ? $"strings {strings}"
                : StringWords.On(instrument, strings),
            { Instrument: { } whole } => $"the strings of the {whole.Name}",
            _ => "the strings",
        };

    /// <summary><c>full fret</c>, <c>half-turn centre</c>.</summary>
    public static string Of(FretKind kind) => FretWords.Noun(new FretNoun(kind), isPlural: false);

    /// <summary>A set with where it lies: <c>the full frets (0, 5 and 7)</c>, <c>the only empty fret (11)</c>, <c>the empty frets (there are none)</c>, <c>fret 0</c>.</summary>
    public static string Of(Case one, FretSet set)
    {
        var frets = FretSets.Of(one, set);
        return set is FretSet.Numbers ? FretWords.The(set)
            : frets.Count == 0 ? $"{FretWords.The(set)} (there are none)"
            : $"{(frets.Count == 1 ? OnlyOne(set) : FretWords.The(set))} ({Frets(frets)})";
    }

    /// <summary>Whether a verb after <see cref="Of(Case, FretSet)"/> stands in the plural.</summary>
    public static bool ArePlural(Case one, FretSet set) =>
        set is FretSet.Named or FretSet.OfDegree ? FretSets.Of(one, set).Count != 1 : FretWords.IsPlural(set);

    /// <summary>A set of one: <c>the only empty fret</c>.</summary>
    public static string OnlyOne(FretSet set) =>
        set switch
        {
            FretSet.Named named => $"the only {FretWords.Noun(named.Noun, isPlural: false)}",
            FretSet.OfDegree of => $"the fret of degree {Number(of.Degree)} on string {Number(of.String)}",
            _ => FretWords.The(set),
        };

    /// <summary>Which frets of a kind there are, as a clause: <c>the full frets of strings 4-2 are 0, 5 and 7</c>, <c>there is no empty fret</c>.</summary>
    public static string Are(FretNoun noun, ValueList<int> frets) =>
        frets.Count switch
        {
            0 => $"there is no {FretWords.Noun(noun, isPlural: false)}",
            1 => $"the only {FretWords.Noun(noun, isPlural: false)} is {Frets(frets)}",
            _ => $"the {FretWords.Noun(noun, isPlural: true)} are {Frets(frets)}",
        };

    /// <summary>How many of a kind there are: <c>3 full frets (0, 5 and 10)</c>, <c>no empty fret</c>.</summary>
    public static string HowMany(FretNoun noun, ValueList<int> frets) =>
        frets.Count == 0
            ? $"no {FretWords.Noun(noun, isPlural: false)}"
            : $"{Number(frets.Count)} {FretWords.Noun(noun, isPlural: frets.Count > 1)} ({Frets(frets)})";

    /// <summary><c>every seventh shape</c>, <c>the dominant seventh shape of strings 4-1</c>.</summary>
    public static string Of(ShapeSet set) => ShapeWords.Of(set);

    /// <summary><c>no seventh shape</c>, for <c>some seventh shape</c> where there is none such.</summary>
    public static string NoneOf(ShapeSet set) =>
        Of(set is ShapeSet.Several some ? some with { Quantity = new Quantity.No() } : set);

    /// <summary><c>up 2 frets</c>.</summary>
    public static string Moved(int frets) => $"{(frets < 0 ? "down" : "up")} {Counted(Math.Abs(frets), "fret")}";

    public static string OfStrings(OtherStrings? other) => StringWords.Of(other);

    /// <summary>The kind in a sentence: <c>natural minor</c>.</summary>
    public static string Of(ScaleKind kind) => ClaimPrinter.Print(kind);

    public static string List(IEnumerable<string> words)
    {
        var all = words.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }
}
