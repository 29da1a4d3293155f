using Fretloom.Hand;

namespace Fretloom.Testing;

/// <summary>
/// What a fingering model has to beat: a fret for a finger, the index on the lowest. A note costs what its finger is off, and each
/// note beyond the first under one finger costs 1.
/// </summary>
public static class NaiveFingering
{
    /// <summary>The three cheapest, each a finger for every spot; of equals the one with the lower fingers first.</summary>
    public static IReadOnlyList<ValueList<Finger>> Best(Player player, PublishedFingering shape) =>
        [
            .. SlowHolds
                .All(player, shape.Spots)
                .OrderBy(fingers => Cost(shape, fingers))
                .ThenBy(fingers => fingers.Aggregate(0, (number, finger) => 10 * number + (int)finger))
                .Take(3),
        ];

    private static int Cost(PublishedFingering shape, ValueList<Finger> fingers)
    {
        var notes = shape
            .Spots.Select((spot, at) => (spot.Fret, Finger: (int)fingers[at]))
            .Where(note => note.Finger > 0)
            .ToList();
        var lowest = notes.Min(note => note.Fret);
        var laid = notes.Count - notes.DistinctBy(note => note.Finger).Count();
        return laid + notes.Sum(note => Math.Abs(note.Fret - lowest + 1 - note.Finger));
    }
}
