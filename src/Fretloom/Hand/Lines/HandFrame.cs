using Fretloom.Neck;

namespace Fretloom.Hand.Lines;

/// <summary>Where the fingers of a hand are at home in each position of an instrument.</summary>
/// <remarks>
/// A position is the fret where the index finger is at home. As a rule one finger is at home at each fret; where frets are
/// wider than a finger's place can be, as low on a bass, the places are narrower than the frets, and high up they are wider.
/// Instruments tuned in fifths that are short enough are fingered like a violin, two frets to a finger: four fingers must
/// cover the six frets between one open string and the next (common practice, no source).
/// </remarks>
internal sealed class HandFrame
{
    private const int FifthSemitones = 7;

    private readonly double[] _landing;
    private readonly double[] _unit;
    private readonly double[,] _from;
    private readonly double[,] _to;

    public HandFrame(Player player, LineWeights weights)
    {
        var instrument = player.Instrument;
        var scale = player.Hand.Scale;
        LastFret = instrument.LastFret;
        var fretsPerFinger = IsFingeredInSteps(player, weights) ? 2 : 1;
        _landing = [.. Enumerable.Range(0, LastFret + 4 * fretsPerFinger + 1).Select(instrument.LandingMm)];
        _unit = new double[LastFret + 1];
        _from = new double[LastFret + 1, 5];
        _to = new double[LastFret + 1, 5];
        for (var position = 1; position <= LastFret; position++)
        {
            _unit[position] = Math.Clamp(
                instrument.FretMm(position) - instrument.FretMm(position - 1),
                weights.NarrowestMm * scale,
                weights.WidestMm * scale
            );
            for (var finger = 1; finger <= 4; finger++)
            {
                var frets = fretsPerFinger * (finger - 1);
                _from[position, finger] = Math.Clamp(
                    LandingMm(position + frets) - LandingMm(position),
                    frets * weights.NarrowestMm * scale,
                    frets * weights.WidestMm * scale
                );
                _to[position, finger] =
                    _from[position, finger]
                    + LandingMm(position + frets + fretsPerFinger - 1)
                    - LandingMm(position + frets);
            }
        }
    }

    /// <summary>The last fret of the neck, which is the last position too.</summary>
    public int LastFret { get; }

    /// <summary>Where a fingertip lands, in millimetres from the nut.</summary>
    public double LandingMm(int fret) => _landing[fret];

    /// <summary>The width of a finger's place in a position, in millimetres.</summary>
    public double UnitMm(int position) => _unit[position];

    /// <summary>Where a finger's home begins and ends, in millimetres from where the index lands.</summary>
    public (double FromMm, double ToMm) Home(int position, Finger finger) =>
        (_from[position, (int)finger], _to[position, (int)finger]);

    private static bool IsFingeredInSteps(Player player, LineWeights weights)
    {
        var whole = player.Instrument.Strings.Where(course => course.StartsAtFret == 0).ToList();
        var gaps = whole.Zip(whole.Skip(1), (one, other) => Math.Abs(one.Open.MidiNumber - other.Open.MidiNumber));
        var span = player.Instrument.LandingMm(FifthSemitones) - player.Instrument.LandingMm(2);
        return whole.Count > 1
            && gaps.All(gap => gap >= FifthSemitones)
            && span <= weights.MostForSteps * player.Hand.ComfortableMm(Finger.Index, Finger.Little);
    }
}
