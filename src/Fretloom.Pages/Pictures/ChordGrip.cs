using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>What a chord box needs to know of a shape: its first fret, and where fingers lie across the strings.</summary>
internal sealed class ChordGrip
{
    /// <summary>Frets drawn at least.</summary>
    public const int FewestFrets = 4;

    private const int FingersOfAHand = 4;

    private readonly int _shortStringStart;

    /// <summary>Works it out.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="fingering">How it is fingered; null where that is not known.</param>
    public ChordGrip(Instrument instrument, Shape shape, Fingering? fingering = null)
    {
        var fretted = shape.Spots.Where(spot => !instrument.IsOpen(spot)).ToList();
        Lowest = fretted.Select(spot => spot.Fret).DefaultIfEmpty(1).Min();
        Highest = fretted.Select(spot => spot.Fret).DefaultIfEmpty(1).Max();
        _shortStringStart = instrument.Strings.Max(course => course.StartsAtFret);
        Bars = fingering is null ? [.. Needed(instrument, shape, fretted, Lowest)] : [.. Of(fingering)];
    }

    /// <summary>The lowest fret that is not open.</summary>
    public int Lowest { get; }

    /// <summary>The highest fret.</summary>
    public int Highest { get; }

    /// <summary>
    /// Where one finger stops several strings, the lowest fret first: those of the fingering; without one, the index across the
    /// lowest fret where it must lie there.
    /// </summary>
    public ValueList<Bar> Bars { get; }

    /// <summary>The first fret of the box: 1 as long as all fits in first position, else the lowest.</summary>
    public int FirstFret => Highest <= FewestFrets ? 1 : Lowest;

    /// <summary>How many frets the box must show; from the nut, enough to see a short string begin.</summary>
    public int Frets =>
        Math.Max(
            FirstFret == 1 && _shortStringStart > 0 ? _shortStringStart + 1 : FewestFrets,
            Highest - FirstFret + 1
        );

    private static IEnumerable<Bar> Of(Fingering fingering) =>
        from note in fingering.Notes
        where note.Finger != Finger.None
        group note.Spot by (note.Finger, note.Spot.Fret) into spots
        where spots.Count() > 1
        orderby spots.Key.Fret
        select new Bar(
            spots.Key.Fret,
            spots.Max(spot => spot.String),
            spots.Min(spot => spot.String),
            spots.Key.Finger
        );

    /// <summary>
    /// The index must lie across when there are more fretted notes than fingers, two or more of them at the lowest fret, and no
    /// open string between these (common practice, no source).
    /// </summary>
    private static IEnumerable<Bar> Needed(Instrument instrument, Shape shape, List<Spot> fretted, int lowest)
    {
        var across = fretted.Where(spot => spot.Fret == lowest).Select(spot => spot.String).ToList();
        var crossesOpen = shape.Spots.Any(spot =>
            instrument.IsOpen(spot)
            && across.Exists(number => number > spot.String)
            && across.Exists(number => number < spot.String)
        );
        return fretted.Count > FingersOfAHand && across.Count > 1 && !crossesOpen
            ? [new Bar(lowest, across.Max(), across.Min(), Finger.Index)]
            : [];
    }
}

/// <summary>One finger across several strings.</summary>
/// <param name="Fret">The fret.</param>
/// <param name="Far">The string farthest from the floor that it stops.</param>
/// <param name="Near">The string nearest the floor that it stops.</param>
/// <param name="Finger">The finger.</param>
internal readonly record struct Bar(int Fret, int Far, int Near, Finger Finger);
