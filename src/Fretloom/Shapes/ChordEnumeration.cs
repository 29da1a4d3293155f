using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>Every way at all to sound a chord on a stretch of neck, playable or not: the ground that the shape finder selects from.</summary>
public static class ChordEnumeration
{
    /// <summary>
    /// Each string is muted or sounds one fret of the range, and what sounds is exactly the chord: no foreign note, no member
    /// missing. Any member may lie lowest and strings between sounding ones may be muted.
    /// </summary>
    /// <returns>The sounding spots of each, far string first. The number grows with the power of the strings: keep the range small.</returns>
    public static IEnumerable<ValueList<Spot>> All(NeckMap map, PitchClassSet chord)
    {
        ArgumentNullException.ThrowIfNull(map);
        var choices = map.Strings.Numbers.Select(number => Choices(map, chord, number)).ToList();
        return Assignments
            .OneOfEach<Spot?>(choices, _ => true)
            .Select(row => row.OfType<Spot>().ToValueList())
            .Where(spots => PitchClassSet.Of(spots.Select(spot => map.PitchClassAt(spot))) == chord && spots.Count > 0);
    }

    private static List<Spot?> Choices(NeckMap map, PitchClassSet chord, int number) =>
        [
            null,
            .. map
                .Spots.Where(spot => spot.String == number && chord.Contains(map.PitchClassAt(spot)))
                .Select(spot => (Spot?)spot),
        ];
}
