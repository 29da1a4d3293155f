using Fretloom.Exercises;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Scores.MusicXml;

/// <summary>Writes the box of a chord that is held, with the fingers that hold it.</summary>
internal sealed class FrameElements(Elements xml, Exercise exercise)
{
    private const int LeastFrets = 4;

    private Instrument Instrument => exercise.Instrument;

    /// <summary>Writes the box; none where a short string is stopped, whose frets a box counts from another place than the others'.</summary>
    public void Write(ChordMark mark, Shape shape)
    {
        if (shape.Spots.Any(IsStoppedShort))
        {
            return;
        }

        var pressed = shape
            .Spots.Where(spot => !Instrument.IsOpen(spot))
            .Select(spot => spot.Fret)
            .DefaultIfEmpty(1)
            .ToList();
        var first = pressed.Max() <= LeastFrets ? 1 : pressed.Min();
        var fingers = FingersOf(mark, shape);
        xml.Within(
            "frame",
            () =>
            {
                xml.Leaf("frame-strings", Instrument.Strings.Count);
                xml.Leaf("frame-frets", Math.Max(LeastFrets, pressed.Max() - first + 1));
                if (first > 1)
                {
                    xml.Leaf("first-fret", first);
                }

                foreach (var spot in shape.Spots)
                {
                    xml.Within("frame-note", () => Note(spot, fingers));
                }
            }
        );
    }

    private void Note(Spot spot, Dictionary<Spot, Finger> fingers)
    {
        xml.Leaf("string", spot.String);
        xml.Leaf("fret", spot.Fret - Instrument.String(spot.String).StartsAtFret);
        if (!fingers.TryGetValue(spot, out var finger))
        {
            return;
        }

        xml.Leaf("fingering", finger.ToLabel());
        var laid = fingers.Where(other => other.Value == finger).Select(other => other.Key.String).ToList();
        if (laid.Count > 1 && (spot.String == laid.Max() || spot.String == laid.Min()))
        {
            xml.Empty("barre", ("type", spot.String == laid.Max() ? "start" : "stop"));
        }
    }

    // A chord is held until the next one begins; not every string of it need sound.
    private Dictionary<Spot, Finger> FingersOf(ChordMark mark, Shape shape)
    {
        var next = exercise.Chords.IndexOf(mark) + 1;
        var end = next < exercise.Chords.Count ? exercise.Chords[next].At : exercise.Length;
        return exercise
            .NotesIn(mark.At, end)
            .Where(note => note.Finger != Finger.None && shape.Spots.Contains(note.Note.Spot))
            .DistinctBy(note => note.Note.Spot)
            .ToDictionary(note => note.Note.Spot, note => note.Finger);
    }

    private bool IsStoppedShort(Spot spot) =>
        Instrument.String(spot.String).StartsAtFret > 0 && !Instrument.IsOpen(spot);
}
