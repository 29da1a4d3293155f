using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>Chord shapes in which each string of a run of neighbours sounds one voice.</summary>
internal static class OneNotePerStringFinder
{
    public static string? WhyNot(NeckMap map, Chord chord, Voicing.OneNotePerString voicing)
    {
        var voices = new ChordVoices(chord);
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
            return $"{name} spreads the members of a four-note chord; {chord} has {voices.Count} notes{(voices.HasForeignBass ? " with its bass" : "")}.";
        }

        return voices.Count > map.Strings.Count
            ? $"{chord} has {voices.Count} notes and needs a string for each; the set {map.Strings} has {map.Strings.Count}."
            : null;
    }

    public static IEnumerable<Shape> Find(NeckMap map, ShapeSource.OfChord source, Voicing.OneNotePerString voicing)
    {
        var voices = new ChordVoices(source.Chord);
        var reach = new Reach(map, voicing.Position);
        return map
            .Strings.Neighbours(voices.Count)
            .SelectMany(run =>
                Placements(reach, voices, run, voicing).Select(spots => voices.ShapeOf(source, map, run, spots))
            )
            .OrderBy(shape => shape.Spots.Min(spot => spot.Fret))
            .ThenBy(shape => shape.Spots.Max(spot => spot.Fret))
            .ThenByDescending(shape => shape.Strings.Numbers[0])
            .ThenBy(shape => shape, FretOrder.Instance);
    }

    private static IEnumerable<IEnumerable<Spot>> Placements(
        Reach reach,
        ChordVoices voices,
        StringSet run,
        Voicing.OneNotePerString voicing
    ) =>
        voicing.Arrangement == Arrangement.AnyOrder
            ? InAnyOrder(reach, voices, run, voices.LowestPitchClasses(voicing.Inversions))
            : voices
                .Lowest(voicing.Inversions)
                .Distinct()
                .SelectMany(lowest =>
                    Spaced(reach, run, voices.Names[lowest].PitchClass, Spacing.Of(voices, lowest, voicing.Arrangement))
                );

    /// <summary>Strings are taken as they sound when open, so that on a re-entrant instrument too the voices rise.</summary>
    private static IEnumerable<Spot[]> Spaced(Reach reach, StringSet run, PitchClass lowest, IReadOnlyList<int> heights)
    {
        var strings = reach.Map.Instrument.FromLowestOpen(run).ToArray();
        foreach (var bottom in reach.On(strings[0]))
        {
            var sound = reach.Map.SoundAt(bottom);
            if (PitchClass.FromSemitones(sound) != lowest)
            {
                continue;
            }

            var spots = strings
                .Select((number, place) => SpotOf(reach, number, sound + heights[place]))
                .OfType<Spot>()
                .ToArray();
            if (spots.Length == strings.Length)
            {
                yield return spots;
            }
        }
    }

    private static Spot? SpotOf(Reach reach, int number, int midi)
    {
        var course = reach.Map.Instrument.String(number);
        var fret = midi - course.Open.MidiNumber + course.StartsAtFret;
        return reach.Map.Frets.Contains(fret) && reach.Allows(new Spot(number, fret)) ? new Spot(number, fret) : null;
    }

    private static IEnumerable<IEnumerable<Spot>> InAnyOrder(
        Reach reach,
        ChordVoices voices,
        StringSet run,
        PitchClassSet lowest
    )
    {
        var map = reach.Map;
        var choices = run
            .Numbers.Select(number =>
                reach.On(number).Where(spot => voices.PitchClasses.Contains(map.PitchClassAt(spot))).ToArray()
            )
            .ToArray();
        return Assignments
            .OneOfEach<Spot>(choices, IsNewAtTheEnd)
            .Where(spots => lowest.Contains(map.LowestOf(spots)))
            .Select(spots => spots.AsEnumerable());

        bool IsNewAtTheEnd(ReadOnlySpan<Spot> spots)
        {
            var added = map.PitchClassAt(spots[^1]);
            foreach (var spot in spots[..^1])
            {
                if (map.PitchClassAt(spot) == added)
                {
                    return false;
                }
            }

            return true;
        }
    }
}
