using Fretloom.Theory;

namespace Fretloom.Neck;

/// <summary>What stands out in a key on a string set: full frets, empty frets, the thirds between neighbours, the hinge.</summary>
/// <remarks>
/// Below the fret where a short string begins it sounds nothing: no fret there is full on a set with that string, and one can
/// be empty.
/// </remarks>
/// <param name="FullFrets">Frets, ascending, at which every string of the set sounds a note of the key.</param>
/// <param name="EmptyFrets">Frets, ascending, at which none does.</param>
/// <param name="Thirds">Thirds inside the range, by pair from the far side, then by the lower note's fret.</param>
/// <param name="Hinge">The pair of neighbours tuned unlike all other pairs, far string first; null when there is not exactly one.</param>
public sealed record Landmarks(
    ValueList<int> FullFrets,
    ValueList<int> EmptyFrets,
    ValueList<Third> Thirds,
    (int Far, int Near)? Hinge
)
{
    /// <summary>The landmarks of a map.</summary>
    public static Landmarks Of(NeckMap map) =>
        new(
            map.Frets.Frets.Where(fret => map.Strings.Numbers.All(number => map.IsInKey(new Spot(number, fret))))
                .ToValueList(),
            map.Frets.Frets.Where(fret => !map.Strings.Numbers.Any(number => map.IsInKey(new Spot(number, fret))))
                .ToValueList(),
            ThirdsOf(map).ToValueList(),
            HingeOf(map.Instrument, map.Strings)
        );

    /// <summary>The thirds of a map, in the order of <see cref="Thirds"/>.</summary>
    /// <remarks>The lower note is on the string whose open pitch is lower; of two strings tuned alike, on the far one.</remarks>
    public static IEnumerable<Third> ThirdsOf(NeckMap map)
    {
        var notes = map.NotesOfKey.ToLookup(note => note.Spot.String);
        foreach (var (far, near) in Pairs(map.Strings))
        {
            var isFarLower = map.Instrument.String(far).Open.MidiNumber <= map.Instrument.String(near).Open.MidiNumber;
            var (lowerString, upperString) = isFarLower ? (far, near) : (near, far);
            foreach (var lower in notes[lowerString])
            {
                foreach (var upper in notes[upperString])
                {
                    if (IsThird(lower, upper))
                    {
                        yield return new Third(lower, upper);
                    }
                }
            }
        }
    }

    /// <summary>
    /// Where a string set has exactly one pair of neighbours tuned unlike all its other pairs, that pair, far string first.
    /// Pairs are tuned alike when the step from one open pitch to the other is the same number of semitones, up or down.
    /// Sets of fewer than four strings have none: with two pairs neither is the odd one.
    /// </summary>
    public static (int Far, int Near)? HingeOf(Instrument instrument, StringSet strings)
    {
        var pairs = Pairs(strings).ToList();
        var steps = pairs.ConvertAll(pair =>
            instrument.String(pair.Near).Open.MidiNumber - instrument.String(pair.Far).Open.MidiNumber
        );
        var odd = pairs.Where((_, at) => steps.Count(step => step == steps[at]) == 1).ToList();
        return pairs.Count > 2 && odd.Count == 1 ? odd[0] : null;
    }

    private static IEnumerable<(int Far, int Near)> Pairs(StringSet strings) =>
        strings.Numbers.Zip(strings.Numbers.Skip(1));

    private static bool IsThird(NeckNote lower, NeckNote upper)
    {
        var distance = upper.Pitch.MidiNumber - lower.Pitch.MidiNumber;
        return distance is >= 2 and <= 5 && upper.Degree == lower.Degree.Plus(2);
    }
}
