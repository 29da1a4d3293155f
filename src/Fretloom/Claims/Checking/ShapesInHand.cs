using Fretloom.Hand;
using Fretloom.Neck;

namespace Fretloom.Claims.Checking;

/// <summary>Claims about shapes under a hand: on a real neck, wherever they lie in the window.</summary>
internal static class ShapesInHand
{
    /// <summary>Whether the millimetres between the lowest and the highest fingertip meet a condition everywhere; open strings do not count.</summary>
    public static bool Stretches(Case one, PlacedShape shape, Count millimetres) =>
        Everywhere(one.Place, shape).All(at => AdmitsLength(millimetres, at.Instrument.StretchMm(at.Spots)));

    /// <summary>Whether a hand takes it everywhere with one finger a note, and not very wide.</summary>
    public static bool CanBePlayed(Case one, PlacedShape shape, HandSize hand) =>
        Everywhere(one.Place, shape)
            .All(at =>
                ArpeggioFingering.Find(new Player(at.Instrument, hand), at.Spots).Best is { Width: < Width.VeryWide }
            );

    /// <summary>Whether the best fingers of an adult hand are the same, string by string, wherever it lies, as those of another where that lies lowest.</summary>
    public static bool AreFingeredAlike(Case one, PlacedShape shape, PlacedShape other, ShapeSet others)
    {
        var theirs = Everywhere(one.Place, other, others.Of?.Instrument).Select(Fingers).FirstOrDefault();
        return theirs is not null
            && Everywhere(one.Place, shape).All(at => Fingers(at)?.SequenceEqual(theirs) ?? false);
    }

    /// <summary>Its spots at each place, the farthest string first.</summary>
    public static IEnumerable<(Instrument Instrument, ValueList<Spot> Spots)> Everywhere(
        Place place,
        PlacedShape shape,
        Instrument? other = null
    )
    {
        var instrument = other ?? place.ToInstrument();
        foreach (var moved in shape.Placements)
        {
            var frets = shape.Strings.Numbers.Numbers.Select(
                (number, at) => (number, Fret: shape.Frets[at] + moved + instrument.String(number).StartsAtFret)
            );
            if (frets.All(one => one.Fret is >= 0 and <= 99))
            {
                yield return (instrument, frets.Select(one => new Spot(one.number, one.Fret)).ToValueList());
            }
        }
    }

    private static IEnumerable<Finger>? Fingers((Instrument Instrument, ValueList<Spot> Spots) at) =>
        ArpeggioFingering.Find(new Player(at.Instrument), at.Spots).Best is { } best
            ? at.Spots.Select(spot => best.FingerAt(spot) ?? default)
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
