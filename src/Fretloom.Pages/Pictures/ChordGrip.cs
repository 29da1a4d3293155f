using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>What a chord box needs to know of a shape: its first fret, and where a finger lies across the strings.</summary>
internal sealed class ChordGrip
{
    /// <summary>Frets drawn at least.</summary>
    public const int FewestFrets = 4;

    private const int Fingers = 4;

    private readonly int _shortStringStart;

    public ChordGrip(Instrument instrument, Shape shape)
    {
        var fretted = shape.Spots.Where(spot => !instrument.IsOpen(spot)).ToList();
        Lowest = fretted.Select(spot => spot.Fret).DefaultIfEmpty(1).Min();
        Highest = fretted.Select(spot => spot.Fret).DefaultIfEmpty(1).Max();
        var across = fretted.Where(spot => spot.Fret == Lowest).Select(spot => spot.String).ToList();
        var crossesOpen = shape.Spots.Any(spot =>
            instrument.IsOpen(spot)
            && across.Exists(number => number > spot.String)
            && across.Exists(number => number < spot.String)
        );
        _shortStringStart = instrument.Strings.Max(course => course.StartsAtFret);
        if (fretted.Count > Fingers && across.Count > 1 && !crossesOpen)
        {
            Barre = (across.Max(), across.Min());
        }
    }

    /// <summary>The lowest fret that is not open.</summary>
    public int Lowest { get; }

    /// <summary>The highest fret.</summary>
    public int Highest { get; }

    /// <summary>
    /// The strings between which the index lies across the lowest fret, far string first; null when it need not. It must
    /// when there are more fretted notes than fingers, two or more of them at the lowest fret, and no open string between
    /// these (common practice, no source).
    /// </summary>
    public (int Far, int Near)? Barre { get; }

    /// <summary>The first fret of the box: 1 as long as all fits in first position, else the lowest.</summary>
    public int FirstFret => Highest <= FewestFrets ? 1 : Lowest;

    /// <summary>How many frets the box must show; from the nut, enough to see a short string begin.</summary>
    public int Frets =>
        Math.Max(
            FirstFret == 1 && _shortStringStart > 0 ? _shortStringStart + 1 : FewestFrets,
            Highest - FirstFret + 1
        );
}
