namespace Fretloom.Hand.Chords;

/// <summary>
/// Every way to hold a chord: one finger stays on one fret; a higher finger is never on a lower fret; a finger laid across
/// strings crosses none that sounds open, on a lower fret, or on the same fret under another finger; the thumb stops nothing but
/// the string farthest from the floor.
/// </summary>
internal sealed class HoldEnumeration
{
    private readonly HeldChord _chord;
    private readonly bool _isOneFingerANote;
    private readonly Finger[] _fingers;
    private readonly List<ChordHold> _found = [];

    private HoldEnumeration(HeldChord chord, bool isOneFingerANote)
    {
        _chord = chord;
        _isOneFingerANote = isOneFingerANote;
        _fingers = new Finger[chord.Notes.Length];
    }

    /// <summary>All holds.</summary>
    /// <param name="chord">What is held.</param>
    /// <param name="isOneFingerANote">Whether no finger may stop two notes.</param>
    public static List<ChordHold> All(HeldChord chord, bool isOneFingerANote)
    {
        var enumeration = new HoldEnumeration(chord, isOneFingerANote);
        enumeration.Lay(0, 0, 0);
        return enumeration._found;
    }

    /// <param name="at">The note to be stopped next.</param>
    /// <param name="below">The highest finger on a lower fret; 0 for none.</param>
    /// <param name="used">The fingers that are down, a bit each.</param>
    private void Lay(int at, int below, int used)
    {
        var notes = _chord.Notes;
        if (at == notes.Length)
        {
            _found.Add(new ChordHold(_chord, [.. _fingers]));
            return;
        }

        if (at > 0 && notes[at].Fret > notes[at - 1].Fret)
        {
            below = 31 - int.LeadingZeroCount(used & 0b11110 | 1);
        }

        if (MayUseThumb(at))
        {
            _fingers[at] = Finger.Thumb;
            Lay(at + 1, below, used | 1 << (int)Finger.Thumb);
        }

        for (var finger = below + 1; finger <= 4; finger++)
        {
            if ((used & 1 << finger) == 0 || Continues(at, (Finger)finger))
            {
                _fingers[at] = (Finger)finger;
                Lay(at + 1, below, used | 1 << finger);
            }
        }
    }

    /// <summary>Whether the finger of the note before can lie on to this note.</summary>
    private bool Continues(int at, Finger finger) =>
        !_isOneFingerANote
        && _fingers[at - 1] == finger
        && (HeldChord.Between(_chord.Notes[at].Place, _chord.Notes[at - 1].Place) & _chord.Below(_chord.Notes[at].Fret))
            == 0;

    private bool MayUseThumb(int at) =>
        _chord.Player.UsesThumb && _chord.Notes[at].Place == _chord.Player.Instrument.Strings.Count;
}
