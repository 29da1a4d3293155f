using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>Finds the grips of a chord on a run of strings: every string sounds, members may be doubled.</summary>
internal sealed class Grips
{
    private readonly ChordVoices _voices;
    private readonly PitchClassSet _lowest;
    private readonly int _mostFrets;
    private readonly Dictionary<int, SoundingSpot[]> _choices;

    /// <summary>Says what is looked for.</summary>
    /// <param name="reach">The spots that may be used.</param>
    /// <param name="voices">The chord.</param>
    /// <param name="lowest">What may lie lowest.</param>
    /// <param name="mostFrets">The largest span.</param>
    public Grips(Reach reach, ChordVoices voices, PitchClassSet lowest, int mostFrets)
    {
        _voices = voices;
        _lowest = lowest;
        _mostFrets = mostFrets;
        _choices = reach.Map.Strings.Numbers.ToDictionary(number => number, number => Choices(reach, voices, number));
    }

    /// <summary>Every grip on a run.</summary>
    public IEnumerable<Grip> On(StringSet run) =>
        Assignments
            .OneOfEach<SoundingSpot>(
                [.. run.Numbers.Select(number => _choices[number])],
                places => Grip.IsWithin(_mostFrets, places)
            )
            .Select(places => new Grip(places))
            .Where(grip => SoundsTheChord(grip) && grip.IsHoldable);

    /// <summary>A short string is never pressed; it rings in every position (common practice, no source).</summary>
    private static SoundingSpot[] Choices(Reach reach, ChordVoices voices, int number) =>
        reach.Map.Instrument.String(number).StartsAtFret == 0
            ? voices.SpotsOn(reach, number)
            : [.. voices.SpotsOn(reach with { Position = null }, number).Where(spot => spot.Pressed == 0)];

    private bool SoundsTheChord(Grip grip) =>
        grip.PitchClasses.Includes(_voices.Essential)
        && _lowest.Contains(grip.Bass)
        && (!_voices.HasForeignBass || grip.CountOf(grip.Bass) == 1);
}
