using Fretloom.Neck;

namespace Fretloom.Shapes;

/// <summary>The ways a shape can be carried about the neck, and whether one shape is the image of another.</summary>
/// <remarks>
/// A motion takes spots to spots, in the order given. It knows no instrument: the result is null when a spot would lie below
/// fret 0 or above fret 99; whether it is on a given neck is for <see cref="Instrument.Has"/> to say. Shapes are compared by
/// their <see cref="ShapeForm"/>, wherever they lie.
/// </remarks>
public static class Motions
{
    /// <summary>Every spot some frets higher, or lower when negative; on the same strings.</summary>
    public static ValueList<Spot>? MovedAlong(IEnumerable<Spot> spots, int frets) =>
        Carried(spots, spot => (spot.String, spot.Fret + frets));

    /// <summary>Every spot on the string that has the same place in another string set, at the same fret.</summary>
    /// <exception cref="ArgumentException">The sets are not of one size, or a spot lies outside the first.</exception>
    public static ValueList<Spot>? MovedToStrings(IEnumerable<Spot> spots, StringSet from, StringSet to) =>
        from.Count == to.Count
            ? Carried(spots, spot => (to.Numbers[PlaceOf(spot, from)], spot.Fret))
            : throw new ArgumentException($"Strings {from} and strings {to} are not equally many.", nameof(to));

    /// <summary>Turned by 180 degrees: fret f becomes 2c - f, and the string set is read backwards.</summary>
    /// <param name="spots">Spots on the strings of the set.</param>
    /// <param name="strings">The string set.</param>
    /// <param name="centre">The fret c to turn about; whole or half.</param>
    /// <exception cref="ArgumentException">The centre is not whole or half, or a spot lies outside the set.</exception>
    public static ValueList<Spot>? HalfTurned(IEnumerable<Spot> spots, StringSet strings, double centre)
    {
        var twice = Twice(centre);
        return Carried(spots, spot => (strings.Numbers[^(PlaceOf(spot, strings) + 1)], twice - spot.Fret));
    }

    /// <summary>Frets reversed: fret f becomes 2c - f on the same string.</summary>
    /// <param name="spots">The spots.</param>
    /// <param name="centre">The fret c to mirror about; whole or half.</param>
    /// <exception cref="ArgumentException">The centre is not whole or half.</exception>
    public static ValueList<Spot>? Mirrored(IEnumerable<Spot> spots, double centre)
    {
        var twice = Twice(centre);
        return Carried(spots, spot => (spot.String, twice - spot.Fret));
    }

    /// <summary>The form of a shape.</summary>
    public static ShapeForm Form(this Shape shape) => ShapeForm.Of(shape.Strings, shape.Spots);

    /// <summary>Whether two shapes are equal but for where they lie.</summary>
    public static bool HasTheSameFormAs(this Shape shape, Shape other) => shape.Form() == other.Form();

    /// <summary>Whether some half-turn, with a motion along or across the neck, carries one shape to the other.</summary>
    public static bool IsHalfTurnOf(this Shape shape, Shape other) => shape.Form() == other.Form().HalfTurned();

    /// <summary>Whether reversing the frets, with a motion along or across the neck, carries one shape to the other.</summary>
    public static bool IsMirrorOf(this Shape shape, Shape other) => shape.Form() == other.Form().Mirrored();

    private static ValueList<Spot>? Carried(IEnumerable<Spot> spots, Func<Spot, (int String, int Fret)> motion)
    {
        var places = spots.Select(motion).ToList();
        return places.TrueForAll(place => place.Fret is >= 0 and <= 99)
            ? places.Select(place => new Spot(place.String, place.Fret)).ToValueList()
            : null;
    }

    private static int PlaceOf(Spot spot, StringSet strings)
    {
        var at = strings.Numbers.IndexOf(spot.String);
        return at >= 0
            ? at
            : throw new ArgumentException($"String {spot.String} is not among {strings}.", nameof(spot));
    }

    private static int Twice(double centre) =>
        double.IsInteger(2 * centre) && Math.Abs(centre) <= 1000
            ? (int)(2 * centre)
            : throw new ArgumentException("A centre is a whole fret or halfway between two.", nameof(centre));
}
