using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Claims;

/// <summary>Chords of the key by how many notes they have and how they are built.</summary>
public enum ShapeFamily
{
    /// <summary>Two notes, a third apart in the key.</summary>
    Third,

    /// <summary>Three.</summary>
    Triad,

    /// <summary>Four: a triad with the key's seventh.</summary>
    Seventh,

    /// <summary>Four: a triad with the key's sixth.</summary>
    Sixth,

    /// <summary>Two notes, a sixth apart in the key.</summary>
    TwoNoteSixth,

    /// <summary>Two notes, an octave apart.</summary>
    Octave,

    /// <summary>Two notes, a third and an octave apart in the key.</summary>
    Tenth,
}

/// <summary>How the members of a shape lie: <c>in drop 2</c>, <c>in first inversion</c>. The <c>default</c> is close root position.</summary>
public readonly record struct ShapeVoicing
{
    private const int LastInversion = 6;

    /// <summary>Makes a voicing.</summary>
    /// <param name="arrangement">One order: any order would be many shapes.</param>
    /// <param name="inversion">Which member sounds lowest, 0 for the root, to 6.</param>
    /// <exception cref="ArgumentOutOfRangeException">The arrangement is any order, or the inversion is out of range.</exception>
    public ShapeVoicing(Arrangement arrangement = Arrangement.Close, int inversion = 0)
    {
        ArgumentOutOfRangeException.ThrowIfEqual(arrangement, Arrangement.AnyOrder);
        ArgumentOutOfRangeException.ThrowIfNegative(inversion);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(inversion, LastInversion);
        (Arrangement, Inversion) = (arrangement, inversion);
    }

    /// <summary>In which order the members lie.</summary>
    public Arrangement Arrangement { get; }

    /// <summary>Which member sounds lowest, 0 for the root.</summary>
    public int Inversion { get; }
}

/// <summary>Shapes of chords, one note per string, in root position and close position unless said.</summary>
/// <param name="Voicing">How the members lie.</param>
/// <param name="Of">On which strings; null for those the sentence chose.</param>
public abstract record ShapeSet(ShapeVoicing Voicing, OtherStrings? Of)
{
    /// <summary>How many notes each shape has, and so how many strings it takes.</summary>
    public int Notes =>
        this switch
        {
            Several several => NotesOf(several.Family),
            OnDegree onDegree => NotesOf(onDegree.Family),
            OfQuality ofQuality => ofQuality.Quality.Semitones.Count,
            ByNumeral byNumeral => byNumeral.Numeral.Quality.MemberCount,
            _ => throw new NotSupportedException(),
        };

    /// <summary>Whether a member lies an octave or more above the root, as a ninth does: dropping a voice by an octave may then leave another lowest.</summary>
    internal bool IsWide =>
        this is ByNumeral { Numeral.Quality.Intervals: var members } && members.Any(member => member.Semitones >= 12);

    /// <summary><c>every seventh shape</c>, <c>exactly 2 of the triad shapes of strings 3-1</c>.</summary>
    /// <param name="Quantity">How many.</param>
    /// <param name="Family">Which chords.</param>
    /// <param name="Voicing">How the members lie.</param>
    /// <param name="Of">On which strings.</param>
    public sealed record Several(
        Quantity Quantity,
        ShapeFamily Family,
        ShapeVoicing Voicing = default,
        OtherStrings? Of = null
    ) : ShapeSet(Voicing, Of);

    /// <summary><c>the seventh shape on degree 5</c>.</summary>
    /// <param name="Family">Which chord.</param>
    /// <param name="Degree">Of its root, 1 to 7.</param>
    /// <param name="Voicing">How the members lie.</param>
    /// <param name="Of">On which strings.</param>
    public sealed record OnDegree(
        ShapeFamily Family,
        int Degree,
        ShapeVoicing Voicing = default,
        OtherStrings? Of = null
    ) : ShapeSet(Voicing, Of)
    {
        /// <summary>Of its root, 1 to 7.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is no degree.</exception>
        public int Degree { get; } = Require.Degree(Degree);
    }

    /// <summary><c>the dominant seventh shape</c>: a form, whatever its root.</summary>
    /// <param name="Quality">Which.</param>
    /// <param name="Voicing">How the members lie.</param>
    /// <param name="Of">On which strings.</param>
    public sealed record OfQuality(ShapeQuality Quality, ShapeVoicing Voicing = default, OtherStrings? Of = null)
        : ShapeSet(Voicing, Of);

    /// <summary><c>the V7 shape</c>; <c>the V65 shape</c> is <c>the V7 shape in first inversion</c>.</summary>
    /// <param name="Numeral">The chord, in the key, in root position: <paramref name="Voicing"/> holds the inversion.</param>
    /// <param name="Voicing">How the members lie.</param>
    /// <param name="Of">On which strings.</param>
    public sealed record ByNumeral(RomanNumeral Numeral, ShapeVoicing Voicing = default, OtherStrings? Of = null)
        : ShapeSet(Voicing, Of);

    private static int NotesOf(ShapeFamily family) =>
        family switch
        {
            ShapeFamily.Triad => 3,
            ShapeFamily.Seventh or ShapeFamily.Sixth => 4,
            _ => 2,
        };
}
