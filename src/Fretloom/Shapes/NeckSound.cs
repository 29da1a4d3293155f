using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>What spots that are known to be on the neck sound.</summary>
internal static class NeckSound
{
    public static int SoundAt(this NeckMap map, Spot spot) =>
        map.Instrument.MidiAt(spot)
        ?? throw new ArgumentException($"{spot} is not on the {map.Instrument.Name}.", nameof(spot));

    public static PitchClass PitchClassAt(this NeckMap map, Spot spot) => PitchClass.FromSemitones(map.SoundAt(spot));

    /// <summary>String numbers of a set in the order in which the strings sound when open, lowest first; of equals the farther first.</summary>
    public static IEnumerable<int> FromLowestOpen(this Instrument instrument, StringSet strings) =>
        strings.Numbers.OrderBy(number => instrument.String(number).Open.MidiNumber);
}
