using System.Numerics;

namespace Fretloom.Hand.Chords;

/// <summary>An amount of a term.</summary>
/// <param name="Term">The term.</param>
/// <param name="Amount">How many of its units, 0 or more.</param>
/// <param name="One">The finger it is about, if any.</param>
/// <param name="Other">The other finger, the one nearer the little finger, if it is about two.</param>
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
    /// <summary>The last fret of first position.</summary>
    private const int FirstPositionEnds = 4;

    /// <summary>Hands over every charge.</summary>
    public static void Visit<T>(ChordHold hold, ref T taker)
        where T : IChargeTaker
    {
        var laid = hold.Laid;
        for (var at = 0; at < laid.Length; at++)
        {
            if (at > 0)
            {
                Neighbours(laid[at - 1], laid[at], ref taker);
            }

            for (var lower = 0; lower < at; lower++)
            {
                Pair(hold.Chord.Player.Hand, laid[lower], laid[at], ref taker);
            }

            if (laid[at].IsBarre)
            {
                Barre(hold, laid[at], ref taker);
            }
        }

        if (laid.Length > 0)
        {
            Choice(hold, ref taker);
        }

        Thumb(hold, ref taker);
    }

    private static void Neighbours<T>(LaidFinger one, LaidFinger other, ref T taker)
        where T : IChargeTaker
    {
        var fingers = other.Finger - one.Finger;
        var more = other.Fret - one.Fret - fingers;
        if (other.Fret == one.Fret)
        {
            taker.Take(new(ChordTerm.Beside, fingers, one.Finger, other.Finger));
            If(one.Finger == Finger.Index && fingers == 1, ChordTerm.BesideIndex, one, other, ref taker);
            If(one.Finger == Finger.Ring, ChordTerm.BesideLittle, one, other, ref taker);
            If(other.Far > one.Far, ChordTerm.Crossed, one, other, ref taker);
            return;
        }

        if (more != 0)
        {
            taker.Take(new(more > 0 ? ChordTerm.Apart : ChordTerm.Close, Math.Abs(more), one.Finger, other.Finger));
        }

        if (fingers == 1 && other.Far < one.Near)
        {
            taker.Take(new(ChordTerm.TowardFloor, one.Near - other.Far, one.Finger, other.Finger));
        }
    }

    private static void Pair<T>(HandSize hand, LaidFinger one, LaidFinger other, ref T taker)
        where T : IChargeTaker
    {
        var beyondMm = (other.AtMm - one.AtMm - hand.RestMm(one.Finger, other.Finger)) / hand.Scale;
        if (beyondMm > 0)
        {
            taker.Take(new(ChordTerm.Reach, beyondMm / 10, one.Finger, other.Finger));
        }
    }

    private static void Barre<T>(ChordHold hold, LaidFinger barre, ref T taker)
        where T : IChargeTaker
    {
        var chord = hold.Chord;
        var isIndex = barre.Finger == Finger.Index;
        taker.Take(new(ChordTerm.Barre1 + (barre.Finger - Finger.Index), 1, barre.Finger));
        if (!isIndex && barre.Length > 2)
        {
            LongBarre(hold, barre, ref taker);
        }

        var muted = BitOperations.PopCount(HeldChord.Between(barre.Near, barre.Far) & ~chord.Played);
        if (muted > 0)
        {
            taker.Take(new(ChordTerm.BarreMuted, muted, barre.Finger));
        }

        var nearer = (1u << barre.Near) - 1;
        var isLifted = (chord.Below(barre.Fret) & nearer) != 0;
        If(isLifted, isIndex ? ChordTerm.BarreLift : ChordTerm.BarreLiftHigher, barre, default, ref taker);
        If(chord.Open != 0, ChordTerm.BarreOpen, barre, default, ref taker);
        var isShort = isIndex && (chord.Played & nearer) != 0;
        If(isShort, ChordTerm.BarreShort, barre, default, ref taker);
        var isInner = !isIndex && !isLifted && (chord.Played & nearer) != 0;
        If(isInner, ChordTerm.BarreInner, barre, default, ref taker);
    }

    private static void LongBarre<T>(ChordHold hold, LaidFinger barre, ref T taker)
        where T : IChargeTaker
    {
        taker.Take(new(ChordTerm.LongBarre2 + (barre.Finger - Finger.Middle), barre.Length - 2, barre.Finger));
        If(barre.Length > 3, ChordTerm.BarreOfFour, barre, default, ref taker);
        var isBeside = Array.Exists(hold.Laid, other => other.Finger != barre.Finger && other.Fret == barre.Fret);
        If(isBeside, ChordTerm.LongBarreBeside, barre, default, ref taker);
    }

    /// <summary>Which fingers are used at all.</summary>
    private static void Choice<T>(ChordHold hold, ref T taker)
        where T : IChargeTaker
    {
        var laid = hold.Laid;
        var (lowest, highest) = (laid[0], laid[^1]);
        var isFirst = hold.Chord.Open != 0 && highest.Fret <= FirstPositionEnds;
        var left = lowest.Finger - Finger.Index;
        if (left > 0)
        {
            taker.Take(new(isFirst ? ChordTerm.LeadFirst : ChordTerm.Lead, left, lowest.Finger));
        }

        var skipped = highest.Finger - lowest.Finger + 1 - laid.Length;
        if (skipped > 0)
        {
            taker.Take(new(ChordTerm.Skip, skipped, lowest.Finger, highest.Finger));
        }

        var isAway = isFirst && lowest.Finger == Finger.Index && lowest.Fret > 1;
        If(isAway, ChordTerm.FirstIndex, lowest, default, ref taker);
        var usesLittle = highest.Finger == Finger.Little;
        If(usesLittle && isFirst, ChordTerm.LittleFirst, highest, default, ref taker);
        If(usesLittle && highest.Near > 1, ChordTerm.LittleInside, highest, default, ref taker);
        If(!usesLittle && highest.Fret - lowest.Fret >= 3, ChordTerm.WideThree, lowest, highest, ref taker);
        If(SplitsPair(laid), ChordTerm.SplitPair, lowest, highest, ref taker);
        if (ReachesWithRing(laid))
        {
            taker.Take(new(ChordTerm.RingTip, laid[0].Length - 1, lowest.Finger, highest.Finger));
        }

        If(TakesRingForMiddle(laid), ChordTerm.RingForMiddle, laid[0], laid[Math.Min(1, laid.Length - 1)], ref taker);
        var off = Math.Abs(lowest.Fret - (int)lowest.Finger);
        if (isFirst && hold.Chord.Notes.Length == 1 && off > 0)
        {
            taker.Take(new(ChordTerm.LoneNote, off, lowest.Finger));
        }

        foreach (var finger in laid)
        {
            var ahead = finger.Fret - (int)finger.Finger;
            if (isFirst && ahead > 0)
            {
                taker.Take(new(ChordTerm.FirstPosition, ahead, finger.Finger));
            }
        }
    }

    private static void Thumb<T>(ChordHold hold, ref T taker)
        where T : IChargeTaker
    {
        if (hold.Thumb is not { } thumb)
        {
            return;
        }

        taker.Take(new(ChordTerm.Thumb, 1, Finger.Thumb));
        var away = hold.Laid.Length == 0 ? 0 : Math.Abs(thumb.Fret - hold.Laid[0].Fret);
        if (away > 0)
        {
            taker.Take(new(ChordTerm.ThumbAway, away, Finger.Thumb));
        }
    }

    private static bool SplitsPair(LaidFinger[] laid) =>
        laid.Length == 3
        && laid[0].IsBarre
        && laid[1].Fret == laid[2].Fret
        && laid[0].Spans(laid[1]) != laid[0].Spans(laid[2]);

    private static bool ReachesWithRing(LaidFinger[] laid)
    {
        var ring = laid[^1];
        var barre = laid[0];
        if (
            ring.Finger != Finger.Ring
            || ring.IsBarre
            || barre.Finger != Finger.Index
            || !barre.IsBarre
            || ring.Fret != barre.Fret + 2
        )
        {
            return false;
        }

        foreach (var finger in laid)
        {
            if (finger.Near < ring.Near || (finger.Fret == ring.Fret && finger.Finger != Finger.Ring))
            {
                return false;
            }
        }

        return true;
    }

    private static bool TakesRingForMiddle(LaidFinger[] laid) =>
        laid.Length > 1
        && laid[0].Finger == Finger.Index
        && laid[1].Finger == Finger.Ring
        && laid[1].Fret == laid[0].Fret + 1;

    private static void If<T>(bool isSo, ChordTerm term, LaidFinger one, LaidFinger other, ref T taker)
        where T : IChargeTaker
    {
        if (isSo)
        {
            taker.Take(new(term, 1, one.Finger, other.Finger));
        }
    }
}
