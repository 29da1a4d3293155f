using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>What a shape sounds: a chord, perhaps with its Roman numeral, or a scale.</summary>
public abstract record ShapeSource
{
    private ShapeSource() { }

    /// <summary>A chord symbol (<c>Bm7b5</c>) or the name of a scale (<c>A minor pentatonic</c>), in ASCII.</summary>
    public abstract string Name { get; }

    /// <summary>A chord; the numeral is null when the chord was asked for by its symbol.</summary>
    public sealed record OfChord(Chord Chord, RomanNumeral? Roman) : ShapeSource
    {
        /// <inheritdoc/>
        public override string Name => Chord.ToString();
    }

    /// <summary>A stretch of scale.</summary>
    public sealed record OfScale(Scale Scale) : ShapeSource
    {
        /// <inheritdoc/>
        public override string Name => Scale.ToString();
    }
}
