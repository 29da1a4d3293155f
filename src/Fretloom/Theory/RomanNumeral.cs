using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>A chord named by its place in a key: degree, quality, inversion, and for a secondary chord the degree it leads to.</summary>
/// <remarks>
/// <para>
/// The numeral counts the key's own scale, as <see cref="Theory.Degree"/> does: in A minor <c>III</c> stands on C, in A harmonic minor
/// <c>VII</c> on G sharp and <c>bVII</c> on G. It is large when the third is major (or there is none), small when it is minor or diminished.
/// The suffix tells the quality and never depends on the key: <c>V7</c> is a dominant seventh everywhere, <c>ii7</c> a minor seventh,
/// no suffix a major or minor triad by the size of the letters; <c>o</c> diminished, <c>+</c> augmented, <c>ø7</c> half-diminished.
/// </para>
/// <para>
/// Figures 6 and 64 on a triad, 65, 43 and 42 (or 2) on a seventh chord are inversions, as in figured bass; the added sixth is
/// therefore written <c>Iadd6</c>. Figures alone mean what 7 would mean: <c>V65</c> a dominant seventh, <c>ii65</c> a minor seventh. Only triads
/// and seventh chords can be inverted here.
/// </para>
/// <para>
/// After a slash stands the degree that the chord leads to: <c>V7/ii</c>. Its root is counted in the major key on that degree, or, when its
/// numeral is small, in the harmonic minor key, so that <c>viio7/ii</c> stands on the leading note. Common practice, no source.
/// </para>
/// </remarks>
public sealed record RomanNumeral
{
    /// <summary>The largest alteration of a numeral, in semitones either way.</summary>
    public const int MaxAlteration = 2;

    /// <summary>Makes a numeral.</summary>
    /// <param name="degree">The degree of the root.</param>
    /// <param name="quality">The quality.</param>
    /// <param name="inversion">Which member is in the bass: 0 the root, 1 the third, 2 the fifth, 3 the seventh.</param>
    /// <param name="target">For a secondary chord, the chord it leads to: a triad in root position without a target of its own.</param>
    /// <exception cref="ArgumentOutOfRangeException">The degree is altered by more than <see cref="MaxAlteration"/>, or there is no such inversion.</exception>
    /// <exception cref="ArgumentException">The target is not a plain triad.</exception>
    public RomanNumeral(Degree degree, ChordQuality quality, int inversion = 0, RomanNumeral? target = null)
    {
        ArgumentNullException.ThrowIfNull(quality);
        if (Math.Abs(degree.Alteration) > MaxAlteration)
        {
            throw new ArgumentOutOfRangeException(
                nameof(degree),
                degree,
                "A numeral is altered by at most two semitones."
            );
        }

        if (inversion < 0 || inversion > LastInversion(quality))
        {
            throw new ArgumentOutOfRangeException(
                nameof(inversion),
                inversion,
                "Triads have inversions 0 to 2, seventh chords 0 to 3, others 0."
            );
        }

        if (target is not null && !target.IsPlainTriad)
        {
            throw new ArgumentException("A secondary chord leads to a triad in root position.", nameof(target));
        }

        Degree = degree;
        Quality = quality;
        Inversion = inversion;
        Target = target;
    }

    /// <summary>The degree of the root, in the key or, for a secondary chord, in the key of the target.</summary>
    public Degree Degree { get; }

    /// <summary>The quality.</summary>
    public ChordQuality Quality { get; }

    /// <summary>The member in the bass: 0 the root, 1 the third, 2 the fifth, 3 the seventh.</summary>
    public int Inversion { get; }

    /// <summary>What a secondary chord leads to; null for a chord of the key itself.</summary>
    public RomanNumeral? Target { get; }

    private bool IsPlainTriad => Quality.IsTriad && Inversion == 0 && Target is null;

    /// <summary>The chord that the numeral names in a key.</summary>
    public Chord InKey(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        var chord = new Chord(RootIn(key), Quality);
        return Inversion == 0 ? chord : chord.Inverted(Inversion);
    }

    /// <summary>The numeral of a chord in a key.</summary>
    /// <remarks>
    /// A bass that figures cannot tell (a foreign one, or an inversion of anything but a triad or seventh chord) is left out.
    /// A root spelled further than <see cref="MaxAlteration"/> from the scale is first respelled as the key spells it.
    /// </remarks>
    public static RomanNumeral Of(Chord chord, Key key)
    {
        ArgumentNullException.ThrowIfNull(chord);
        ArgumentNullException.ThrowIfNull(key);
        var degree = key.DegreeOf(chord.Root);
        if (Math.Abs(degree.Alteration) > MaxAlteration)
        {
            degree = key.DegreeOf(key.Spell(chord.Root.PitchClass));
        }

        var inversion = chord.Notes.IndexOf(chord.Bass);
        return new RomanNumeral(
            degree,
            chord.Quality,
            inversion > 0 && inversion <= LastInversion(chord.Quality) ? inversion : 0
        );
    }

    /// <summary>Reads a numeral: <c>ii</c>, <c>V65</c>, <c>viiø7</c>, <c>vii m7b5</c>, <c>bVII</c>, <c>V7/ii</c>. Large and small letters differ.</summary>
    /// <exception cref="FormatException">The text is not a numeral.</exception>
    public static RomanNumeral Parse(string text) =>
        TryParse(text, out var numeral)
            ? numeral
            : throw new FormatException($"'{text}' is not a Roman numeral such as V7 or viiø7.");

    /// <summary>Reads a numeral if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out RomanNumeral? numeral) =>
        RomanNumeralText.TryParse(text, out numeral);

    /// <summary>As it is printed, with Unicode accidentals: <c>♭VII</c>, <c>vii°7</c>.</summary>
    public string ToPrinted() =>
        Accidentals
            .Pretty(ToString())
            .Replace("io", "i°", StringComparison.Ordinal)
            .Replace("vo", "v°", StringComparison.Ordinal);

    /// <summary>The numeral: <c>ii</c>, <c>V7</c>, <c>viiø7</c>, <c>bVII</c>, <c>V65/ii</c>. ASCII but for the half-diminished sign.</summary>
    public override string ToString() => RomanNumeralText.Write(this);

    /// <summary>The highest inversion that figures can tell.</summary>
    internal static int LastInversion(ChordQuality quality) =>
        quality.IsTriad ? 2
        : quality.IsSeventh ? 3
        : 0;

    private NoteName RootIn(Key key)
    {
        if (Target is null)
        {
            return key.NoteOf(Degree);
        }

        var kind = Target.Quality.IsMinorThird ? ScaleKind.HarmonicMinor : ScaleKind.Major;
        var natural = Target.RootIn(key).Plus(kind.Intervals[Degree.Number - 1]);
        return new NoteName(natural.Step, natural.Alteration + Degree.Alteration);
    }
}
