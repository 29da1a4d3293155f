using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>A spot that is on the neck, with what a search needs to know of it.</summary>
/// <param name="Spot">Where.</param>
/// <param name="Midi">What it sounds.</param>
/// <param name="Pressed">The fret that a finger presses; 0 for an open string, also for one that begins further up the neck.</param>
internal readonly record struct SoundingSpot(Spot Spot, int Midi, int Pressed)
{
    public PitchClass PitchClass => PitchClass.FromSemitones(Midi);
}
