using Fretloom.Neck;

namespace Fretloom.Shapes;

/// <summary>What a shape looks like, wherever it lies: which strings and frets it takes, counted from its own corner.</summary>
/// <remarks>
/// Two shapes have the same form when one is the other moved along the frets, carried to another string set, or both. Strings
/// are counted by their place in the string set, so that a shape can be carried from strings 4-1 to strings 6, 4, 3 and 2.
/// Fret 0 counts like any other. The <c>default</c> is the form of no spot at all.
/// </remarks>
public readonly record struct ShapeForm
{
    private ShapeForm(IEnumerable<(int Across, int Along)> places)
    {
        var all = places.ToArray();
        var across = all.Min(place => place.Across);
        var along = all.Min(place => place.Along);
        Places = all.Select(place => (place.Across - across, place.Along - along)).Order().ToValueList();
    }

    /// <summary>
    /// Strings from the farthest one used (0) toward the floor, and frets above the lowest one used (0); far string first,
    /// frets ascending on one string.
    /// </summary>
    public ValueList<(int Across, int Along)> Places { get; }

    /// <summary>The form of some spots.</summary>
    /// <param name="strings">The string set that the spots are looked at on.</param>
    /// <param name="spots">At least one, all on those strings, in any order.</param>
    /// <exception cref="ArgumentException">There is no spot, or one lies on a string outside the set.</exception>
    public static ShapeForm Of(StringSet strings, IEnumerable<Spot> spots)
    {
        var places = spots.Select(spot => (Across: strings.Numbers.IndexOf(spot.String), Along: spot.Fret)).ToArray();
        return places.Length > 0 && places.All(place => place.Across >= 0)
            ? new ShapeForm(places)
            : throw new ArgumentException(
                "A form has at least one spot, all on the strings of the set.",
                nameof(spots)
            );
    }

    /// <summary>The form of one note a string.</summary>
    /// <param name="frets">The fret on each string, far string first; only their differences matter, so they may be negative.</param>
    /// <exception cref="ArgumentException">There is no fret.</exception>
    public static ShapeForm OneNotePerString(IEnumerable<int> frets)
    {
        var places = frets.Select((fret, at) => (Across: at, Along: fret)).ToArray();
        return places.Length > 0
            ? new ShapeForm(places)
            : throw new ArgumentException("A form has at least one spot.", nameof(frets));
    }

    /// <summary>Turned upside down: strings and frets both read backwards.</summary>
    public ShapeForm HalfTurned() => Changed(place => (-place.Across, -place.Along));

    /// <summary>Frets read backwards, strings kept.</summary>
    public ShapeForm Mirrored() => Changed(place => (place.Across, -place.Along));

    /// <summary>The places, each as string and fret: <c>0:3 1:2 2:0</c>.</summary>
    public override string ToString() =>
        string.Join(' ', Places.Select(place => FormattableString.Invariant($"{place.Across}:{place.Along}")));

    private ShapeForm Changed(Func<(int Across, int Along), (int, int)> change) =>
        Places.Count == 0 ? this : new ShapeForm(Places.Select(change));
}
