using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>The twin of a shape: its half-turn about a place where the key on its strings is carried onto itself, so that it lies in the key again.</summary>
public static class Twin
{
    /// <summary>The spots of the twin.</summary>
    /// <param name="shape">The shape; its own string set is turned.</param>
    /// <param name="map">The key, and the frets that the twin has to lie in.</param>
    /// <returns>
    /// In the order of the shape's strings, far string first; of several twins the one turned about the place nearest to the shape's middle. Null
    /// where the strings have no such place, or no twin lies inside the frets.
    /// </returns>
    public static ValueList<Spot>? Of(Shape shape, NeckMap map)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(map);
        var spots = shape.Spots.ToValueList();
        var middle = (spots.Min(spot => spot.Fret) + spots.Max(spot => spot.Fret)) / 2.0;
        var open = shape
            .Strings.Numbers.Select(map.Instrument.String)
            .Select(course => PitchClass.FromSemitones(course.Open.MidiNumber - course.StartsAtFret));
        return KeySymmetry
            .HalfTurnCentres(map.Key.PitchClasses, open.ToValueList(), map.Frets.First, map.Frets.Last)
            .OrderBy(centre => Math.Abs(centre - middle))
            .ThenBy(centre => centre)
            .Select(centre => Motions.HalfTurned(spots, shape.Strings, centre))
            .OfType<ValueList<Spot>>()
            .Where(twin => twin.All(spot => map.Frets.Contains(spot.Fret) && map.Instrument.Has(spot)))
            .Select(twin =>
                (ValueList<Spot>?)twin.OrderByDescending(spot => spot.String).ThenBy(spot => spot.Fret).ToValueList()
            )
            .FirstOrDefault();
    }
}
