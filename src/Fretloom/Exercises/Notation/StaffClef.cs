using Fretloom.Neck;

namespace Fretloom.Exercises.Notation;

/// <summary>The clef of the notation staff.</summary>
/// <param name="Sign">G or F.</param>
/// <param name="Line">The line it names, from below.</param>
/// <param name="OctaveChange">Octaves that sound above the written note; -1 for a guitar, which sounds an octave lower.</param>
public sealed record StaffClef(char Sign, int Line, int OctaveChange)
{
    private const int LowestOfTreble = 52;

    /// <summary>
    /// The bass clef for a bass, the treble clef for the rest; written an octave higher than it sounds where the lowest string sounds
    /// below E3 without a capo. So a guitar keeps its clef however many strings it has and however low they are tuned. Common
    /// practice, no source.
    /// </summary>
    public static StaffClef For(Instrument instrument)
    {
        ArgumentNullException.ThrowIfNull(instrument);
        return instrument.IsBass ? new('F', 4, -1)
            : instrument.WithCapo(0).OpenPitches.Min(pitch => pitch.MidiNumber) < LowestOfTreble ? new('G', 2, -1)
            : new('G', 2, 0);
    }
}
