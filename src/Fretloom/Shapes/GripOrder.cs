namespace Fretloom.Shapes;

/// <summary>Puts first what a teacher would show first.</summary>
internal static class GripOrder
{
    private const int MostFretsOfEasyGrips = 3;
    private const int LastFretNearTheNut = 3;

    /// <summary>
    /// From the nut on: open grips; the others with the index finger at frets 1 to 3; then fret by fret, a grip over four frets
    /// counting one fret later. Among those: colour tones in their places; every voice of the chord; the most strings, the
    /// smallest span, the fewest trapped open strings, the fewest fingers, the root in the bass, the fewest ups and downs, the
    /// strings nearest the floor, the lowest frets from the far string on.
    /// </summary>
    /// <param name="grips">In any order.</param>
    /// <param name="voices">The chord.</param>
    /// <param name="nearest">The string nearest the floor.</param>
    public static IEnumerable<Grip> Sort(IEnumerable<Grip> grips, ChordVoices voices, int nearest) =>
        grips
            .OrderBy(grip => Place(grip, nearest))
            .ThenBy(grip => !voices.HasColoursInPlace(grip))
            .ThenBy(grip => grip.PitchClasses != voices.PitchClasses)
            .ThenByDescending(grip => grip.Count)
            .ThenBy(grip => grip.Span)
            .ThenBy(grip => grip.TrappedOpenStrings)
            .ThenBy(grip => grip.Fingers)
            .ThenBy(grip => grip.Bass != voices.Root)
            .ThenBy(grip => grip.UpsAndDowns)
            .ThenBy(grip => grip.Spots, SpotOrder.NearestTheFloorFirst);

    /// <summary>An open grip has an open string, covers at most three frets and sounds the string nearest the floor.</summary>
    private static int Place(Grip grip, int nearest) =>
        grip.HasOpen && grip.Span <= MostFretsOfEasyGrips && grip.Spots[^1].String == nearest
            ? 0
            : Math.Max(LastFretNearTheNut, Math.Max(grip.Lowest, grip.Highest - MostFretsOfEasyGrips + 1));
}
