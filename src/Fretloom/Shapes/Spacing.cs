using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>How far the voices of an arrangement lie above the lowest one.</summary>
/// <remarks>
/// Close position takes the voices in stacked order, going round from the lowest, each as near above the one before as it can be.
/// Drop 2 and drop 3 lower the second or third voice from the top by an octave (common practice, no source).
/// </remarks>
internal static class Spacing
{
    /// <summary>Semitones above the lowest voice, ascending; item 0 is 0.</summary>
    /// <param name="voices">The voices.</param>
    /// <param name="lowest">The index of the one that lies lowest.</param>
    /// <param name="arrangement">Any but <see cref="Arrangement.AnyOrder"/>.</param>
    public static IReadOnlyList<int> Of(ChordVoices voices, int lowest, Arrangement arrangement)
    {
        var dropped = voices.Count - FromTheTop(arrangement);
        if (dropped == voices.Count)
        {
            return Close(voices, lowest);
        }

        var heights = Close(voices, Modulo.Of(lowest - dropped, voices.Count));
        var bottom = heights[dropped] - 12;
        heights[dropped] = bottom;
        return [.. heights.Order().Select(height => height - bottom)];
    }

    /// <summary>Which voice from the top is dropped; 0 for none.</summary>
    private static int FromTheTop(Arrangement arrangement) =>
        arrangement switch
        {
            Arrangement.Close => 0,
            Arrangement.DropTwo => 2,
            Arrangement.DropThree => 3,
            _ => throw new ArgumentOutOfRangeException(nameof(arrangement), arrangement, "Any order has no spacing."),
        };

    private static int[] Close(ChordVoices voices, int lowest)
    {
        var heights = new int[voices.Count];
        for (var place = 1; place < heights.Length; place++)
        {
            var below = voices.Names[(lowest + place - 1) % heights.Length].PitchClass;
            var above = voices.Names[(lowest + place) % heights.Length].PitchClass;
            heights[place] = heights[place - 1] + below.SemitonesUpTo(above);
        }

        return heights;
    }
}
