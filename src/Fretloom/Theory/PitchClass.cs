using System.Globalization;

namespace Fretloom.Theory;

/// <summary>A pitch class: 0 for C (however spelled) up to 11 for B. The <c>default</c> is C.</summary>
public readonly record struct PitchClass
{
    /// <summary>Makes a pitch class.</summary>
    /// <param name="number">0 to 11.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside 0 to 11.</exception>
    public PitchClass(int number)
    {
        if (number is < 0 or > 11)
        {
            throw new ArgumentOutOfRangeException(nameof(number), number, "A pitch class is 0 to 11.");
        }

        Number = number;
    }

    /// <summary>0 (C) to 11 (B).</summary>
    public int Number { get; }

    /// <summary>The pitch class of a MIDI note number, or of any count of semitones above a C.</summary>
    public static PitchClass FromSemitones(int semitones) => new(Modulo.Of(semitones, 12));

    /// <summary>The pitch class some semitones up, or down when negative.</summary>
    public PitchClass Plus(int semitones) => FromSemitones(Number + semitones);

    /// <summary>Semitones from this pitch class up to the next one of another, 0 to 11.</summary>
    public int SemitonesUpTo(PitchClass other) => Modulo.Of(other.Number - Number, 12);

    /// <summary>The number.</summary>
    public override string ToString() => Number.ToString(CultureInfo.InvariantCulture);
}
