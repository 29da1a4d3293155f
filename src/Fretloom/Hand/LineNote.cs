using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Hand;

/// <summary>A note of a line, which is played one note after another.</summary>
public abstract record LineNote
{
    private LineNote() { }

    /// <summary>A note whose place is given; only the finger is chosen.</summary>
    /// <param name="Spot">Where it is played. Text: <c>4:9</c>.</param>
    public sealed record At(Spot Spot) : LineNote
    {
        /// <inheritdoc/>
        public override string ToString() => Spot.ToString();
    }

    /// <summary>A note that may be played wherever it sounds: string, fret and finger are chosen.</summary>
    /// <param name="Pitch">What sounds. Text: <c>Bb3</c>.</param>
    public sealed record Sounding(Pitch Pitch) : LineNote
    {
        /// <inheritdoc/>
        public override string ToString() => Pitch.ToString();
    }
}
