using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>Fingers for notes that are held together.</summary>
public static class ChordFingering
{
    /// <summary>Every fingering that the model allows, ranked; the best come back.</summary>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="spots">At most one note a string, in any order; strings without a note are not played.</param>
    /// <param name="count">How many fingerings at most, at least 1.</param>
    public static FingeringAnswer Find(Player player, ValueList<Spot> spots, int count = 1)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var found = Assignments(player, spots, []).OrderBy(fingering => fingering.Cost).Take(count).ToValueList();
        return found.Count > 0
            ? FingeringAnswer.Found(found)
            : FingeringAnswer.Refused(new("No hand holds these notes together; leave one out."));
    }

    private static IEnumerable<Fingering> Assignments(
        Player player,
        ValueList<Spot> spots,
        ValueList<FingeredNote> done
    )
    {
        if (done.Count == spots.Count)
        {
            yield return Priced(player, done);
            yield break;
        }

        var spot = spots[done.Count];
        var fingers = player.Instrument.IsOpen(spot)
            ? [Finger.None]
            : new[] { Finger.Index, Finger.Middle, Finger.Ring, Finger.Little };
        foreach (var finger in fingers)
        {
            if (done.All(note => Agree(note, spot, finger)))
            {
                foreach (var rest in Assignments(player, spots, done.Append(new(spot, finger)).ToValueList()))
                {
                    yield return rest;
                }
            }
        }
    }

    private static bool Agree(FingeredNote note, Spot spot, Finger finger) =>
        note.Finger == Finger.None
        || finger == Finger.None
        || Math.Sign(note.Spot.Fret - spot.Fret) is var along && along == 0
        || along == Math.Sign(note.Finger - finger);

    private static Fingering Priced(Player player, ValueList<FingeredNote> notes)
    {
        var pressed = notes.Where(note => note.Finger != Finger.None).ToList();
        var gaps = (
            from one in pressed
            from other in pressed
            where one.Spot.String > other.Spot.String
            select one.Finger == other.Finger
                ? 2.0
                : Math.Abs(Math.Abs(one.Spot.Fret - other.Spot.Fret) - Math.Abs(one.Finger - other.Finger))
        ).Sum();
        var stretches = (
            from one in pressed
            from other in pressed
            where one.Finger < other.Finger
            select new Stretch(
                player.Hand,
                one.Finger,
                other.Finger,
                Math.Max(0, player.Instrument.LandingMm(other.Spot.Fret) - player.Instrument.LandingMm(one.Spot.Fret))
            )
        ).ToList();
        return new Fingering(
            notes,
            gaps > 0 ? [new CostTerm("gap", gaps, "fingers farther apart or nearer than their frets")] : [],
            player.Instrument.StretchMm(notes.Select(note => note.Spot)),
            stretches.Count == 0 ? null : stretches.MaxBy(stretch => stretch.Effort)
        );
    }
}
