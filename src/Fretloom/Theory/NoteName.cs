using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>The name of a note without its octave: a letter and an alteration, such as B flat.</summary>
/// <remarks>
/// Two names are equal when letter and alteration are; C sharp and D flat are different names of one
/// <see cref="PitchClass"/>. The <c>default</c> is C natural. <see cref="ToString"/> writes ASCII: <c>Bb</c>, <c>F##</c>.
/// </remarks>
public readonly record struct NoteName
{
    /// <summary>The largest alteration a name can carry, in semitones either way.</summary>
    public const int MaxAlteration = 12;

    /// <summary>Names a note.</summary>
    /// <param name="step">The letter.</param>
    /// <param name="alteration">Semitones of alteration: -1 flat, 1 sharp, 2 double sharp; -12 to 12.</param>
    /// <exception cref="ArgumentOutOfRangeException">The letter or the alteration is out of range.</exception>
    public NoteName(Step step, int alteration = 0)
    {
        if (step is < Step.C or > Step.B)
        {
            throw new ArgumentOutOfRangeException(nameof(step), step, "A step is one of C to B.");
        }

        if (alteration is < -MaxAlteration or > MaxAlteration)
        {
            throw new ArgumentOutOfRangeException(
                nameof(alteration),
                alteration,
                "An alteration is -12 to 12 semitones."
            );
        }

        Step = step;
        Alteration = alteration;
    }

    /// <summary>The letter.</summary>
    public Step Step { get; }

    /// <summary>Semitones of alteration, negative for flats.</summary>
    public int Alteration { get; }

    /// <summary>The pitch class that the name sounds.</summary>
    public PitchClass PitchClass => new(Modulo.Of(Step.Semitones() + Alteration, 12));

    /// <summary>Place on the line of fifths: C 0, G 1, D 2, F -1, B flat -2.</summary>
    public int FifthsFromC => Modulo.Of((int)Step * 2 + 1, 7) - 1 + 7 * Alteration;

    /// <summary>The name at a place on the line of fifths (see <see cref="FifthsFromC"/>), -85 to 89.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The name would need more than <see cref="MaxAlteration"/> accidentals.</exception>
    public static NoteName FromFifths(int fifths) => new((Step)Modulo.Of(fifths * 4, 7), Modulo.Floor(fifths + 1, 7));

    /// <summary>The name an interval above this one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The name would need more than <see cref="MaxAlteration"/> accidentals.</exception>
    public NoteName Plus(Interval interval) => new Pitch(this, 4).Plus(interval).Name;

    /// <summary>The simple ascending interval (unison to seventh) from this name up to another.</summary>
    public Interval IntervalTo(NoteName other)
    {
        var steps = Modulo.Of(other.Step - Step, 7);
        var natural = Modulo.Of(other.Step.Semitones() - Step.Semitones(), 12);
        return new Interval(steps, natural + other.Alteration - Alteration);
    }

    /// <summary>Reads a name: a letter in either case, then accidentals (<c>#</c>, <c>b</c>, <c>x</c>, or ♯ ♭ 𝄪 𝄫 ♮).</summary>
    /// <exception cref="FormatException">The text is not a note name.</exception>
    public static NoteName Parse(string text) =>
        TryParse(text, out var name) ? name : throw new FormatException($"'{text}' is not a note name.");

    /// <summary>Reads a name if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out NoteName name)
    {
        name = default;
        if (string.IsNullOrEmpty(text) || Read(text, out name) != text.Length)
        {
            name = default;
            return false;
        }

        return true;
    }

    /// <summary>Reads the longest name that the text begins with.</summary>
    /// <param name="text">The text to read from.</param>
    /// <param name="name">The name, or the default.</param>
    /// <returns>How many characters the name takes; 0 when the text begins with none.</returns>
    public static int Read(ReadOnlySpan<char> text, out NoteName name)
    {
        name = default;
        if (text.IsEmpty)
        {
            return 0;
        }

        var letter = "CDEFGAB".IndexOf(char.ToUpperInvariant(text[0]), StringComparison.Ordinal);
        if (letter < 0)
        {
            return 0;
        }

        var length = 1 + Accidentals.Read(text[1..], out var alteration);
        name = new NoteName((Step)letter, alteration);
        return length;
    }

    /// <summary>The name in ASCII: <c>C</c>, <c>Bb</c>, <c>F##</c>.</summary>
    public override string ToString() => Step + Accidentals.Ascii(Alteration);
}
