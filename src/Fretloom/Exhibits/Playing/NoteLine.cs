using Fretloom.Exercises;
using Fretloom.Sentences;

namespace Fretloom.Exhibits.Playing;

/// <summary>Notes of a row, one after another.</summary>
internal static class NoteLine
{
    // So that there is time to turn a peg; our choice, without source.
    private const int TimesForTuning = 2;

    /// <summary>Writes them.</summary>
    /// <param name="row">The notes from low to high, or in the order given.</param>
    /// <param name="complete">The sentence.</param>
    /// <param name="time">Where they go on.</param>
    public static void Write(PlayedGroup row, PlaySentence complete, Timeline time)
    {
        var length = Rhythm.LengthOf(complete.Value!.Value);
        var times = complete.IsForTuning ? TimesForTuning : 1;
        var order = Ways.Through(
                row.Notes.Count,
                complete.Direction ?? Direction.Up,
                complete.Grouping ?? Grouping.Plain
            )
            .SelectMany(place => Enumerable.Repeat(place, times));
        foreach (var (at, place) in order.Index())
        {
            time.Add([row.Notes[place]], length, PickingOrder.At(complete.Picking, at));
        }
    }
}
