using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>Finds the grips of a chord on a run of strings: every string sounds, members may be doubled.</summary>
/// <param name="Reach">The spots that may be used.</param>
/// <param name="Voices">The chord.</param>
/// <param name="Lowest">What may lie lowest.</param>
/// <param name="MostFrets">The largest span.</param>
internal sealed record Grips(Reach Reach, ChordVoices Voices, PitchClassSet Lowest, int MostFrets)
{
    private NeckMap Map => Reach.Map;

    /// <summary>The spots of every grip, far string first.</summary>
    public IEnumerable<ValueList<Spot>> On(StringSet run)
    {
        var choices = run
            .Numbers.Select(number =>
                Reach.On(number).Where(spot => Voices.PitchClasses.Contains(Map.PitchClassAt(spot))).ToArray()
            )
            .ToArray();
        return Assignments
            .OneOfEach<Spot>(choices, spots => new Grip(Map.Instrument, spots).IsWithin(MostFrets))
            .Where(SoundsTheChord)
            .Where(spots => new Grip(Map.Instrument, spots.AsSpan()).Fingers <= Grip.MostFingers);
    }

    private bool SoundsTheChord(ValueList<Spot> spots)
    {
        var sounding = spots.Select(spot => Map.PitchClassAt(spot)).ToList();
        var lowest = Map.LowestOf(spots);
        return PitchClassSet.Of(sounding).Includes(Voices.Essential)
            && Lowest.Contains(lowest)
            && (!Voices.HasForeignBass || sounding.Count(pitchClass => pitchClass == lowest) == 1);
    }
}
