namespace Fretloom.Hand.Chords;

/// <summary>An amount of a term, with the fingers it is about.</summary>
internal readonly record struct Charge(
    ChordTerm Term,
    double Amount,
    Finger One = Finger.None,
    Finger Other = Finger.None
);

/// <summary>What is done with each charge.</summary>
internal interface IChargeTaker
{
    /// <summary>Takes one.</summary>
    void Take(Charge charge);
}

/// <summary>Everything that a hold is charged for.</summary>
internal static class ChordCharges
{
    private static readonly ChordTerm?[,] Reaches = Pairs(ChordTerm.Reach12);
    private static readonly ChordTerm?[,] Squeezes = Pairs(ChordTerm.Squeeze12);

    /// <summary>Hands every charge over; amounts are 0 or more.</summary>
    public static void Visit<T>(ChordHold hold, ref T taker)
        where T : IChargeTaker
    {
        var laid = hold.Laid;
        for (var at = 0; at < laid.Length; at++)
        {
            var finger = laid[at];
            if (at > 0)
            {
                Neighbours(laid[at - 1], finger, ref taker);
            }

            for (var lower = 0; lower < at; lower++)
            {
                Pair(hold, laid[lower], finger, ref taker);
            }

            if (finger.IsBarre)
            {
                Barre(hold, finger, ref taker);
            }
        }

        Hand(hold, ref taker);
    }

    private static void Neighbours<T>(LaidFinger one, LaidFinger other, ref T taker)
        where T : IChargeTaker
    {
        var more = other.Fret - one.Fret - (other.Finger - one.Finger);
        void Charge(ref T to, ChordTerm term, double amount) => to.Take(new(term, amount, one.Finger, other.Finger));
        if (more > 0)
        {
            Charge(ref taker, ChordTerm.Apart, more);
        }
        else if (more < 0)
        {
            Charge(ref taker, other.Fret == one.Fret ? ChordTerm.Beside : ChordTerm.Close, -more);
        }

        if (other.Fret == one.Fret)
        {
            if (other.Far > one.Far)
            {
                Charge(ref taker, ChordTerm.Crossed, 1);
            }

            return;
        }

        var near = other.Finger - one.Finger == 1;
        if (other.Far < one.Near)
        {
            Charge(ref taker, near ? ChordTerm.TowardFloor1 : ChordTerm.TowardFloor2, one.Near - other.Far);
        }
        else if (other.Near > one.Far)
        {
            Charge(ref taker, near ? ChordTerm.FromFloor1 : ChordTerm.FromFloor2, other.Near - one.Far);
        }
    }

    private static void Pair<T>(ChordHold hold, LaidFinger one, LaidFinger other, ref T taker)
        where T : IChargeTaker
    {
        var hand = hold.Chord.Player.Hand;
        var beyondMm = (other.AtMm - one.AtMm - hand.RestMm(one.Finger, other.Finger)) / hand.Scale;
        var terms = beyondMm > 0 ? Reaches : Squeezes;
        if (terms[(int)one.Finger, (int)other.Finger] is { } term)
        {
            taker.Take(new(term, Math.Abs(beyondMm) / 10, one.Finger, other.Finger));
        }
    }

    private static void Barre<T>(ChordHold hold, LaidFinger finger, ref T taker)
        where T : IChargeTaker
    {
        void Charge(ref T to, ChordTerm term, double amount)
        {
            if (amount > 0)
            {
                to.Take(new(term, amount, finger.Finger));
            }
        }

        var chord = hold.Chord;
        var index = finger.Finger - Finger.Index;
        Charge(ref taker, ChordTerm.Barre1 + index, 1);
        Charge(ref taker, ChordTerm.BarreLength1 + index, finger.Length - 2);
        var inside = HeldChord.Between(finger.Near, finger.Far);
        Charge(ref taker, ChordTerm.BarreMuted, Count(inside & ~chord.Played));
        Charge(ref taker, ChordTerm.BarreOpen, chord.Open != 0 ? 1 : 0);
        var lower = (chord.Below(finger.Fret) & ((1u << finger.Near) - 1)) != 0;
        Charge(ref taker, index == 0 ? ChordTerm.BarreLift1 : ChordTerm.BarreLiftX, lower ? 1 : 0);
        if (index > 0)
        {
            Charge(ref taker, ChordTerm.BarreGap, Count(inside & chord.Played) - (finger.Stops - 2));
        }
        else
        {
            Charge(ref taker, ChordTerm.BarreFew1, chord.Notes.Length <= 4 ? 1 : 0);
        }

        Charge(ref taker, ChordTerm.BarreAbove, finger.Fret > 1 && index == 0 ? 0 : 0);
    }

    private static void Hand<T>(ChordHold hold, ref T taker)
        where T : IChargeTaker
    {
        var laid = hold.Laid;
        if (laid.Length == 0)
        {
            return;
        }

        if (laid[0].Finger > Finger.Index)
        {
            taker.Take(new(ChordTerm.NoIndex, 1));
            taker.Take(new(ChordTerm.Lead, laid[0].Finger - Finger.Index));
        }

        var last = laid[^1].Finger;
        if (last == Finger.Little)
        {
            taker.Take(new(ChordTerm.Little, 1));
        }

        var skipped = last - laid[0].Finger + 1 - laid.Length;
        if (skipped > 0)
        {
            taker.Take(new(ChordTerm.Skip, skipped));
        }

        taker.Take(new(ChordTerm.Used, laid.Length));
        if (hold.Chord.Open != 0 && laid[^1].Fret <= 4)
        {
            foreach (var finger in laid)
            {
                var off = Math.Abs(finger.Fret - (int)finger.Finger);
                if (off > 0)
                {
                    taker.Take(new(ChordTerm.FirstPosition, off, finger.Finger));
                }
            }
        }
    }

    private static int Count(uint places) => System.Numerics.BitOperations.PopCount(places);

    private static ChordTerm?[,] Pairs(ChordTerm first) =>
        new ChordTerm?[5, 5]
        {
            { null, null, null, null, null },
            { null, null, first, first + 3, first + 5 },
            { null, null, null, first + 1, first + 4 },
            { null, null, null, null, first + 2 },
            { null, null, null, null, null },
        };
}
