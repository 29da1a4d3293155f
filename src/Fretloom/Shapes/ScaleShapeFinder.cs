using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>Finds the shapes in which a stretch of scale is played. Common practice, no source; where players differ the choice is ours.</summary>
public static class ScaleShapeFinder
{
    private const int FarthestOutside = 2;

    /// <summary>
    /// So many consecutive notes of the scale on each string, going on from string to string. Strings are taken in the order in
    /// which they sound open, lowest first, so the scale rises on re-entrant instruments too.
    /// </summary>
    /// <param name="map">Where to look.</param>
    /// <param name="scale">The scale.</param>
    /// <param name="count">Notes on each string, 1 to 12.</param>
    /// <returns>One shape for each note of the scale on the first string from which all fits inside the range, from the nut on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is outside 1 to 12.</exception>
    public static ValueList<Shape> NotesPerString(NeckMap map, Scale scale, int count)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(scale);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, 12);
        var strings = map.Instrument.FromLowestOpen(map.Strings).ToArray();
        return map
            .Spots.Where(spot => spot.String == strings[0] && scale.PitchClasses.Contains(map.PitchClassAt(spot)))
            .Select(start =>
                Upward(scale, map.SoundAt(start))
                    .Take(count * strings.Length)
                    .Select((midi, place) => SpotOf(map, strings[place / count], midi))
                    .OfType<Spot>()
                    .ToArray()
            )
            .Where(spots => spots.Length == count * strings.Length)
            .Select(spots => ShapeOf(map, scale, spots))
            .ToValueList();
    }

    /// <summary>Why a position cannot be looked at on a map, in a sentence for the person who asked; null when it can.</summary>
    public static string? WhyNot(NeckMap map, int position) => new Reach(map, position).WhyNot();

    /// <summary>
    /// The scale in one position: every pitch of it within four frets, and in first position the open strings. A pitch that two
    /// strings sound is taken on the one nearer the floor. A pitch missing between two others is taken by a stretch,
    /// at the nearest fret outside the position, the index finger's side before the little finger's: one fret away where strings are
    /// a fourth or less apart, at most two elsewhere. What still is missing then stays out.
    /// </summary>
    /// <param name="map">Where to look.</param>
    /// <param name="scale">The scale.</param>
    /// <param name="position">The index finger's fret, at least 1.</param>
    /// <returns>One shape, or none when no note of the scale lies in the position inside the range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The position is below 1.</exception>
    public static ValueList<Shape> InPosition(NeckMap map, Scale scale, int position)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(scale);
        ArgumentOutOfRangeException.ThrowIfLessThan(position, 1);
        var reach = new Reach(map, position);
        var bySound = new SortedDictionary<int, Spot>();
        foreach (
            var spot in map.Spots.Where(spot =>
                reach.Allows(spot) && scale.PitchClasses.Contains(map.PitchClassAt(spot))
            )
        )
        {
            bySound[map.SoundAt(spot)] = spot;
        }

        if (bySound.Count == 0)
        {
            return [];
        }

        var missing = Upward(scale, bySound.Keys.First())
            .TakeWhile(midi => midi < bySound.Keys.Last())
            .Where(midi => !bySound.ContainsKey(midi));
        var stretched = missing.Select(midi => ByStretch(map, midi, position)).OfType<Spot>().ToList();
        return [ShapeOf(map, scale, bySound.Values.Concat(stretched))];
    }

    private static IEnumerable<int> Upward(Scale scale, int fromMidi)
    {
        for (var midi = fromMidi; ; midi++)
        {
            if (scale.PitchClasses.Contains(PitchClass.FromSemitones(midi)))
            {
                yield return midi;
            }
        }
    }

    private static Spot? SpotOf(NeckMap map, int number, int midi)
    {
        foreach (var spot in map.Instrument.SpotsOf(midi))
        {
            if (spot.String == number && map.Frets.Contains(spot.Fret))
            {
                return spot;
            }
        }

        return null;
    }

    private static Spot? ByStretch(NeckMap map, int midi, int position)
    {
        var last = position + Reach.FretsInPosition - 1;
        return map
            .Instrument.SpotsOf(midi)
            .Where(spot => map.Frets.Contains(spot.Fret) && map.Strings.Numbers.Contains(spot.String))
            .Where(spot => !map.Instrument.IsOpen(spot) && Outside(spot) <= FarthestOutside)
            .OrderBy(Outside)
            .ThenBy(spot => spot.Fret)
            .Select(spot => (Spot?)spot)
            .FirstOrDefault();

        int Outside(Spot spot) => Math.Max(position - spot.Fret, spot.Fret - last);
    }

    private static Shape ShapeOf(NeckMap map, Scale scale, IEnumerable<Spot> spots) =>
        new(
            new ShapeSource.OfScale(scale),
            map.Instrument,
            map.Strings,
            spots.Select(spot =>
            {
                var midi = map.SoundAt(spot);
                var place = PlaceOf(scale, PitchClass.FromSemitones(midi));
                var pitch = Pitch.FromMidiNumber(midi, scale.Notes[place]);
                return new ShapeNote(
                    spot,
                    pitch,
                    map.Key.DegreeOf(pitch.Name),
                    scale.Kind.Intervals[place].MemberText(scale.Kind.Intervals)
                );
            })
        );

    private static int PlaceOf(Scale scale, PitchClass pitchClass) =>
        Enumerable.Range(0, scale.Notes.Count).First(place => scale.Notes[place].PitchClass == pitchClass);
}
