namespace Fretloom.Scores.Sound;

/// <summary>The body of an instrument: three resonances, air, top and back, added to what the strings give.</summary>
/// <remarks>Their places and strengths are set by ear, without source.</remarks>
internal sealed class Body(StringVoice voice, int rate)
{
    private const double Direct = 0.75;

    private readonly (double Gain, Resonator Of)[] _parts =
    [
        (0.6, new(voice.BodyHz, 6, rate)),
        (0.5, new(voice.BodyHz * 1.9, 8, rate)),
        (0.3, new(voice.BodyHz * 3.8, 6, rate)),
    ];

    /// <summary>The next sample.</summary>
    public double Next(double sample)
    {
        var sum = Direct * sample;
        foreach (var (gain, part) in _parts)
        {
            sum += gain * part.Next(sample);
        }

        return sum;
    }
}
