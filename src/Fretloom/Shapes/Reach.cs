using Fretloom.Neck;

namespace Fretloom.Shapes;

/// <summary>
/// The spots that a shape may use: those of a map, and when a position is named only those in it. A position is four frets,
/// one for each finger, from the index finger's on; open strings belong to first position alone (common practice, no source).
/// </summary>
internal readonly record struct Reach(NeckMap Map, int? Position)
{
    public const int FretsInPosition = 4;

    /// <summary>The frets of a position, the open strings' with first position.</summary>
    public static FretRange FretsOf(int position) => new(position == 1 ? 0 : position, position + FretsInPosition - 1);

    public bool Allows(Spot spot) =>
        Map.Frets.Contains(spot.Fret) && Map.Instrument.Has(spot) && (Position is null || IsInPosition(spot));

    /// <summary>The spots of a string that may be used, frets ascending.</summary>
    public IEnumerable<SoundingSpot> On(int number)
    {
        foreach (var fret in Map.Frets.Frets)
        {
            var spot = new Spot(number, fret);
            if (Allows(spot))
            {
                yield return new SoundingSpot(spot, Map.SoundAt(spot), Map.Instrument.IsOpen(spot) ? 0 : fret);
            }
        }
    }

    /// <summary>Why the named position cannot be used, or null.</summary>
    public string? WhyNot() =>
        Position switch
        {
            null => null,
            < 1 => "Positions are counted from the first, at fret 1.",
            { } first when first > Map.Frets.Last || first + FretsInPosition - 1 < Map.Frets.First =>
                $"Position {first} is frets {first}-{first + FretsInPosition - 1L}; the frets looked at are {Map.Frets}.",
            _ => null,
        };

    private bool IsInPosition(Spot spot) =>
        Map.Instrument.IsOpen(spot) ? Position == 1 : spot.Fret >= Position && spot.Fret < Position + FretsInPosition;
}
