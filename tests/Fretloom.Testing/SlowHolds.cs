using Fretloom.Hand;
using Fretloom.Neck;

namespace Fretloom.Testing;

/// <summary>Every finger for every note, kept when the words allow it: the slow, obvious way to list the holds of a chord.</summary>
public static class SlowHolds
{
    /// <summary>The fingers of each hold, in the order of the spots.</summary>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="spots">The notes, one a string.</param>
    /// <param name="isOneFingerANote">Whether no finger may stop two notes.</param>
    public static IEnumerable<ValueList<Finger>> All(
        Player player,
        ValueList<Spot> spots,
        bool isOneFingerANote = false
    ) =>
        Assignments(player, spots, [])
            .Where(fingers => IsAllowed(player, spots, fingers))
            .Where(fingers => !isOneFingerANote || fingers.Where(IsDown).Distinct().Count() == fingers.Count(IsDown));

    private static IEnumerable<ValueList<Finger>> Assignments(
        Player player,
        ValueList<Spot> spots,
        ValueList<Finger> before
    )
    {
        if (before.Count == spots.Count)
        {
            return [before];
        }

        Finger[] fingers =
            player.Instrument.IsOpen(spots[before.Count]) ? [Finger.None]
            : player.UsesThumb ? [Finger.Index, Finger.Middle, Finger.Ring, Finger.Little, Finger.Thumb]
            : [Finger.Index, Finger.Middle, Finger.Ring, Finger.Little];
        return fingers.SelectMany(finger => Assignments(player, spots, before.Append(finger).ToValueList()));
    }

    private static bool IsAllowed(Player player, ValueList<Spot> spots, ValueList<Finger> fingers)
    {
        var notes = spots
            .Select((spot, at) => (spot.Fret, Place: player.PlaceOf(spot.String), Finger: fingers[at]))
            .ToList();
        var pairs =
            from one in notes
            from other in notes
            where IsDown(one.Finger) && IsDown(other.Finger)
            select (one, other);
        return notes.All(note => note.Finger != Finger.Thumb || note.Place == player.Instrument.Strings.Count)
            && pairs.All(pair =>
                pair.one.Finger == Finger.Thumb
                || pair.other.Finger == Finger.Thumb
                || Math.Sign(pair.one.Fret - pair.other.Fret) * Math.Sign(pair.one.Finger - pair.other.Finger) >= 0
                    && (pair.one.Finger != pair.other.Finger || pair.one.Fret == pair.other.Fret)
            )
            && pairs
                .Where(pair => pair.one.Finger == pair.other.Finger && pair.one.Place < pair.other.Place)
                .All(pair =>
                    notes.All(note =>
                        note.Place <= pair.one.Place
                        || note.Place >= pair.other.Place
                        || note.Finger == pair.one.Finger
                        || IsDown(note.Finger) && note.Fret > pair.one.Fret
                    )
                );
    }

    private static bool IsDown(Finger finger) => finger != Finger.None;
}
