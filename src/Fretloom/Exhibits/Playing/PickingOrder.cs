using Fretloom.Exercises;

namespace Fretloom.Exhibits.Playing;

/// <summary>Which note of a held chord each finger of the picking hand sounds.</summary>
/// <remarks>
/// The thumb takes the string farthest from the floor, the others share the strings nearest the floor, a nearest of all. Common
/// practice, no source.
/// </remarks>
internal static class PickingOrder
{
    /// <summary>What plays the note at a place, counted from 0, where the picking comes again and again.</summary>
    public static Picked At(ValueList<Picked> picking, int at) =>
        picking.Count == 0 ? Picked.Unsaid : picking[at % picking.Count];

    /// <summary>The notes in the order of the fingers.</summary>
    public static IEnumerable<(PlayedNote Note, Picked Picked)> Of(PlayedGroup chord, ValueList<Picked> picking)
    {
        var strings = chord.Notes.OrderByDescending(note => note.Note.Spot.String).ToArray();
        var fingers = picking.Where(picked => picked > Picked.Thumb).Distinct().Order().ToList();
        var least = picking.Contains(Picked.Thumb) && strings.Length > 1 ? 1 : 0;
        return picking.Select(picked =>
            picked == Picked.Thumb
                ? (strings[0], picked)
                : (strings[Math.Max(least, strings.Length - fingers.Count + fingers.IndexOf(picked))], picked)
        );
    }
}
