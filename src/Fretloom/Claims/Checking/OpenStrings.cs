using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>Some strings with what they sound when open, each counted from its own nut.</summary>
/// <param name="Numbers">The farthest from the floor first.</param>
/// <param name="Opens">MIDI notes, in the same order.</param>
internal sealed record OpenStrings(StringSet Numbers, ValueList<int> Opens)
{
    /// <summary>Whose strings they are; null where the place says it, or where they are a mere tuning.</summary>
    public Instrument? Instrument { get; private init; }

    /// <summary>The highest fret that all of them have; null for a mere tuning, whose strings have no end.</summary>
    public int? LastFret => Instrument?.LastFretOf(Numbers);

    public int Count => Opens.Count;

    /// <summary>From each string to the next one toward the floor, in semitones.</summary>
    public ValueList<int> Steps => Opens.Zip(Opens.Skip(1), (far, near) => near - far).ToValueList();

    /// <summary>Whether the steps read the same both ways; not modulo 12.</summary>
    public bool IsPalindromic => Steps.SequenceEqual(Steps.Reverse());

    /// <summary>Whether they do with octaves left out, which is what a half-turn of the key pattern takes.</summary>
    public bool IsPalindromicButForOctaves =>
        Steps.Zip(Steps.Reverse(), (one, other) => Modulo.Of(one - other, 12)).All(difference => difference == 0);

    /// <summary>Indexes of the strings, the lowest-sounding first; of two alike the one farther from the floor.</summary>
    public ValueList<int> FromLowest =>
        Enumerable.Range(0, Count).OrderBy(at => Opens[at]).ThenBy(at => at).ToValueList();

    /// <summary>Whether all steps are the same; not modulo 12.</summary>
    public bool HasEqualSteps => Steps.Distinct().Count() < 2;

    public static OpenStrings Of(Instrument instrument, StringSet strings) =>
        new(strings, strings.Numbers.Select(number => instrument.String(number).Open.MidiNumber).ToValueList())
        {
            Instrument = instrument,
        };

    /// <summary>Frets 0 to 11 at which a string sounds one of some notes, as bits.</summary>
    /// <param name="at">The string's index.</param>
    /// <param name="notes">Pitch classes as bits.</param>
    public int FretsOf(int at, int notes) => Twelve.Turned(notes, -Opens[at]);
}

/// <summary>Sets of classes of twelve, as bits.</summary>
internal static class Twelve
{
    public const int All = 0xFFF;

    /// <summary>Every member moved up by a number, downward when negative.</summary>
    public static int Turned(int set, int by)
    {
        var up = Modulo.Of(by, 12);
        return (set << up | set >> (12 - up)) & All;
    }

    /// <summary>Every member taken from a number.</summary>
    public static int Reversed(int set, int from)
    {
        var reversed = 0;
        for (var bit = 0; bit < 12; bit++)
        {
            reversed |= (set >> bit & 1) << Modulo.Of(from - bit, 12);
        }

        return reversed;
    }
}
