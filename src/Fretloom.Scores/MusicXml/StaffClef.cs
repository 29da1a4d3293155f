using Fretloom.Neck;

namespace Fretloom.Scores.MusicXml;

/// <summary>The clef of the notation staff.</summary>
/// <param name="Sign">G or F.</param>
/// <param name="Line">The line it names, from below.</param>
/// <param name="OctaveChange">Octaves that sound above the written note; -1 for a guitar, which sounds an octave lower.</param>
internal sealed record StaffClef(string Sign, int Line, int OctaveChange)
{
    private const int LowestOfBass = 36;
    private const int LowestOfTreble = 52;

    /// <summary>
    /// The bass clef for what reaches below C2, the treble clef for the rest, both written an octave higher than they sound where the lowest string
    /// sounds below E3 or the neck is a banjo's. Common practice, no source.
    /// </summary>
    public static StaffClef For(Instrument instrument)
    {
        var lowest = instrument.OpenPitches.Min(pitch => pitch.MidiNumber);
        return lowest < LowestOfBass ? new("F", 4, -1)
            : lowest < LowestOfTreble ? new("G", 2, -1)
            : new("G", 2, 0);
    }

    /// <summary>Writes it.</summary>
    public void Write(Elements xml) =>
        xml.Within(
            "clef",
            () =>
            {
                xml.Leaf("sign", Sign);
                xml.Leaf("line", Line);
                if (OctaveChange != 0)
                {
                    xml.Leaf("clef-octave-change", OctaveChange);
                }
            },
            ("number", 1)
        );
}
