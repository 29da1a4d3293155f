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
        var reach = new Reach(map, voicing.Position);
        return map
            .Strings.Neighbours(voices.Count)
            .SelectMany(run => Placements(reach, voices, run, voicing).Select(spots => (Run: run, Spots: spots)))
            .OrderBy(found => found.Spots.Min(spot => spot.Fret))
            .ThenBy(found => found.Spots.Max(spot => spot.Fret))
            .ThenBy(found => found.Spots, SpotOrder.FarthestFromTheFloorFirst)
            .Select(found => voices.ShapeOf(map, found.Run, found.Spots));
    }

    private static IEnumerable<Spot[]> Placements(
        Reach reach,
        ChordVoices voices,
        StringSet run,
        Voicing.OneNotePerString voicing
    ) =>
        voicing.Arrangement == Arrangement.AnyOrder
            ? InAnyOrder(reach, voices, run, voices.LowestPitchClasses(voicing.Inversions))
            : voices
                .Lowest(voicing.Inversions)
                .SelectMany(lowest =>
                    Spaced(reach, run, voices.Names[lowest].PitchClass, Spacing.Of(voices, lowest, voicing.Arrangement))
                );

    /// <summary>
    /// Strings are taken as they sound when open, so that on a re-entrant instrument too the voices rise. The spots come far
    /// string first.
    /// </summary>
    private static IEnumerable<Spot[]> Spaced(Reach reach, StringSet run, PitchClass lowest, IReadOnlyList<int> spacing)
    {
        var fromLowest = reach.Map.Instrument.FromLowestOpen(run).ToList();
        var heights = run.Numbers.Select(number => spacing[fromLowest.IndexOf(number)]).ToArray();
        return reach
            .On(fromLowest[0])
            .Where(bottom => bottom.PitchClass == lowest)
            .Select(bottom => Placed(reach, run, bottom.Midi, heights))
            .OfType<Spot[]>();
    }

    /// <summary>The spots that sound some heights above a note, or null when one is out of reach.</summary>
    private static Spot[]? Placed(Reach reach, StringSet run, int lowestMidi, int[] heights)
    {
        var spots = new Spot[heights.Length];
        for (var at = 0; at < spots.Length; at++)
        {
            var course = reach.Map.Instrument.String(run.Numbers[at]);
            var fret = lowestMidi + heights[at] - course.Open.MidiNumber + course.StartsAtFret;
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
