using System.Globalization;
using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Sentences.Claims;
using Fretloom.Theory;

namespace Fretloom.Sentences;

/// <summary>Writes claims in their one canonical form, inflected. Parsing what is written gives an equal claim.</summary>
public static class ClaimPrinter
{
    /// <summary>The sentence: keys, place, frets, what is claimed, full stop.</summary>
    public static string Print(ClaimSentence sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        var keys = Print(sentence.Keys);
        var window = sentence.Window is { } frets ? $", {Print(frets)}" : "";
        return $"I{keys[1..]}, {Print(sentence.Places)}{window}, {Print(sentence.Claim)}.";
    }

    /// <summary>What is claimed, without keys and places: <c>there is exactly 1 empty fret</c>.</summary>
    public static string Print(Claim claim)
    {
        ArgumentNullException.ThrowIfNull(claim);
        return ClaimWords.Of(claim);
    }

    /// <summary>The keys: <c>in every harmonic minor key</c>.</summary>
    public static string Print(KeyScope keys) =>
        keys switch
        {
            KeyScope.EveryKey => "in every key",
            KeyScope.EveryMinorKey => "in every minor key",
            KeyScope.EveryMode => "in every mode",
            KeyScope.EveryOf every => $"in every {Print(every.Kind)} key",
            KeyScope.One one => $"in the key of {one.Key.Tonic} {Print(one.Key.Kind)}",
            _ => throw new NotSupportedException(),
        };

    /// <summary>The place: <c>on guitar strings 4-1</c>, <c>on every palindromic listed string set</c>.</summary>
    public static string Print(PlaceScope places) =>
        places switch
        {
            PlaceScope.On on => $"on {StringWords.On(on.Instrument, on.Strings)}{Capo(on.Instrument)}",
            PlaceScope.Listed listed =>
                $"on every {(listed.IsPalindromic ? "palindromic " : "")}{(listed.IsFourString ? "four-string " : "")}listed string set",
            PlaceScope.Tunings tunings => "on every " + Tuning(tunings),
            _ => throw new NotSupportedException(),
        };

    /// <summary>The frets looked at: <c>on frets 0 to 12</c>.</summary>
    public static string Print(FretRange window) =>
        string.Create(CultureInfo.InvariantCulture, $"on frets {window.First} to {window.Last}");

    /// <summary>A kind of key: <c>major</c>, <c>natural minor</c>; "minor" alone stands for all three forms.</summary>
    public static string Print(ScaleKind kind) => kind == ScaleKind.NaturalMinor ? "natural minor" : kind.Name;

    private static string Capo(Instrument instrument) =>
        instrument.Capo == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", with a capo at {instrument.Capo}");

    private static string Tuning(PlaceScope.Tunings tunings)
    {
        var palindromic = tunings.IsPalindromic ? " that is palindromic" : "";
        var steps = (tunings.Least, tunings.Most) == (1, 11) ? "" : $" with steps {tunings.Least} to {tunings.Most}";
        return string.Create(CultureInfo.InvariantCulture, $"{tunings.Strings} string tuning{palindromic}{steps}");
    }
}
