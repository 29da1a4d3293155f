using Fretloom.Neck;
using Fretloom.Sentences.Claims;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>A string set that a claim is checked on.</summary>
internal sealed class Place
{
    /// <summary>What the farthest string of a mere tuning sounds: E2.</summary>
    public const int LowestTuned = 40;

    private Place(string name, Instrument? instrument, OpenStrings strings, OpenStrings all)
    {
        Name = name;
        Instrument = instrument;
        Strings = strings;
        All = all;
    }

    /// <summary><c>guitar strings 4-1</c>, <c>guitar string 1</c>, <c>bass</c>, <c>steps 5 4 5</c>.</summary>
    public string Name { get; }

    /// <summary>Null for a mere tuning, which has no measures.</summary>
    public Instrument? Instrument { get; }

    /// <summary>The strings chosen.</summary>
    public OpenStrings Strings { get; }

    /// <summary>All strings there are.</summary>
    public OpenStrings All { get; }

    public static Place On(Instrument instrument, StringSet? strings)
    {
        var chosen = strings ?? instrument.AllStrings;
        var name = StringWords.On(instrument, chosen == instrument.AllStrings ? null : chosen);
        return new Place(
            name,
            instrument,
            OpenStrings.Of(instrument, chosen),
            OpenStrings.Of(instrument, instrument.AllStrings)
        );
    }

    /// <summary>A tuning by its steps from far to near; its farthest string is tuned to E2, as a guitar's is.</summary>
    public static Place Tuned(ReadOnlySpan<int> steps)
    {
        var opens = new int[steps.Length + 1];
        opens[0] = LowestTuned;
        for (var at = 0; at < steps.Length; at++)
        {
            opens[at + 1] = opens[at] + steps[at];
        }

        var strings = new OpenStrings(StringSet.Run(opens.Length, 1), ValueList.Create<int>(opens));
        return new Place($"steps {string.Join(' ', steps.ToArray())}", null, strings, strings);
    }

    /// <summary>The strings that a phrase means here; null when they are not among those chosen.</summary>
    public OpenStrings? Resolve(OtherStrings? other)
    {
        if (other is null)
        {
            return Strings;
        }

        if (other.Instrument is { } instrument)
        {
            var set = other.Strings ?? instrument.AllStrings;
            return set.Numbers[0] <= instrument.Strings.Count ? OpenStrings.Of(instrument, set) : null;
        }

        return other.Strings is { } strings && strings.Numbers.All(number => Strings.Numbers.Numbers.Contains(number))
            ? new OpenStrings(strings, strings.Numbers.Select(OpenOf).ToValueList())
            : null;
    }

    public bool HasString(int number) => All.Numbers.Numbers.Contains(number);

    /// <summary>The last fret of any string of the instrument, from its own nut; null where there is no such string, or it has no end.</summary>
    public int? LastFretOf(int number) => HasString(number) ? Instrument?.LastFretOf(new StringSet([number])) : null;

    /// <summary>What any string of the instrument sounds when open.</summary>
    public int OpenOf(int number) => All.Opens[All.Numbers.Numbers.IndexOf(number)];

    /// <summary>The spot of a string at a fret counted from its own nut.</summary>
    public Spot SpotAt(int number, int fret) => new(number, fret + (Instrument?.String(number).StartsAtFret ?? 0));

    /// <summary>An instrument to draw the place on: its own, or a neck of a guitar's measures so tuned.</summary>
    public Instrument ToInstrument()
    {
        if (Instrument is not null)
        {
            return Instrument;
        }

        var guitar = Catalogue.Default;
        var strings = Strings.Opens.Reverse().Select(midi => new Course(Pitch.FromMidiNumber(midi)));
        return new Instrument($"strings in {Name}", strings, guitar.ScaleLengthMm, guitar.Frets, guitar.Spacing);
    }

    public override string ToString() => Name;
}
