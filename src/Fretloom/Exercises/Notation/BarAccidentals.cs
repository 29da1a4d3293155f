using Fretloom.Theory;

namespace Fretloom.Exercises.Notation;

/// <summary>Which accidentals are written in one bar: those that neither the signature nor an earlier note on the same line or space says.</summary>
/// <param name="key">The key, which gives the signature.</param>
public sealed class BarAccidentals(Key key)
{
    private static readonly Step[] SharpOrder = [Step.F, Step.C, Step.G, Step.D, Step.A, Step.E, Step.B];

    private readonly int _fifths = KeySignature.Of(key);
    private readonly Dictionary<(Step Step, int Octave), int> _said = [];

    /// <summary>Whether the next note of the bar gets its accidental written. A note tied to the one before is not to be asked about.</summary>
    /// <param name="pitch">The note.</param>
    public bool IsWritten(Pitch pitch)
    {
        var place = (pitch.Name.Step, pitch.Octave);
        var valid = _said.TryGetValue(place, out var said) ? said : InSignature(pitch.Name.Step);
        _said[place] = pitch.Name.Alteration;
        return pitch.Name.Alteration != valid;
    }

    private int InSignature(Step step)
    {
        var place = Array.IndexOf(SharpOrder, step);
        return place < _fifths ? 1
            : 6 - place < -_fifths ? -1
            : 0;
    }
}
