using Fretloom.Neck;

namespace Fretloom.Shapes;

/// <summary>
/// The spots that a shape may use: those of a map, and when a position is named only those in it. A position is four frets,
/// one for each finger, from the index finger's on; open strings belong to first position alone (common practice, no source).
/// </summary>
internal readonly record struct Reach(NeckMap Map, int? Position)
{
    public const int FretsInPosition = 4;

    public bool Allows(Spot spot) =>
        Map.Frets.Contains(spot.Fret) && Map.Instrument.Has(spot) && (Position is null || IsInPosition(spot));

    /// <summary>The spots of a string that may be used, frets ascending.</summary>
    public IEnumerable<Spot> On(int number)
    {
        var reach = this;
        return Map.Frets.Frets.Select(fret => new Spot(number, fret)).Where(spot => reach.Allows(spot));
    }

    /// <summary>Why the named position cannot be used, or null.</summary>
    public string? WhyNot() =>
        Position switch
        {
            null => null,
            < 1 => "Positions are counted from the first, at fret 1.",
            { } first when first > Map.Frets.Last || first + FretsInPosition - 1 < Map.Frets.First =>
                $"Position {first} is frets {new FretRange(first, first + FretsInPosition - 1)}; the frets looked at are {Map.Frets}.",
            _ => null,
        };

    private bool IsInPosition(Spot spot) =>
        Map.Instrument.IsOpen(spot) ? Position == 1 : spot.Fret >= Position && spot.Fret < Position + FretsInPosition;
}
