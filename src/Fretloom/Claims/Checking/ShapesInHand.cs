using Fretloom.Hand;
using Fretloom.Hand.Chords;
using Fretloom.Neck;

namespace Fretloom.Claims.Checking;

/// <summary>Spots on an instrument, the farthest string first.</summary>
internal readonly record struct HeldSpots(Instrument Instrument, ValueList<Spot> Spots);

/// <summary>Claims about shapes under a hand, at one place of a real neck.</summary>
internal static class ShapesInHand
{
    /// <summary>Whether the millimetres between the lowest and the highest fingertip meet a condition; open strings do not count.</summary>
    public static bool Stretches(HeldSpots at, Count millimetres) =>
        AdmitsLength(millimetres, at.Instrument.StretchMm(at.Spots));

    /// <summary>Whether a hand holds it with one finger a note, and not very wide: never five stopped notes.</summary>
    public static bool CanBePlayed(HeldSpots at, HandSize hand) =>
        ChordChoice.Best(new Player(at.Instrument, hand), at.Spots, 1, isOneFingerANote: true).Best
            is { Width: < Width.VeryWide };

    /// <summary>Where a shape lies on an instrument, the lowest place first.</summary>
    public static IEnumerable<HeldSpots> Everywhere(PlacedShape shape, Instrument instrument)
    {
        foreach (var moved in shape.Placements)
        {
            var frets = shape.Strings.Numbers.Numbers.Select(
                (number, at) => (number, Fret: shape.Frets[at] + moved + instrument.String(number).StartsAtFret)
            );
            if (frets.All(one => one.Fret is >= 0 and <= 99))
            {
                yield return new HeldSpots(
                    instrument,
                    frets.Select(one => new Spot(one.number, one.Fret)).ToValueList()
                );
            }
        }
    }

    /// <summary>The best fingers of an adult hand, the farthest string first, 0 for an open one; null when it cannot take the spots.</summary>
    public static ValueList<int>? Fingers(HeldSpots at) =>
        ArpeggioFingering.Find(new Player(at.Instrument), at.Spots).Best is { } best
            ? at.Spots.Select(spot => (int)(best.FingerAt(spot) ?? default)).ToValueList()
            : null;

    private static bool AdmitsLength(Count count, double millimetres) =>
        count.Comparison switch
        {
            Comparison.AtLeast => millimetres >= count.Number,
            Comparison.AtMost => millimetres <= count.Number,
            Comparison.MoreThan => millimetres > count.Number,
            Comparison.FewerThan => millimetres < count.Number,
            _ => Math.Abs(millimetres - count.Number) <= 0.5,
        };
}
