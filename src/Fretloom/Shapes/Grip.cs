using Fretloom.Neck;

namespace Fretloom.Shapes;

/// <summary>One note on each string of a run of neighbours, all held at once, as the fretting hand finds it.</summary>
/// <remarks>
/// The counts are simple and necessary, not sufficient: which finger goes where, and whether a hand of a given size reaches,
/// is worked out elsewhere. Common practice, no source.
/// </remarks>
internal sealed class Grip
{
    public const int MostFingers = 4;

    /// <summary>Open strings join fretted ones that lie no higher than this: where first position ends.</summary>
    public const int HighestWithOpenStrings = Reach.FretsInPosition;

    private readonly int[] _frets;

    /// <summary>Makes a grip.</summary>
    /// <param name="instrument">Where it lies.</param>
    /// <param name="spots">From string to neighbouring string.</param>
    public Grip(Instrument instrument, ReadOnlySpan<Spot> spots)
    {
        _frets = new int[spots.Length];
        for (var at = 0; at < spots.Length; at++)
        {
            _frets[at] = instrument.IsOpen(spots[at]) ? 0 : spots[at].Fret;
        }

        Lowest = _frets.Where(fret => fret > 0).DefaultIfEmpty().Min();
        Highest = _frets.Max();
    }

    /// <summary>The lowest fret that is pressed; 0 when all strings are open.</summary>
    public int Lowest { get; }

    /// <summary>The highest fret that is pressed; 0 when all strings are open.</summary>
    public int Highest { get; }

    /// <summary>Frets covered, inclusively, open strings left out.</summary>
    public int Span => Highest == 0 ? 0 : Highest - Lowest + 1;

    /// <summary>The lowest position whose four frets reach it; 1 for everything that first position reaches.</summary>
    public int Position => Math.Max(1, Highest - Reach.FretsInPosition + 1);

    /// <summary>Whether it covers no more frets than asked, and has open strings only in first position.</summary>
    public bool IsWithin(int span) => Span <= span && (Highest <= HighestWithOpenStrings || !_frets.Contains(0));

    /// <summary>
    /// Fingers that press: one for each note, but one index finger laid across for all notes at the lowest fret unless an open
    /// string lies between them.
    /// </summary>
    public int Fingers
    {
        get
        {
            var pressed = _frets.Count(fret => fret > 0);
            var atLowest = _frets.Count(fret => fret > 0 && fret == Lowest);
            return atLowest > 1 && IsBarrePossible() ? pressed - atLowest + 1 : pressed;
        }
    }

    /// <summary>Open strings that ring between two pressed neighbours, which both fingers have to keep clear of.</summary>
    public int TrappedOpenStrings
    {
        get
        {
            var count = 0;
            for (var at = 1; at < _frets.Length - 1; at++)
            {
                count += _frets[at] == 0 && _frets[at - 1] > 0 && _frets[at + 1] > 0 ? 1 : 0;
            }

            return count;
        }
    }

    /// <summary>How far the frets go up and down from string to string, all told: 2 for 2-2-1-2.</summary>
    public int UpsAndDowns => _frets.Zip(_frets.Skip(1), (one, next) => Math.Abs(next - one)).Sum();

    private bool IsBarrePossible()
    {
        var first = Array.IndexOf(_frets, Lowest);
        var last = Array.LastIndexOf(_frets, Lowest);
        return !_frets.AsSpan(first, last - first).Contains(0);
    }
}
