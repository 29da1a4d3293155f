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

    /// <summary>Where the noise of the plucks begins, any whole number; the same seed gives the same file.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Whether the click is heard through all passes; the count-in has it in any case.</summary>
    public bool HasClick { get; init; }

    /// <summary>Whether the strings are heard.</summary>
    public bool HasStrings { get; init; } = true;

    /// <summary>Where each string stands, -1 left to 1 right, string 1 first; empty spreads them a little, the far string to the left.</summary>
    public ValueList<double> Pan { get; init; }

    /// <summary>Strings that are not heard, counted from 1.</summary>
    public ValueList<int> Muted { get; init; }
}
