namespace Fretloom.Hand.Chords;

/// <summary>A finger that is down: on one string, or laid across several.</summary>
/// <param name="Finger">1 to 4.</param>
/// <param name="Fret">Its fret.</param>
/// <param name="AtMm">Millimetres from the nut to the fingertip.</param>
/// <param name="Near">Its place nearest the floor.</param>
/// <param name="Far">Its place farthest from the floor.</param>
/// <param name="Stops">How many notes it stops.</param>
internal readonly record struct LaidFinger(Finger Finger, int Fret, double AtMm, int Near, int Far, int Stops)
{
    /// <summary>Whether it lies across strings.</summary>
    public bool IsBarre => Stops > 1;

    /// <summary>How many strings it lies across, those it does not stop included.</summary>
    public int Length => Far - Near + 1;

    /// <summary>Whether it crosses the string that another finger reaches nearest the floor.</summary>
    public bool Spans(LaidFinger other) => other.Near > Near && other.Near < Far;
}

/// <summary>One way to hold a chord: a finger for each note that must be stopped.</summary>
internal sealed class ChordHold
{
    /// <summary>Puts the fingers down.</summary>
    /// <param name="chord">The chord.</param>
    /// <param name="fingers">A finger for each of its notes, in their order.</param>
    public ChordHold(HeldChord chord, Finger[] fingers)
    {
        Chord = chord;
        Fingers = fingers;
        var laid = new LaidFinger[4];
        for (var at = 0; at < fingers.Length; at++)
        {
            var note = chord.Notes[at];
            if (fingers[at] == Finger.Thumb)
            {
                Thumb = note;
                continue;
            }

            ref var finger = ref laid[(int)fingers[at] - 1];
            finger =
                finger.Stops == 0
                    ? new(fingers[at], note.Fret, note.AtMm, note.Place, note.Place, 1)
                    : finger with
                    {
                        Near = Math.Min(finger.Near, note.Place),
                        Far = Math.Max(finger.Far, note.Place),
                        Stops = finger.Stops + 1,
                    };
        }

        Laid = Array.FindAll(laid, finger => finger.Stops > 0);
    }

    /// <summary>What is held.</summary>
    public HeldChord Chord { get; }

    /// <summary>A finger for each note of the chord, in the order of <see cref="HeldChord.Notes"/>.</summary>
    public Finger[] Fingers { get; }

    /// <summary>The fingers that are down, the index first, without the thumb.</summary>
    public LaidFinger[] Laid { get; }

    /// <summary>What the thumb stops.</summary>
    public PressedNote? Thumb { get; }

    /// <summary>What stops the string at a place under the hand; none where it is open or not played.</summary>
    public Finger At(int place)
    {
        for (var at = 0; at < Fingers.Length; at++)
        {
            if (Chord.Notes[at].Place == place)
            {
                return Fingers[at];
            }
        }

        return Finger.None;
    }
}
