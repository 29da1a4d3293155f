using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Hand.Lines;

/// <summary>A melody at random by steps of up to a fifth, within three octaves.</summary>
internal static class Walk
{
    /// <summary>The notes, free or each on one of its spots.</summary>
    public static ValueList<LineNote> On(Instrument instrument, int count, int seed, bool isFree)
    {
        var random = new Random(seed);
        var lowest = instrument.OpenPitches.Min(pitch => pitch.MidiNumber);
        var midi = lowest + 12;
        var notes = new List<LineNote>();
        while (notes.Count < count)
        {
            var next = midi + random.Next(-7, 8);
            var spots = instrument.SpotsOf(next).ToList();
            if (spots.Count > 0 && next <= lowest + 36)
            {
                midi = next;
                notes.Add(
                    isFree
                        ? new LineNote.Sounding(Pitch.FromMidiNumber(midi))
                        : new LineNote.At(spots[random.Next(spots.Count)])
                );
            }
        }

        return notes.ToValueList();
    }
}
