using Fretloom.Neck;

namespace Fretloom.Sentences;

/// <summary>What a claim may leave unsaid, and the string sets that it may call by name.</summary>
/// <remarks>Keys are always said. A window that is not said is no window: the claim speaks of the endless neck.</remarks>
public sealed record ClaimDefaults
{
    /// <summary>Makes defaults.</summary>
    /// <param name="instrument">The instrument of a claim that names no place; null for the guitar.</param>
    /// <param name="strings">The strings of a claim that names neither instrument nor strings; null for all.</param>
    /// <param name="stringSets">String sets by name.</param>
    /// <exception cref="ArgumentException">The instrument has not all of <paramref name="strings"/>.</exception>
    public ClaimDefaults(
        Instrument? instrument = null,
        StringSet? strings = null,
        ValueList<NamedStrings> stringSets = default
    )
    {
        Instrument = instrument ?? Catalogue.Default;
        if (strings is { } chosen && chosen.Numbers.Any(number => number > Instrument.Strings.Count))
        {
            throw new ArgumentException(
                $"The {Instrument} has {Instrument.Strings.Count} strings; the set is {chosen}.",
                nameof(strings)
            );
        }

        (Strings, StringSets) = (strings, stringSets);
    }

    /// <summary>A guitar, all of its strings, no named sets.</summary>
    public static ClaimDefaults Standard { get; } = new();

    /// <summary>The instrument of a claim that names no place.</summary>
    public Instrument Instrument { get; }

    /// <summary>The strings of a claim that names neither instrument nor strings; null for all.</summary>
    public StringSet? Strings { get; }

    /// <summary>String sets by name.</summary>
    public ValueList<NamedStrings> StringSets { get; }
}

/// <summary>A string set with a name of the user's own: <c>on the top strings</c>.</summary>
public sealed record NamedStrings
{
    /// <summary>Names a set.</summary>
    /// <param name="name">One to five words, without article and without <c>strings</c>: <c>top</c>, <c>upper four</c>. Case does not count.</param>
    /// <param name="strings">At least one.</param>
    /// <exception cref="ArgumentException">The name is empty or longer, or the set is.</exception>
    public NamedStrings(string name, StringSet strings)
    {
        ArgumentNullException.ThrowIfNull(name);
        var words = name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        if (words.Length is 0 or > MostWords || strings.Count == 0)
        {
            throw new ArgumentException(
                "A string set has a name of one to five words and at least one string.",
                nameof(name)
            );
        }

        (Name, Strings) = (string.Join(' ', words), strings);
    }

    internal const int MostWords = 5;

    /// <summary>The name, its words separated by one space.</summary>
    public string Name { get; }

    /// <summary>The strings.</summary>
    public StringSet Strings { get; }
}
