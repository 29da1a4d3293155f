namespace Fretloom.Scores.Sound;

/// <summary>The body of an instrument: three resonances, air, top and back, added to what the strings give.</summary>
/// <remarks>Their places and strengths are set by ear, without source.</remarks>
internal sealed class Body(StringVoice voice, int rate)
{
    /// <summary>How much of the string is heard beside the body.</summary>
    public const double Direct = 0.75;

    /// <summary>Air, top and back: the middle as a multiple of the lowest resonance, quality, gain.</summary>
    public static readonly (double Times, double Quality, double Gain)[] Resonances =
    [
        (1, 6, 0.6),
        (1.9, 8, 0.5),
        (3.8, 6, 0.3),
    ];

    private readonly Resonator _air = ResonatorAt(0, voice, rate);
    private readonly Resonator _top = ResonatorAt(1, voice, rate);
    private readonly Resonator _back = ResonatorAt(2, voice, rate);

    /// <summary>The next sample.</summary>
    public double Next(double sample) =>
        Direct * sample
        + Resonances[0].Gain * _air.Next(sample)
        + Resonances[1].Gain * _top.Next(sample)
        + Resonances[2].Gain * _back.Next(sample);

    private static Resonator ResonatorAt(int place, StringVoice voice, int rate) =>
        new(Resonances[place].Times * voice.BodyHz, Resonances[place].Quality, rate);
}
