using Fretloom.Exercises;
using Fretloom.Sentences;

namespace Fretloom.Exhibits.Playing;

/// <summary>Chords note by note.</summary>
internal static class Arpeggios
{
    /// <summary>Writes them, in the order of the fingers that pick them, or from low to high and so on.</summary>
    /// <param name="groups">The chords in turn.</param>
    /// <param name="complete">The sentence.</param>
    /// <param name="time">Where they go on.</param>
    public static void Write(ValueList<PlayedGroup> groups, PlaySentence complete, Timeline time)
    {
        var length = Rhythm.LengthOf(complete.Value!.Value);
        if (complete.Picking.Any(picked => picked > Picked.Up))
        {
            WritePicked(groups, complete.Picking, length, time);
            return;
        }

        var played = 0;
        foreach (var group in groups)
        {
            var order = Ways.Through(group.Notes.Count, complete.Direction!.Value, Grouping.Plain).ToList();
            var whole = Rhythm.Rounded(length * order.Count, time.Metre);
            time.FillTo(whole <= time.Metre.Bar ? whole : time.Metre.Bar);
            time.Mark(group, isHeld: false);
            var end = time.At + whole;
            foreach (var place in order)
            {
                time.Add([group.Notes[place]], length, PickingOrder.At(complete.Picking, played++));
            }

            time.FillUpTo(end);
        }
    }

    // Each chord is held for whole bars: the picking comes again as often as all of it fits.
    private static void WritePicked(
        ValueList<PlayedGroup> groups,
        ValueList<Picked> picking,
        Beats length,
        Timeline time
    )
    {
        var bar = time.Metre.Bar;
        var once = length * picking.Count;
        var bars = bar * ((once + bar - Beats.FromTicks(1)) / bar);
        foreach (var group in groups)
        {
            time.Mark(group, isHeld: true);
            var end = time.At + bars;
            for (var times = bars / once; times > 0; times--)
            {
                foreach (var (note, picked) in PickingOrder.Of(group, picking))
                {
                    time.Add([note], length, picked);
                }
            }

            time.FillUpTo(end);
        }
    }
}
