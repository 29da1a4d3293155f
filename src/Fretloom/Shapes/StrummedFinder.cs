using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>Chord shapes for strumming: as many neighbouring strings as fit, the others muted.</summary>
internal static class StrummedFinder
{
    private const int MostFrets = 4;

    /// <summary>Grips on fewer strings are asked for as easy ones.</summary>
    private const int FewestStringsOfEasierParts = 4;

    /// <summary>Below C2 an instrument plays the bass part.</summary>
    private const int LowestWithoutBass = 36;

    private const int MostStringsWithoutBass = 4;

    public static string? WhyNot(NeckMap map, ShapeSource.OfChord source, Voicing.Strummed voicing)
    {
        var voices = new ChordVoices(source);
        return voices.WhyNot(voicing.Inversions)
            ?? (
                voices.Essential.Count > map.Strings.Count
                    ? $"{source.Chord} needs at least {voices.Essential.Count} strings; the set {map.Strings} has {map.Strings.Count}."
                    : null
            );
    }

    public static IEnumerable<Shape> Find(NeckMap map, ShapeSource.OfChord source, Voicing.Strummed voicing)
    {
        var voices = new ChordVoices(source);
        var isRootUnsaid = voicing.Inversions == [0];
        var lowest = voices.LowestPitchClasses(
            isRootUnsaid && LeavesTheBassToOthers(map.Instrument) ? [] : voicing.Inversions
        );
        var grips = new Grips(new Reach(map, voicing.Position), voices, lowest, MostFrets);
        var found = Enumerable.Range(1, map.Strings.Count).SelectMany(map.Strings.Neighbours).SelectMany(grips.On);
        return GripOrder
            .Sort(WithoutNeedlessParts(found), voices, map.Strings.Numbers[^1])
            .Select(grip => voices.ShapeOf(map, map.Strings, grip.Spots));
    }

    /// <summary>
    /// Whether any member may lie lowest when nothing else is said: on re-entrant instruments, and on those of four strings
    /// or fewer that do not reach below C2, all strings are played and the root is left to a deeper instrument (common practice,
    /// no source; the limits are ours).
    /// </summary>
    private static bool LeavesTheBassToOthers(Instrument instrument)
    {
        var fromFar = instrument.OpenPitches.Reverse().Select(pitch => pitch.MidiNumber).ToList();
        var isReentrant = fromFar.Zip(fromFar.Skip(1)).Any(pair => pair.First > pair.Second);
        return isReentrant || (fromFar.Count <= MostStringsWithoutBass && fromFar.Min() >= LowestWithoutBass);
    }

    /// <summary>
    /// Drops what is merely another grip with outer strings muted, unless it sounds at least four strings and takes fewer fingers
    /// than every grip that it is part of: xx3211 beside 133211.
    /// </summary>
    private static List<Grip> WithoutNeedlessParts(IEnumerable<Grip> grips)
    {
        var kept = new List<Grip>();
        foreach (var grip in grips.OrderByDescending(grip => grip.Count))
        {
            if (!kept.Exists(other => grip.IsPartOf(other) && !IsEasier(grip, other)))
            {
                kept.Add(grip);
            }
        }

        return kept;
    }

    private static bool IsEasier(Grip part, Grip whole) =>
        part.Count >= FewestStringsOfEasierParts && part.Fingers < whole.Fingers;
}
