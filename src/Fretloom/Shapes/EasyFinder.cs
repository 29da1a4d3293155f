using Fretloom.Neck;

namespace Fretloom.Shapes;

/// <summary>Chord shapes for beginners: a few neighbouring strings, a small span, the others muted.</summary>
internal static class EasyFinder
{
    private const int MostFrets = 3;
    private const int FirstPosition = 1;

    public static string? WhyNot(NeckMap map, ShapeSource.OfChord source, Voicing.Easy voicing)
    {
        var essential = new ChordVoices(source).Essential.Count;
        if (voicing.StringCount > map.Strings.Count || voicing.StringCount < 1)
        {
            return $"The set {map.Strings} has {map.Strings.Count} strings; {voicing.StringCount} cannot be chosen from it.";
        }

        return essential > voicing.StringCount ? $"{source.Chord} needs at least {essential} strings." : null;
    }

    public static Reach ReachOf(NeckMap map, Voicing.Easy voicing) => new(map, voicing.Position ?? FirstPosition);

    public static IEnumerable<Shape> Find(NeckMap map, ShapeSource.OfChord source, Voicing.Easy voicing)
    {
        var voices = new ChordVoices(source);
        var grips = new Grips(ReachOf(map, voicing), voices, voices.LowestPitchClasses([]), MostFrets);
        return map
            .Strings.Neighbours(voicing.StringCount)
            .Reverse()
            .SelectMany(run => GripOrder.Sort(grips.On(run), voices, run.Numbers[^1]))
            .Select(grip => voices.ShapeOf(map, map.Strings, grip.Spots));
    }
}
