using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Tests.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Hand.Lines;

/// <summary>Hands, lines and rules at random.</summary>
internal static class LineGen
{
    private static readonly Instrument[] Instruments =
    [
        Necks.Find("guitar"),
        Necks.Find("guitar").WithCapo(3),
        Necks.Find("ukulele"),
        Necks.Find("bass"),
        Necks.Find("mandolin"),
        Necks.Find("banjo"),
        Necks.Find("banjo").WithCapo(2),
        Necks.Find("octave mandolin"),
        Necks.Find("six-string bass"),
        new("stick", [new Course(Pitch.Parse("C4"))], 400, 1, default),
    ];

    public static Gen<Player> AnyPlayer { get; } =
        from instrument in Gen.Int[0, Instruments.Length - 1]
        from hand in Gen.Int[0, 4]
        from isTurnedOver in Gen.Bool
        select new Player(Instruments[instrument], new HandSize(new[] { 120, 165, 181, 189, 215 }[hand]), isTurnedOver);

    public static Gen<Finger> AnyFinger { get; } = Gen.Int[1, 4].Select(number => (Finger)number);

    /// <summary>Notes that the instrument has: spots near each other or anywhere, and pitches.</summary>
    public static Gen<ValueList<LineNote>> Line(Instrument instrument, int most, double freeShare) =>
        from first in Gen.Int[0, instrument.LastFret]
        from width in Gen.OneOf(Gen.Int[0, 5], Gen.Int[5, 40])
        from notes in Note(instrument, first, width, freeShare).Array[1, most]
        select notes.ToValueList();

    public static Gen<LineRule> Rule(int notes, int strings) =>
        Gen.OneOf(
            AnyFinger.Select(LineRule (finger) => new LineRule.StartWith(finger)),
            AnyFinger.Select(LineRule (finger) => new LineRule.EndWith(finger)),
            Gen.Int[1, strings].Select(LineRule (number) => new LineRule.StartOn(number)),
            Gen.Int[1, strings].Select(LineRule (number) => new LineRule.EndOn(number)),
            Gen.Int[1, 14].Select(LineRule (position) => new LineRule.StayIn(position)),
            Gen.Const<LineRule>(new LineRule.NoOpenStrings()),
            AnyFinger.Select(LineRule (finger) => new LineRule.Never(finger)),
            Gen.Select(Gen.Int[0, 9], Gen.Int[3, 15])
                .Select(LineRule (ends) => new LineRule.Within(new FretRange(ends.Item1, ends.Item1 + ends.Item2))),
            Gen.Select(Gen.Int[0, notes - 1], Gen.Int[1, strings])
                .Select(LineRule (one) => new LineRule.OnString(one.Item1, one.Item2)),
            Gen.Select(Gen.Int[0, notes - 1], Gen.Int[0, 4])
                .Select(LineRule (one) => new LineRule.WithFinger(one.Item1, (Finger)one.Item2))
        );

    private static Gen<LineNote> Note(Instrument instrument, int first, int width, double freeShare) =>
        from number in Gen.Int[1, instrument.Strings.Count]
        from fret in Gen.Int[first, first + width]
        from isOpen in Gen.Int[0, 5]
        from free in Gen.Double[0, 1]
        let starts = instrument.String(number).StartsAtFret
        let spot = new Spot(number, isOpen == 0 ? starts : Math.Clamp(fret, starts, instrument.LastFret))
        select free < freeShare
            ? (LineNote)new LineNote.Sounding(Pitch.FromMidiNumber(instrument.MidiAt(spot)!.Value))
            : new LineNote.At(spot);
}
