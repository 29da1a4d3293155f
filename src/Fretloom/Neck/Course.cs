using Fretloom.Theory;

namespace Fretloom.Neck;

/// <summary>One string of an instrument, or a pair played as one.</summary>
/// <remarks>The <c>default</c> is a single string tuned to C0.</remarks>
public readonly record struct Course
{
    /// <summary>Makes a course.</summary>
    /// <param name="open">What it sounds when open.</param>
    /// <param name="partner">What the second string of the pair sounds; null for a single string.</param>
    /// <param name="startsAtFret">The neck's fret where the string begins: 0, but 5 for the short fifth string of a banjo.</param>
    /// <exception cref="ArgumentOutOfRangeException">The starting fret is outside 0 to 12.</exception>
    public Course(Pitch open, Pitch? partner = null, int startsAtFret = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(startsAtFret);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(startsAtFret, 12);
        Open = open;
        Partner = partner;
        StartsAtFret = startsAtFret;
    }

    /// <summary>The open pitch, sounding; of a pair, the one that names the course.</summary>
    public Pitch Open { get; }

    /// <summary>The open pitch of the pair's other string, or null. A unison pair has the same pitch twice.</summary>
    public Pitch? Partner { get; }

    /// <summary>The fret, counted on the neck, at which the string begins and sounds its open pitch; 0 for most.</summary>
    public int StartsAtFret { get; }

    /// <summary>The MIDI note at a fret counted on the neck, or null below the fret where the string begins.</summary>
    public int? MidiAt(int fret) => fret < StartsAtFret ? null : Open.MidiNumber + fret - StartsAtFret;
}
