using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>A key: a tonic and a seven-note scale, which together spell every note.</summary>
public sealed record Key
{
    /// <summary>Makes a key.</summary>
    /// <exception cref="ArgumentException">The kind of scale has not seven notes.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tonic is altered by more than <see cref="Scale.MaxTonicAlteration"/>.</exception>
    public Key(NoteName tonic, ScaleKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        if (!kind.IsSevenNote)
        {
            throw new ArgumentException($"A key has seven notes; {kind} has {kind.Intervals.Count}.", nameof(kind));
        }

        Scale = new Scale(tonic, kind);
    }

    /// <summary>The scale of the key.</summary>
    public Scale Scale { get; }

    /// <summary>Degree 1.</summary>
    public NoteName Tonic => Scale.Tonic;

    /// <summary>The kind of scale.</summary>
    public ScaleKind Kind => Scale.Kind;

    /// <summary>The seven notes from the tonic up; item 0 is degree 1.</summary>
    public ValueList<NoteName> Notes => Scale.Notes;

    /// <summary>The pitch classes of the seven notes.</summary>
    public PitchClassSet PitchClasses => Scale.PitchClasses;

    /// <summary>The note of a degree, altered as the degree says.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The note would need more than <see cref="NoteName.MaxAlteration"/> accidentals.</exception>
    public NoteName NoteOf(Degree degree)
    {
        var note = Notes[degree.Number - 1];
        return new NoteName(note.Step, note.Alteration + degree.Alteration);
    }

    /// <summary>The degree a spelled note has: its letter gives the number, the difference from the scale the alteration.</summary>
    public Degree DegreeOf(NoteName note)
    {
        var number = Modulo.Of(note.Step - Tonic.Step, 7) + 1;
        return new Degree(number, note.Alteration - Notes[number - 1].Alteration);
    }

    /// <summary>
    /// The name a pitch class takes in this key: the scale's own, else that of the harmonic chromatic scale on the tonic
    /// (b2, b3, 3, #4, b6, 6, b7, 7 against the major scale; common practice, no source).
    /// </summary>
    public NoteName Spell(PitchClass pitchClass)
    {
        foreach (var note in Notes)
        {
            if (note.PitchClass == pitchClass)
            {
                return note;
            }
        }

        // The harmonic chromatic scale runs from b2 (five fifths below the tonic) to #4 (six above).
        var fifths = Modulo.Of(7 * Tonic.PitchClass.SemitonesUpTo(pitchClass) + 5, 12) - 5;
        return NoteName.FromFifths(Tonic.FifthsFromC + fifths);
    }

    /// <summary>The pitch a MIDI note takes in this key, spelled by <see cref="Spell"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The octave would be outside -20 to 20.</exception>
    public Pitch SpellMidi(int midiNumber) =>
        Pitch.FromMidiNumber(midiNumber, Spell(PitchClass.FromSemitones(midiNumber)));

    /// <summary>The key of the same kind on another tonic.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The tonic is altered by more than <see cref="Scale.MaxTonicAlteration"/>.</exception>
    public Key On(NoteName tonic) => new(tonic, Kind);

    /// <summary>Reads a key: a tonic (<c>Bb</c>, <c>B-flat</c>) and a kind (<c>major</c>, <c>minor</c>, <c>harmonic minor</c>, <c>dorian</c>).</summary>
    /// <exception cref="FormatException">The text is not a key.</exception>
    public static Key Parse(string text) =>
        TryParse(text, out var key) ? key : throw new FormatException($"'{text}' is not a key such as D major.");

    /// <summary>Reads a key if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out Key? key)
    {
        key = Scale.TryParse(text, out var scale) && scale.Kind.IsSevenNote ? new Key(scale.Tonic, scale.Kind) : null;
        return key is not null;
    }

    /// <summary>Tonic and kind: <c>D major</c>, <c>F# harmonic minor</c>.</summary>
    public override string ToString() => Scale.ToString();
}
