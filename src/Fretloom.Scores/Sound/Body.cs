namespace Fretloom.Scores.Sound;

/// <summary>The body of an instrument: three resonances, air, top and back, added to what the strings give.</summary>
/// <remarks>Their places and strengths are set by ear, without source.</remarks>
internal sealed class Body(StringVoice voice, int rate)
{
    private const double Direct = 0.75;

    private readonly Resonator _air = new(voice.BodyHz, 6, rate);
    private readonly Resonator _top = new(1.9 * voice.BodyHz, 8, rate);
    private readonly Resonator _back = new(3.8 * voice.BodyHz, 6, rate);

    /// <summary>The next sample.</summary>
    public double Next(double sample) =>
        Direct * sample + 0.6 * _air.Next(sample) + 0.5 * _top.Next(sample) + 0.3 * _back.Next(sample);
}
