using Fretloom.Neck;

namespace Fretloom.Hand.Chords;

/// <summary>The best ways to hold a chord: all of them priced, the cheapest taken.</summary>
internal static class ChordChoice
{
    /// <summary>The cheapest holds, or why there are none.</summary>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="spots">The notes.</param>
    /// <param name="count">How many at most.</param>
    /// <param name="isOneFingerANote">Whether no finger may stop two notes.</param>
    public static FingeringAnswer Best(Player player, ValueList<Spot> spots, int count, bool isOneFingerANote)
    {
        if (ChordRefusals.OfSpots(player, spots) is { } refusal)
        {
            return FingeringAnswer.Refused(refusal);
        }

        var holds = HoldEnumeration.All(new HeldChord(player, spots), isOneFingerANote);
        if (holds.Count == 0)
        {
            return FingeringAnswer.Refused(ChordRefusals.OfHold(player, spots, isOneFingerANote));
        }

        var weights = ChordWeights.For(player);
        var priced = new (ChordHold Hold, double Cost)[holds.Count];
        for (var at = 0; at < priced.Length; at++)
        {
            priced[at] = (holds[at], ChordCost.Of(holds[at], weights));
        }

        Array.Sort(priced, (one, other) => Compare(one.Cost, other.Cost, one.Hold, other.Hold));
        return FingeringAnswer.Found(
            priced.Take(count).Select(best => Fingered(best.Hold, spots, weights)).ToValueList()
        );
    }

    /// <summary>By cost; among equals the one with the lower finger on the first string where they differ, string farthest from the floor first.</summary>
    private static int Compare(double cost, double otherCost, ChordHold one, ChordHold other)
    {
        var byCost = cost.CompareTo(otherCost);
        if (byCost != 0)
        {
            return byCost;
        }

        for (var place = one.Chord.Player.Instrument.Strings.Count; place >= 1; place--)
        {
            var byFinger = one.At(place).CompareTo(other.At(place));
            if (byFinger != 0)
            {
                return byFinger;
            }
        }

        return 0;
    }

    private static Fingering Fingered(ChordHold hold, ValueList<Spot> spots, double[] weights)
    {
        var player = hold.Chord.Player;
        return new Fingering(
            spots.Select(spot => new FingeredNote(spot, hold.At(player.PlaceOf(spot.String)))).ToValueList(),
            ChordCost.Terms(hold, weights),
            player.Instrument.StretchMm(spots),
            Widest(hold)
        );
    }

    private static Stretch? Widest(ChordHold hold)
    {
        Stretch? widest = null;
        foreach (var lower in hold.Laid)
        {
            foreach (var higher in hold.Laid)
            {
                if (lower.Finger < higher.Finger)
                {
                    var stretch = new Stretch(
                        hold.Chord.Player.Hand,
                        lower.Finger,
                        higher.Finger,
                        higher.AtMm - lower.AtMm
                    );
                    widest = widest is { } most && most.Effort >= stretch.Effort ? most : stretch;
                }
            }
        }

        return widest;
    }
}
