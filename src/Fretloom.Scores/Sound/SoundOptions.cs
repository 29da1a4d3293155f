using System.Globalization;
using Fretloom.Neck;

namespace Fretloom.Scores.Sound;

/// <summary>How an exercise is rendered.</summary>
public sealed record SoundOptions
{
    /// <summary>Samples in a second, 44,100 or 48,000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is neither.</exception>
    public int Rate
    {
        get;
        init =>
            field = value is 44_100 or 48_000
                ? value
                : throw new ArgumentOutOfRangeException(nameof(value), value, "The rate is 44,100 or 48,000.");
    } = 44_100;

    /// <summary>Where the noise of the plucks begins, any whole number, negative ones too; the same seed gives the same file, byte for byte.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Whether the click is heard through all passes; the count-in has it in any case.</summary>
    public bool HasClick { get; init; }

    /// <summary>Whether the strings are heard.</summary>
    public bool HasStrings { get; init; } = true;

    /// <summary>Where strings stand; those that are not listed are spread a little, the far string to the left.</summary>
    /// <exception cref="ArgumentException">A string is listed twice.</exception>
    public ValueList<StringPlace> Pan
    {
        get;
        init =>
            field =
                value.Select(one => one.String).Distinct().Count() == value.Count
                    ? value
                    : throw new ArgumentException("A string stands at one place.", nameof(value));
    }

    /// <summary>Strings that are not heard, counted from 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is below 1.</exception>
    public ValueList<int> Muted
    {
        get;
        init =>
            field = value.All(number => number > 0)
                ? value
                : throw new ArgumentOutOfRangeException(nameof(value), value, "Strings are counted from 1.");
    }

    /// <summary>Why these options do not fit an instrument, which lacks a string that they name; null when they fit.</summary>
    public string? WhyNotOn(Instrument instrument)
    {
        ArgumentNullException.ThrowIfNull(instrument);
        var count = instrument.Strings.Count;
        var beyond = Muted.Concat(Pan.Select(one => one.String)).FirstOrDefault(number => number > count);
        return beyond == 0
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"There is no string {beyond}: {count} strings are played.");
    }
}
