using Fretloom.Neck;

namespace Fretloom.Scores.Sound;

/// <summary>The figures of the plucked string and the click, for a player elsewhere that is to sound the same.</summary>
/// <param name="Loudness">Root mean square of a string at the pluck; full scale is 1.</param>
/// <param name="RingsSeconds">In how many seconds a string of <paramref name="RingsAtHz"/> falls by 60 dB.</param>
/// <param name="RingsAtHz">See <paramref name="RingsSeconds"/>.</param>
/// <param name="RingsPower">The power of the ratio of frequencies by which higher strings ring shorter.</param>
/// <param name="SoftAboveHz">Where the pluck begins to lose its high partials.</param>
/// <param name="Roughness">How much noise is in the pluck, as a share of its force.</param>
/// <param name="PluckedAt">Where the string is plucked, as a share of its length from the bridge.</param>
/// <param name="HighHz">A frequency whose partials ring for <paramref name="HighSeconds"/>.</param>
/// <param name="HighSeconds">See <paramref name="HighHz"/>.</param>
/// <param name="MostKept">The most that the loop keeps from one round to the next; below 1.</param>
/// <param name="LeastDelay">The least that the allpass delays, in samples.</param>
/// <param name="AttackSeconds">How long the sound takes to come in.</param>
/// <param name="Direct">How much of the string is heard beside the body.</param>
/// <param name="Resonances">The body: middle in hertz, quality, and gain of each resonance.</param>
/// <param name="ClickSeconds">How long a click is.</param>
/// <param name="ClickFallSeconds">In what time it falls to the e-th part.</param>
/// <param name="FirstClick">Hertz and level of the first click of a bar.</param>
/// <param name="OtherClick">Hertz and level of the others.</param>
/// <param name="Accent">How much louder the first note of a bar is, as a factor.</param>
/// <param name="Spread">Where the farthest string stands, 0 the middle and 1 wholly at the side.</param>
public sealed record SoundFigures(
    double Loudness,
    double RingsSeconds,
    double RingsAtHz,
    double RingsPower,
    double SoftAboveHz,
    double Roughness,
    double PluckedAt,
    double HighHz,
    double HighSeconds,
    double MostKept,
    double LeastDelay,
    double AttackSeconds,
    double Direct,
    IReadOnlyList<IReadOnlyList<double>> Resonances,
    double ClickSeconds,
    double ClickFallSeconds,
    IReadOnlyList<double> FirstClick,
    IReadOnlyList<double> OtherClick,
    double Accent,
    double Spread
)
{
    /// <summary>The figures of an instrument.</summary>
    public static SoundFigures For(Instrument instrument)
    {
        ArgumentNullException.ThrowIfNull(instrument);
        return For(StringVoice.For(instrument));
    }

    internal static SoundFigures For(StringVoice voice) =>
        new(
            StringVoice.Loudness,
            voice.RingsAtE2,
            StringVoice.E2,
            StringVoice.RingsPower,
            voice.SoftAboveHz,
            voice.Roughness,
            voice.PluckedAt,
            PluckedString.HighHz,
            PluckedString.HighT60,
            PluckedString.MostKept,
            PluckedString.LeastDelay,
            PluckedString.AttackSeconds,
            Body.Direct,
            [.. Body.Resonances.Select(one => (double[])[one.Times * voice.BodyHz, one.Quality, one.Gain])],
            ClickSound.Seconds,
            ClickSound.FallSeconds,
            [ClickSound.First.Hz, ClickSound.First.Level],
            [ClickSound.Other.Hz, ClickSound.Other.Level],
            SoundRenderer.AccentGain,
            SoundRenderer.Spread
        );
}
