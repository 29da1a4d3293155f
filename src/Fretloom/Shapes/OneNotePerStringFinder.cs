using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>Chord shapes in which each string of a run of neighbours sounds one voice.</summary>
internal static class OneNotePerStringFinder
{
    public static string? WhyNot(NeckMap map, ShapeSource.OfChord source, Voicing.OneNotePerString voicing)
    {
        var voices = new ChordVoices(source);
        if (voices.WhyNot(voicing.Inversions) is { } wrongInversion)
        {
            return wrongInversion;
        }

        if (
            voicing.Arrangement is Arrangement.DropTwo or Arrangement.DropThree
            && voices is not { Count: 4, HasForeignBass: false }
        )
        {
            var name = voicing.Arrangement == Arrangement.DropTwo ? "Drop 2" : "Drop 3";
            return $"{name} spreads the members of a four-note chord; {source.Chord} has {voices.Count} notes{(voices.HasForeignBass ? " with its bass" : "")}.";
        }

        return voices.Count > map.Strings.Count
            ? $"{source.Chord} has {voices.Count} notes and needs a string for each; the set {map.Strings} has {map.Strings.Count}."
            : null;
    }

    public static IEnumerable<Shape> Find(NeckMap map, ShapeSource.OfChord source, Voicing.OneNotePerString voicing)
    {
        var voices = new ChordVoices(source);
        var place = Placing(new Reach(map, voicing.Position), voices, voicing);
        return Runs(map, voices.Count, voicing.Arrangement)
            .SelectMany(run => place(run).Select(spots => (Run: run, Spots: spots)))
            .OrderBy(found => found.Spots.Min(spot => spot.Fret))
            .ThenBy(found => found.Spots.Max(spot => spot.Fret))
            .ThenBy(found => found.Spots, SpotOrder.FarthestFromTheFloorFirst)
            .Select(found => voices.ShapeOf(map, found.Run, found.Spots));
    }

    /// <summary>
    /// Neighbours; for drop 3 also neighbours but for one left out above the string that sounds lowest, where the trade's shapes
    /// lie (common practice, no source).
    /// </summary>
    private static IEnumerable<StringSet> Runs(NeckMap map, int size, Arrangement arrangement)
    {
        var neighbours = map.Strings.Neighbours(size);
        return arrangement == Arrangement.DropThree
            ? neighbours.Concat(map.Strings.Neighbours(size + 1).Select(run => WithoutSecond(map.Instrument, run)))
            : neighbours;
    }

    private static StringSet WithoutSecond(Instrument instrument, StringSet run)
    {
        var second = instrument.FromLowestOpen(run).ElementAt(1);
        return new StringSet(run.Numbers.Where(number => number != second));
    }

    /// <summary>How the placements on a run are found, far string first.</summary>
    private static Func<StringSet, IEnumerable<Spot[]>> Placing(
        Reach reach,
        ChordVoices voices,
        Voicing.OneNotePerString voicing
    )
    {
        if (voicing.Arrangement == Arrangement.AnyOrder)
        {
            var lowest = voices.LowestPitchClasses(voicing.Inversions);
            return run => InAnyOrder(reach, voices, run, lowest);
        }

        var spacings = voices
            .Lowest(voicing.Inversions)
            .ToDictionary(
                index => voices.Names[index].PitchClass,
                index => Spacing.Of(voices, index, voicing.Arrangement)
            );
        return run => Spaced(reach, voices, run, spacings);
    }

    /// <summary>Strings are taken as they sound when open, so that on a re-entrant instrument too the voices rise.</summary>
    private static IEnumerable<Spot[]> Spaced(
        Reach reach,
        ChordVoices voices,
        StringSet run,
        Dictionary<PitchClass, IReadOnlyList<int>> spacings
    )
    {
        var fromLowest = reach.Map.Instrument.FromLowestOpen(run).ToList();
        var ranks = run.Numbers.Select(number => fromLowest.IndexOf(number)).ToArray();
        foreach (var bottom in voices.SpotsOn(reach, fromLowest[0]))
        {
            if (
                spacings.TryGetValue(bottom.PitchClass, out var spacing)
                && Placed(reach, run, Array.ConvertAll(ranks, rank => bottom.Midi + spacing[rank])) is { } spots
            )
            {
                yield return spots;
            }
        }
    }

    /// <summary>The spots on a run that sound some notes, far string first, or null when one is out of reach.</summary>
    private static Spot[]? Placed(Reach reach, StringSet run, int[] midis)
    {
        var spots = new Spot[midis.Length];
        for (var at = 0; at < spots.Length; at++)
        {
            var course = reach.Map.Instrument.String(run.Numbers[at]);
            var fret = midis[at] - course.Open.MidiNumber + course.StartsAtFret;
            if (!reach.Map.Frets.Contains(fret))
            {
                return null;
            }

            spots[at] = new Spot(run.Numbers[at], fret);
            if (!reach.Allows(spots[at]))
            {
                return null;
            }
        }

        return spots;
    }

    private static IEnumerable<Spot[]> InAnyOrder(
        Reach reach,
        ChordVoices voices,
        StringSet run,
        PitchClassSet lowest
    ) =>
        Assignments
            .OneOfEach<SoundingSpot>([.. run.Numbers.Select(number => voices.SpotsOn(reach, number))], IsLastNew)
            .Where(places => lowest.Contains(places.MinBy(place => place.Midi).PitchClass))
            .Select(places => places.Select(place => place.Spot).ToArray());

    private static bool IsLastNew(ReadOnlySpan<SoundingSpot> places)
    {
        var added = places[^1].PitchClass;
        foreach (var place in places[..^1])
        {
            if (place.PitchClass == added)
            {
                return false;
            }
        }

        return true;
    }
}
