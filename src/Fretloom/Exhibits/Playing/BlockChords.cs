using Fretloom.Sentences;

namespace Fretloom.Exhibits.Playing;

/// <summary>Chords and thirds that sound at once.</summary>
internal static class BlockChords
{
    /// <summary>Writes them, each as long as the sentence says, else a bar.</summary>
    /// <param name="groups">The chords in turn.</param>
    /// <param name="complete">The sentence.</param>
    /// <param name="time">Where they go on.</param>
    public static void Write(IEnumerable<PlayedGroup> groups, PlaySentence complete, Timeline time)
    {
        var length = complete.Value is { } value ? Rhythm.LengthOf(value) : time.Metre.Bar;
        foreach (var (at, group) in groups.Index())
        {
            time.Mark(group, isHeld: true);
            time.Add(group.Notes, length, PickingOrder.At(complete.Picking, at));
        }
    }
}
