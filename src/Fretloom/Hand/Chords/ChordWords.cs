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
        var amount = (int)Math.Round(charge.Amount);
        var fingers = $"fingers {(int)charge.One} and {(int)charge.Other}";
        var finger = $"finger {(int)charge.One}";
        return charge.Term switch
        {
            ChordTerm.Apart => $"a {other.Fret - one.Fret + 1}-fret reach between {fingers}",
            ChordTerm.Close => $"{fingers} within {other.Fret - one.Fret + 1} frets",
            ChordTerm.Beside => $"{fingers} beside each other on fret {one.Fret}",
            ChordTerm.Crossed => $"{fingers} crossed on fret {one.Fret}",
            ChordTerm.TowardFloor1 or ChordTerm.TowardFloor2 =>
                $"finger {(int)charge.Other} {Strings(amount)} nearer the floor than {finger}",
            ChordTerm.FromFloor1 or ChordTerm.FromFloor2 =>
                $"finger {(int)charge.Other} {Strings(amount)} farther from the floor than {finger}",
            >= ChordTerm.Reach12 and <= ChordTerm.Reach14 => Millimetres(hold, one, other)
                + $"more than at rest between {fingers}",
            >= ChordTerm.Squeeze12 and <= ChordTerm.Squeeze14 => Millimetres(hold, one, other)
                + $"less than at rest between {fingers}",
            >= ChordTerm.Barre1 and <= ChordTerm.Barre4 =>
                $"{finger} laid across strings {String(hold, one.Far)} to {String(hold, one.Near)}",
            >= ChordTerm.BarreLength1 and <= ChordTerm.BarreLength4 => $"{finger} laid across {Strings(one.Length)}",
            ChordTerm.BarreMuted => $"{finger} laid over {Strings(amount)} not played",
            ChordTerm.BarreLift1 or ChordTerm.BarreLiftX =>
                $"{finger} laid flat beside a lower note nearer the floor, on fret {one.Fret}",
            ChordTerm.BarreGap => $"{finger} laid across {Strings(amount)} that other fingers stop",
            ChordTerm.BarreOpen => $"{finger} laid across {Strings(one.Length)} beside an open string",
            ChordTerm.BarreFew1 => $"{finger} laid across strings for {hold.Chord.Notes.Length} fretted notes",
            ChordTerm.NoIndex => $"finger 1 not used, fingers {(int)hold.Laid[0].Finger} and up instead",
            ChordTerm.Lead => $"finger {(int)hold.Laid[0].Finger} on the lowest fret",
            ChordTerm.Little => $"finger 4 on fret {hold.Laid[^1].Fret}",
            ChordTerm.Skip =>
                $"{amount} of the fingers between {(int)hold.Laid[0].Finger} and {(int)hold.Laid[^1].Finger} not used",
            ChordTerm.FirstPosition => $"{finger} on fret {one.Fret} in first position",
            _ => throw new ArgumentOutOfRangeException(nameof(charge), charge.Term, "No words for this term."),
        };
    }

    private static LaidFinger Laid(ChordHold hold, Finger finger) =>
        Array.Find(hold.Laid, laid => laid.Finger == finger);

    private static string Strings(int count) => count == 1 ? "1 string" : $"{count} strings";

    private static int String(ChordHold hold, int place) =>
        hold.Chord.Player.IsTurnedOver ? hold.Chord.Player.Instrument.Strings.Count + 1 - place : place;

    private static string Millimetres(ChordHold hold, LaidFinger one, LaidFinger other)
    {
        var apart = other.AtMm - one.AtMm;
        var more = Math.Abs(apart - hold.Chord.Player.Hand.RestMm(one.Finger, other.Finger));
        return string.Create(CultureInfo.InvariantCulture, $"{apart:0} mm, {more:0} mm ");
    }
}
