using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>
/// The places along a neck, counted in half frets: classes of twenty-four on the endless neck, mere numbers in a window.
/// A set of places is a list, ascending, each once.
/// </summary>
internal sealed class NeckLine(FretRange? window)
{
    private const int Octave = 24;

    /// <summary>Null for the endless neck.</summary>
    public FretRange? Window => window;

    /// <summary>Whole frets, ascending; 0 to 11 on the endless neck.</summary>
    public IEnumerable<int> Frets => window?.Frets ?? Enumerable.Range(0, 12);

    /// <summary>Every place looked at, in half frets.</summary>
    public IEnumerable<int> HalfFrets =>
        window is { } range
            ? Enumerable.Range(2 * range.First, 2 * (range.Last - range.First) + 1)
            : Enumerable.Range(0, Octave);

    public int Normal(int halfFret) => window is null ? Modulo.Of(halfFret, Octave) : halfFret;

    public ValueList<int> Set(IEnumerable<int> halfFrets) => halfFrets.Select(Normal).Distinct().Order().ToValueList();

    public ValueList<int> Moved(ValueList<int> set, int frets) => Set(set.Select(place => place + 2 * frets));

    /// <summary>Turned about a place, in half frets.</summary>
    public ValueList<int> Turned(ValueList<int> set, int centre) => Set(set.Select(place => 2 * centre - place));

    /// <summary>How often a shape that lies at some frets is seen: by how many octaves to move it to each place where it lies in the window.</summary>
    /// <param name="lowest">Its lowest fret.</param>
    /// <param name="highest">Its highest.</param>
    /// <returns>Ascending; on the endless neck the one that brings the lowest fret to 0 to 11.</returns>
    public IEnumerable<int> Octaves(int lowest, int highest)
    {
        if (window is not { } range)
        {
            return [-Modulo.Floor(lowest, 12)];
        }

        var first = -Modulo.Floor(lowest - range.First, 12);
        return Enumerable.Range(first, 10).Where(octave => highest + 12 * octave <= range.Last);
    }
}
