namespace Fretloom.Shapes;

/// <summary>Puts first what a teacher would show first.</summary>
internal static class GripOrder
{
    /// <summary>
    /// From the nut on, position by position. Within a position: grips that sound every voice of the chord; then the most strings,
    /// the smallest span, the fewest trapped open strings, the fewest fingers, the fewest ups and downs, the strings nearest the
    /// floor, the lowest frets from the far string on.
    /// </summary>
    public static IEnumerable<Grip> Sort(IEnumerable<Grip> grips, ChordVoices voices) =>
        grips
            .OrderBy(grip => grip.Position)
            .ThenBy(grip => grip.PitchClasses != voices.PitchClasses)
            .ThenByDescending(grip => grip.Count)
            .ThenBy(grip => grip.Span)
            .ThenBy(grip => grip.TrappedOpenStrings)
            .ThenBy(grip => grip.Fingers)
            .ThenBy(grip => grip.UpsAndDowns)
            .ThenBy(grip => grip.Spots, SpotOrder.NearestTheFloorFirst);
}
