using System.Globalization;
using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>How pictures are put into words.</summary>
internal static class Wording
{
    /// <summary><c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    public static string List(IEnumerable<string> items)
    {
        var words = items.ToList();
        return words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words[..^1])} and {words[^1]}";
    }

    /// <summary>Numbers in a list.</summary>
    public static string List(IEnumerable<int> numbers) => List(numbers.Select(Number));

    public static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary><c>frets 0 to 12</c>, <c>fret 5</c>.</summary>
    public static string Frets(FretRange frets) =>
        frets.Count == 1 ? $"fret {Number(frets.First)}" : $"frets {Number(frets.First)} to {Number(frets.Last)}";

    /// <summary><c>strings 4 to 1</c>, <c>strings 6, 4 and 3</c>, <c>string 2</c>.</summary>
    public static string Strings(StringSet strings) =>
        strings.Count == 1 ? $"string {Number(strings.Numbers[0])}"
        : strings.IsRun ? $"strings {Number(strings.Numbers[0])} to {Number(strings.Numbers[^1])}"
        : $"strings {List(strings.Numbers)}";

    /// <summary>The instrument with its capo: <c>guitar with a capo at 2</c>.</summary>
    public static string Name(Instrument instrument) =>
        Accidentals.Pretty(instrument.Name) + (instrument.Capo > 0 ? $" with a capo at {Number(instrument.Capo)}" : "");

    /// <summary>How an instrument is held, where that is not the usual way: <c>left-handed</c>, <c>turned over</c>.</summary>
    public static string Handedness(bool isTurnedOver, bool isLeftHanded) =>
        isTurnedOver ? "turned over"
        : isLeftHanded ? "left-handed"
        : "";

    /// <summary>How the instrument of an exhibit is held, where that is not the usual way.</summary>
    public static string Handedness(this Exhibit exhibit) =>
        Handedness(exhibit.Player.IsTurnedOver, exhibit.IsLeftHanded);

    /// <summary>Where on which instrument: <c>guitar strings 4 to 1, frets 0 to 12</c>.</summary>
    public static string Place(NeckMap map) => $"{Name(map.Instrument)} {Strings(map.Strings)}, {Frets(map.Frets)}";
}
