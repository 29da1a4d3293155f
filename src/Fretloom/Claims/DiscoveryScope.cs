using Fretloom.Neck;
using Fretloom.Sentences;

namespace Fretloom.Claims;

/// <summary>Where true statements are looked for.</summary>
public sealed record DiscoveryScope
{
    /// <summary>The fewest strings that can be looked at.</summary>
    public const int FewestStrings = 2;

    /// <summary>The most strings that can be looked at.</summary>
    public const int MostStrings = 8;

    /// <summary>Makes a scope.</summary>
    /// <param name="instrument">The instrument; a short string counts from its own nut.</param>
    /// <param name="strings">Two to eight of its strings; null for all.</param>
    /// <param name="keys">The keys.</param>
    /// <exception cref="ArgumentException">The instrument lacks a string, or there are fewer than two or more than eight.</exception>
    public DiscoveryScope(Instrument instrument, StringSet? strings, KeyScope keys)
    {
        ArgumentNullException.ThrowIfNull(instrument);
        ArgumentNullException.ThrowIfNull(keys);
        var chosen = strings ?? instrument.AllStrings;
        if (chosen.Count is < FewestStrings or > MostStrings || chosen.Numbers[0] > instrument.Strings.Count)
        {
            throw new ArgumentException("Two to eight strings of the instrument can be looked at.", nameof(strings));
        }

        (Instrument, Strings, Keys) = (instrument, chosen == instrument.AllStrings ? null : chosen, keys);
    }

    /// <summary>The instrument.</summary>
    public Instrument Instrument { get; }

    /// <summary>The strings; null for all.</summary>
    public StringSet? Strings { get; }

    /// <summary>The keys.</summary>
    public KeyScope Keys { get; }

    /// <summary>The strings, counted.</summary>
    public StringSet ChosenStrings => Strings ?? Instrument.AllStrings;

    /// <summary>The same place as a claim names it.</summary>
    public PlaceScope Place => new PlaceScope.On(Instrument, Strings);

    /// <summary><c>on guitar strings 4-1, in every major key</c>; what <see cref="DiscoveryParser"/> reads.</summary>
    public override string ToString() => $"{ClaimPrinter.Print(Place)}, {ClaimPrinter.Print(Keys)}";
}
