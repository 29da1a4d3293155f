using Fretloom.Neck;

namespace Fretloom.Tests.Neck;

/// <summary>Necks worked out the slow and obvious way, from MIDI numbers and the definitions of the words.</summary>
internal static class SlowNeck
{
    /// <summary>Frets at which the strings of the map, each in the key or not, answer a question.</summary>
    public static IEnumerable<int> FretsWhere(NeckMap map, Func<List<bool>, bool> question)
    {
        for (var fret = map.Frets.First; fret <= map.Frets.Last; fret++)
        {
            var sounding = new List<bool>();
            foreach (var number in map.Strings.Numbers)
            {
                sounding.Add(DegreeAt(map, number, fret) is not null);
            }

            if (question(sounding))
            {
                yield return fret;
            }
        }
    }

    /// <summary>Every pair of spots on neighbouring strings, the second two degrees above the first and less than a fourth away.</summary>
    public static IEnumerable<(Spot, Spot)> Thirds(NeckMap map)
    {
        for (var at = 0; at + 1 < map.Strings.Count; at++)
        {
            var (lower, upper) = (map.Strings.Numbers[at], map.Strings.Numbers[at + 1]);
            if (map.Instrument.String(lower).Open.MidiNumber > map.Instrument.String(upper).Open.MidiNumber)
            {
                (lower, upper) = (upper, lower);
            }

            foreach (var fret in map.Frets.Frets)
            {
                foreach (var other in map.Frets.Frets)
                {
                    var distance = MidiAt(map, upper, other) - MidiAt(map, lower, fret);
                    if (
                        distance is > 0 and < 6
                        && DegreeAt(map, lower, fret) is { } degree
                        && DegreeAt(map, upper, other) == (degree + 2) % 7
                    )
                    {
                        yield return (new Spot(lower, fret), new Spot(upper, other));
                    }
                }
            }
        }
    }

    /// <summary>The one pair of neighbours whose step no other pair has, if there is one and there are others.</summary>
    public static (int, int)? Hinge(Instrument instrument, StringSet strings)
    {
        var odd = new List<(int, int)>();
        for (var at = 0; at + 1 < strings.Count; at++)
        {
            var isOdd = strings.Count > 2;
            for (var other = 0; other + 1 < strings.Count; other++)
            {
                isOdd &= other == at || Step(at) != Step(other);
            }

            if (isOdd)
            {
                odd.Add((strings.Numbers[at], strings.Numbers[at + 1]));
            }
        }

        return odd.Count == 1 ? odd[0] : null;

        int Step(int at) =>
            instrument.String(strings.Numbers[at + 1]).Open.MidiNumber
            - instrument.String(strings.Numbers[at]).Open.MidiNumber;
    }

    /// <summary>The degree a place sounds, counted from 0; null when it sounds none.</summary>
    private static int? DegreeAt(NeckMap map, int number, int fret)
    {
        if (fret < map.Instrument.String(number).StartsAtFret)
        {
            return null;
        }

        for (var degree = 0; degree < 7; degree++)
        {
            if (map.Key.Notes[degree].PitchClass.Number == MidiAt(map, number, fret) % 12)
            {
                return degree;
            }
        }

        return null;
    }

    private static int MidiAt(NeckMap map, int number, int fret)
    {
        var course = map.Instrument.String(number);
        return course.Open.MidiNumber + fret - course.StartsAtFret;
    }
}
