namespace Fretloom.Theory;

/// <summary>A chord that a key builds on one of its degrees out of its own notes.</summary>
/// <param name="Degree">The degree of the root.</param>
/// <param name="Chord">The chord in root position.</param>
/// <param name="Numeral">Its Roman numeral.</param>
public sealed record DiatonicChord(Degree Degree, Chord Chord, RomanNumeral Numeral);

/// <summary>The chords that a key builds on its degrees by stacking every second note of its scale.</summary>
/// <remarks>
/// Every such stack of every seven-note <see cref="ScaleKind"/> has a <see cref="ChordQuality"/>; the tests go through all of them.
/// </remarks>
public static class DiatonicChords
{
    /// <summary>Root, third and fifth on a degree.</summary>
    /// <exception cref="ArgumentException">The degree is altered.</exception>
    public static DiatonicChord Triad(this Key key, Degree degree) => Stack(key, degree, [0, 2, 4]);

    /// <summary>The triad with the key's own sixth above the root.</summary>
    /// <exception cref="ArgumentException">The degree is altered.</exception>
    public static DiatonicChord Sixth(this Key key, Degree degree) => Stack(key, degree, [0, 2, 4, 5]);

    /// <summary>The triad with the key's seventh above the root.</summary>
    /// <exception cref="ArgumentException">The degree is altered.</exception>
    public static DiatonicChord Seventh(this Key key, Degree degree) => Stack(key, degree, [0, 2, 4, 6]);

    /// <summary>The seventh chord with the key's ninth above the root.</summary>
    /// <exception cref="ArgumentException">The degree is altered.</exception>
    public static DiatonicChord Ninth(this Key key, Degree degree) => Stack(key, degree, [0, 2, 4, 6, 8]);

    /// <summary>The seven triads, degree 1 first.</summary>
    public static ValueList<DiatonicChord> Triads(this Key key) => OnEveryDegree(key, Triad);

    /// <summary>The seven sixth chords, degree 1 first.</summary>
    public static ValueList<DiatonicChord> Sixths(this Key key) => OnEveryDegree(key, Sixth);

    /// <summary>The seven seventh chords, degree 1 first.</summary>
    public static ValueList<DiatonicChord> Sevenths(this Key key) => OnEveryDegree(key, Seventh);

    /// <summary>The seven ninth chords, degree 1 first.</summary>
    public static ValueList<DiatonicChord> Ninths(this Key key) => OnEveryDegree(key, Ninth);

    private static ValueList<DiatonicChord> OnEveryDegree(Key key, Func<Key, Degree, DiatonicChord> build) =>
        Enumerable.Range(1, 7).Select(number => build(key, new Degree(number))).ToValueList();

    private static DiatonicChord Stack(Key key, Degree degree, int[] steps)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (!degree.IsDiatonic)
        {
            throw new ArgumentException($"The key has no chord of its own on degree {degree}.", nameof(degree));
        }

        var intervals = steps.Select(step => IntervalAbove(key, degree, step)).ToValueList();
        var quality =
            ChordQuality.Of(intervals)
            ?? throw new InvalidOperationException($"No chord quality is stacked {intervals}.");
        var chord = new Chord(key.NoteOf(degree), quality);
        return new DiatonicChord(degree, chord, new RomanNumeral(degree, quality));
    }

    private static Interval IntervalAbove(Key key, Degree degree, int steps)
    {
        var scale = key.Kind.Intervals;
        var at = degree.Number - 1 + steps;
        var above = scale[at % 7].Plus(new Interval(7 * (at / 7), 12 * (at / 7)));
        return above.Plus(scale[degree.Number - 1].Negated());
    }
}
