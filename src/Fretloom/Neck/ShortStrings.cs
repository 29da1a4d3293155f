using System.Globalization;

namespace Fretloom.Neck;

/// <summary>Strings that begin beyond the nut, as the fifth of a banjo.</summary>
/// <remarks>
/// Pictures count frets along the neck: such a string is open at the fret where it begins. Claims count each string from its own nut, as
/// the string sounds, so what a claim calls its fret 5 is fret 10 of the neck.
/// </remarks>
public static class ShortStrings
{
    /// <summary>The strings of a set that begin beyond the nut, the farthest first.</summary>
    public static IEnumerable<int> Among(Instrument instrument, StringSet strings) =>
        strings.Numbers.Where(number => instrument.String(number).StartsAtFret > 0);

    /// <summary>
    /// How such a string is counted in a claim: <c>String 5 begins at fret 5 of the neck and is counted from there: its fret 2 is fret 7 of the
    /// neck.</c>
    /// </summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="strings">The strings looked at.</param>
    /// <param name="frets">Frets that are spoken of, from each string's own nut; fret 0 stands for none.</param>
    /// <returns>A sentence for each short string; null when there is none.</returns>
    public static string? Words(Instrument instrument, StringSet strings, params IEnumerable<int> frets) =>
        Words(instrument, strings, "", frets);

    /// <summary>The same of an instrument that something else was said of before: <c>String 5 of the banjo begins at fret 5 of the neck ...</c></summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="strings">The strings looked at.</param>
    /// <returns>A sentence for each short string; null when there is none.</returns>
    internal static string? WordsNaming(Instrument instrument, StringSet strings) =>
        Words(instrument, strings, $" of the {instrument}", []);

    private static string? Words(Instrument instrument, StringSet strings, string whose, IEnumerable<int> frets)
    {
        var spoken = frets.Distinct().Order().DefaultIfEmpty(0).ToList();
        var sentences = Among(instrument, strings)
            .Select(number =>
                $"String {Number(number)}{whose} begins at fret {Number(instrument.String(number).StartsAtFret)} of the neck and is counted from there: "
                + $"its {Named(spoken)} {(spoken.Count == 1 ? "is" : "are")} {Named(spoken.Select(fret => fret + instrument.String(number).StartsAtFret))} of the neck."
            )
            .ToList();
        return sentences.Count == 0 ? null : string.Join(" ", sentences);
    }

    private static string Named(IEnumerable<int> frets)
    {
        var all = frets.Select(Number).ToList();
        return all.Count == 1 ? $"fret {all[0]}" : $"frets {string.Join(", ", all[..^1])} and {all[^1]}";
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
