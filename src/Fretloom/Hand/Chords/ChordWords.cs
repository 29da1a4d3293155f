using System.Globalization;

namespace Fretloom.Hand.Chords;

/// <summary>Charges in words, for a teacher.</summary>
internal static class ChordWords
{
    /// <summary>What a charge is about: <c>a 5-fret reach between fingers 1 and 2</c>.</summary>
    public static string Of(ChordHold hold, Charge charge)
    {
        var one = Laid(hold, charge.One);
        var other = Laid(hold, charge.Other);
        var finger = $"finger {(int)charge.One}";
        var fingers = $"fingers {(int)charge.One} and {(int)charge.Other}";
        var across = $"{finger} laid across strings {String(hold, one.Far)} to {String(hold, one.Near)}";
        var amount = (int)Math.Round(charge.Amount);
        return charge.Term switch
        {
            ChordTerm.Apart => $"a {other.Fret - one.Fret + 1}-fret reach between {fingers}",
            ChordTerm.Close => $"{fingers} close together, within {other.Fret - one.Fret + 1} frets",
            ChordTerm.Beside or ChordTerm.BesideIndex or ChordTerm.BesideLittle =>
                $"{fingers} beside each other on fret {one.Fret}",
            ChordTerm.Crossed => $"{fingers} crossed on fret {one.Fret}",
            ChordTerm.TowardFloor =>
                $"finger {(int)charge.Other} on fret {other.Fret}, {Strings(amount)} nearer the floor than {finger} on fret {one.Fret}",
            ChordTerm.Reach => Reach(hold, one, other),
            >= ChordTerm.Barre1 and <= ChordTerm.Barre4 => across,
            >= ChordTerm.LongBarre2 and <= ChordTerm.BarreOfFour => $"{finger} laid across {Strings(one.Length)}",
            ChordTerm.LongBarreBeside =>
                $"{finger} laid across {Strings(one.Length)} beside another on fret {one.Fret}",
            ChordTerm.BarreShort => $"{across}, with notes nearer the floor",
            ChordTerm.BarreMuted => $"{finger} laid over {Strings(amount)} not played",
            ChordTerm.BarreLift or ChordTerm.BarreLiftHigher => $"{across}, clear of a lower note nearer the floor",
            ChordTerm.BarreOpen => $"{across} beside an open string",
            ChordTerm.BarreInner => $"{across}, with notes stopped nearer the floor",
            ChordTerm.SplitPair => $"fingers on fret {other.Fret} within the barre of {finger} and beside it",
            ChordTerm.RingTip => $"finger 3 reaching nearest the floor, on fret {other.Fret}",
            ChordTerm.RingForMiddle => $"finger 3 on fret {other.Fret}, next to finger 1 on fret {one.Fret}",
            ChordTerm.Lead or ChordTerm.LeadFirst => $"{finger} on fret {one.Fret} as the first finger used",
            ChordTerm.LittleFirst => $"finger 4 in first position, on fret {one.Fret}",
            ChordTerm.LittleInside =>
                $"finger 4 on string {String(hold, one.Near)}, fret {one.Fret}, not nearest the floor",
            ChordTerm.Skip => $"{(amount == 1 ? "1 finger" : $"{amount} fingers")} left out between {fingers}",
            ChordTerm.FirstPosition or ChordTerm.FirstIndex or ChordTerm.LoneNote =>
                $"{finger} on fret {one.Fret}, away from fret {(int)charge.One}",
            ChordTerm.WideThree => $"{other.Fret - one.Fret + 1} frets without finger 4",
            ChordTerm.Thumb => $"the thumb over the edge on fret {hold.Thumb?.Fret}",
            ChordTerm.ThumbAway =>
                $"the thumb {(amount == 1 ? "1 fret" : $"{amount} frets")} from finger {(int)hold.Laid[0].Finger}",
            _ => throw new ArgumentOutOfRangeException(nameof(charge), charge.Term, "No words for this term."),
        };
    }

    private static LaidFinger Laid(ChordHold hold, Finger finger) =>
        Array.Find(hold.Laid, laid => laid.Finger == finger);

    private static string Strings(int count) => count == 1 ? "1 string" : $"{count} strings";

    private static int String(ChordHold hold, int place) => hold.Chord.Player.PlaceOf(place);

    private static string Reach(ChordHold hold, LaidFinger one, LaidFinger other)
    {
        var apartMm = other.AtMm - one.AtMm;
        var moreMm = apartMm - hold.Chord.Player.Hand.RestMm(one.Finger, other.Finger);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{apartMm:0} mm between fingers {(int)one.Finger} and {(int)other.Finger}, {moreMm:0} mm more than at rest"
        );
    }
}
