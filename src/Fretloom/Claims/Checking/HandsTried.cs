using Fretloom.Hand;

namespace Fretloom.Claims.Checking;

/// <summary>What a hand was found to do with spots: many keys share a chord, and so the same spots. Not for several threads at once.</summary>
internal sealed class HandsTried
{
    private readonly Dictionary<(HeldSpots At, HandSize Hand), bool> _played = [];
    private readonly Dictionary<HeldSpots, ValueList<int>?> _fingers = [];

    /// <summary>As <see cref="ShapesInHand.CanBePlayed"/>.</summary>
    public bool CanBePlayed(HeldSpots at, HandSize hand)
    {
        if (!_played.TryGetValue((at, hand), out var isPlayed))
        {
            isPlayed = ShapesInHand.CanBePlayed(at, hand);
            _played.Add((at, hand), isPlayed);
        }

        return isPlayed;
    }

    /// <summary>As <see cref="ShapesInHand.Fingers"/>.</summary>
    public ValueList<int>? Fingers(HeldSpots at)
    {
        if (!_fingers.TryGetValue(at, out var fingers))
        {
            fingers = ShapesInHand.Fingers(at);
            _fingers.Add(at, fingers);
        }

        return fingers;
    }

    /// <summary>The best fingers of an adult hand at the lowest place of a shape; null when it cannot take them, or there is no place.</summary>
    public ValueList<int>? FingersAtLowest(IEnumerable<HeldSpots> everywhere) =>
        everywhere.Select(Fingers).FirstOrDefault();
}
