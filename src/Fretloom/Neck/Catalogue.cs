using System.Diagnostics.CodeAnalysis;
using Fretloom.Neck.Tables;

namespace Fretloom.Neck;

/// <summary>The instruments that can be named in a sentence.</summary>
/// <remarks>
/// Names are compared without regard to case; hyphens and spaces are alike, <c>uke</c> is <c>ukulele</c>, and <c>7-string</c>
/// is <c>seven-string</c>; <c>guitar in drop D</c> is <c>drop D guitar</c>. An article before the name belongs to the sentence and is not read here.
/// </remarks>
public static class Catalogue
{
    private static readonly string[] Numbers = ["four", "five", "six", "seven", "eight"];

    /// <summary>Every instrument with its other names and sources, family by family.</summary>
    public static ValueList<CatalogueEntry> Entries { get; } =
    [.. Guitars.Entries, .. UkulelesAndBasses.Entries, .. MandolinsAndBanjos.Entries, .. LutesAndCousins.Entries];

    /// <summary>Every instrument, in the order of <see cref="Entries"/>; no two names are equal.</summary>
    public static ValueList<Instrument> All { get; } = Entries.Select(entry => entry.Instrument).ToValueList();

    private static readonly Dictionary<string, Instrument> ByName = Entries
        .SelectMany(entry => NamesOf(entry).Select(name => (Name: Plain(name), entry.Instrument)))
        .ToDictionary(named => named.Name, named => named.Instrument, StringComparer.Ordinal);

    /// <summary>What a sentence that names no instrument means: the guitar.</summary>
    public static Instrument Default => All[0];

    /// <summary>Finds an instrument by its name or another of its names.</summary>
    public static bool TryFind([NotNullWhen(true)] string? name, [NotNullWhen(true)] out Instrument? instrument) =>
        ByName.TryGetValue(Plain(name ?? ""), out instrument)
        || ByName.TryGetValue(TuningFirst(Plain(name ?? "")), out instrument);

    /// <summary>The names nearest to a misspelled one, nearest first, at most three; empty when none is near.</summary>
    /// <param name="name">What was read.</param>
    /// <returns>Names, canonical or other, that <see cref="TryFind"/> finds, each of another instrument.</returns>
    public static ValueList<string> Suggest(string name)
    {
        var plain = Plain(name);
        return Entries
            .SelectMany(entry =>
                NamesOf(entry).Select(known => (known, entry, Distance: EditDistance.Between(plain, Plain(known))))
            )
            .Where(near => near.Distance <= EditDistance.Tolerated(plain.Length))
            .OrderBy(near => near.Distance)
            .DistinctBy(near => near.entry)
            .Take(3)
            .Select(near => near.known)
            .ToValueList();
    }

    private static IEnumerable<string> NamesOf(CatalogueEntry entry) => entry.OtherNames.Prepend(entry.Instrument.Name);

    // Guitar in drop D.
    private static string TuningFirst(string name) =>
        name.Split(" in ") is [var instrument, var tuning] ? $"{tuning} {instrument}" : name;

    /// <summary>A name, or a part of one, as names are compared.</summary>
    public static string Plain(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var words = name.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries);
        return string.Join(' ', words.Select(PlainWord));
    }

    private static string PlainWord(string word) =>
        word.ToLowerInvariant() switch
        {
            "uke" => "ukulele",
            "12" => "twelve",
            [>= '4' and <= '8'] digit => Numbers[digit[0] - '4'],
            var other => other,
        };
}
