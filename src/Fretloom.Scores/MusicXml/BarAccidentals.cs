using Fretloom.Theory;

namespace Fretloom.Scores.MusicXml;

/// <summary>Which accidentals are written in a bar: those that neither the signature nor an earlier note of the same line says.</summary>
internal sealed class BarAccidentals
{
    private static readonly Step[] SharpOrder = [Step.F, Step.C, Step.G, Step.D, Step.A, Step.E, Step.B];

    private readonly Dictionary<(Step Step, int Octave), int> _said = [];
    private int _fifths;

    /// <summary>Begins a bar in a key.</summary>
    public void Begin(Key key)
    {
        _fifths = KeySignature.Of(key);
        _said.Clear();
    }

    /// <summary>The accidental to write before a note, by its name in MusicXML; null for none.</summary>
    public string? Shown(Pitch pitch)
    {
        var place = (pitch.Name.Step, pitch.Octave);
        var valid = _said.TryGetValue(place, out var said) ? said : InSignature(pitch.Name.Step);
        _said[place] = pitch.Name.Alteration;
        return pitch.Name.Alteration == valid
            ? null
            : pitch.Name.Alteration switch
            {
                0 => "natural",
                1 => "sharp",
                -1 => "flat",
                2 => "double-sharp",
                -2 => "flat-flat",
                3 => "triple-sharp",
                -3 => "triple-flat",
                _ => null,
            };
    }

    private int InSignature(Step step)
    {
        var place = Array.IndexOf(SharpOrder, step);
        return place < _fifths ? 1
            : 6 - place < -_fifths ? -1
            : 0;
    }
}
