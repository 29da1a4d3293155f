using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Fretloom.Theory;

/// <summary>A note name in an octave, such as B flat 3. Octave 4 begins at middle C; C4 is MIDI note 60.</summary>
/// <remarks>
/// The octave goes with the letter: B sharp 3 sounds like C4, C flat 4 like B3. Pitches are equal when their spelling is;
/// compare <see cref="MidiNumber"/> for equal sound. The <c>default</c> is C0. Octave numbers follow scientific pitch
/// notation; MIDI numbers follow the MIDI 1.0 note table with middle C = 60 (the octave name of 60 is this project's choice).
/// </remarks>
public readonly record struct Pitch
{
    private const int MaxOctave = 20;

    /// <summary>Names a pitch.</summary>
    /// <param name="name">Letter and alteration.</param>
    /// <param name="octave">The octave, -20 to 20; 4 holds MIDI 60.</param>
    /// <exception cref="ArgumentOutOfRangeException">The octave is outside -20 to 20.</exception>
    public Pitch(NoteName name, int octave)
    {
        if (octave is < -MaxOctave or > MaxOctave)
        {
            throw new ArgumentOutOfRangeException(nameof(octave), octave, "An octave is -20 to 20.");
        }

        Name = name;
        Octave = octave;
    }

    /// <summary>Letter and alteration.</summary>
    public NoteName Name { get; }

    /// <summary>The octave of the letter.</summary>
    public int Octave { get; }

    /// <summary>The MIDI note number, 60 for C4; for pitches beyond the MIDI range below 0 or above 127.</summary>
    public int MidiNumber => 12 * (Octave + 1) + Name.Step.Semitones() + Name.Alteration;

    /// <summary>The pitch class it sounds.</summary>
    public PitchClass PitchClass => Name.PitchClass;

    private int StepsAboveC0 => 7 * Octave + (int)Name.Step;

    /// <summary>The pitch of a given name that sounds like a MIDI note.</summary>
    /// <exception cref="ArgumentException">The name is of another pitch class than the number, or the octave beyond 20.</exception>
    public static Pitch FromMidiNumber(int midiNumber, NoteName name)
    {
        var natural = midiNumber - name.Step.Semitones() - name.Alteration;
        return Modulo.Of(natural, 12) == 0
            ? new Pitch(name, natural / 12 - 1)
            : throw new ArgumentException(
                $"{name} does not sound MIDI note {midiNumber.ToString(CultureInfo.InvariantCulture)}.",
                nameof(name)
            );
    }

    /// <summary>A MIDI note spelled with the fewest accidentals: naturals, then C# Eb F# Ab Bb (common practice, no source).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The octave would be outside -20 to 20.</exception>
    public static Pitch FromMidiNumber(int midiNumber)
    {
        // Places -4 (Ab) to 7 (C#) on the line of fifths cover each pitch class once.
        var fifths = Modulo.Of(7 * midiNumber + 4, 12) - 4;
        return FromMidiNumber(midiNumber, NoteName.FromFifths(fifths));
    }

    /// <summary>The pitch an interval above this one (below, for a descending interval).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The name would need too many accidentals, or the octave be outside -20 to 20.</exception>
    public Pitch Plus(Interval interval)
    {
        var steps = StepsAboveC0 + interval.Steps;
        var octave = Modulo.Floor(steps, 7);
        var step = (Step)Modulo.Of(steps, 7);
        var natural = 12 * (octave + 1) + step.Semitones();
        return new Pitch(new NoteName(step, MidiNumber + interval.Semitones - natural), octave);
    }

    /// <summary>The interval from this pitch to another; descending when the other is lower.</summary>
    public Interval IntervalTo(Pitch other) => new(other.StepsAboveC0 - StepsAboveC0, other.MidiNumber - MidiNumber);

    /// <summary>Reads a pitch: a note name and an octave, <c>Bb3</c>, <c>F##4</c>, <c>C-1</c>.</summary>
    /// <exception cref="FormatException">The text is not a pitch.</exception>
    public static Pitch Parse(string text) =>
        TryParse(text, out var pitch)
            ? pitch
            : throw new FormatException($"'{text}' is not a pitch such as E4 or Bb3.");

    /// <summary>Reads a pitch if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Pitch pitch)
    {
        pitch = default;
        var length = NoteName.Read(text, out var name);
        if (
            length == 0
            || !int.TryParse(
                text.AsSpan(length),
                NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture,
                out var octave
            )
            || octave is < -MaxOctave or > MaxOctave
        )
        {
            return false;
        }

        pitch = new Pitch(name, octave);
        return true;
    }

    /// <summary>The pitch in ASCII: <c>Bb3</c>.</summary>
    public override string ToString() => Name + Octave.ToString(CultureInfo.InvariantCulture);
}
