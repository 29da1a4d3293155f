namespace Fretloom.Claims;

/// <summary>What is said of a shape.</summary>
public abstract record ShapePredicate
{
    private ShapePredicate() { }

    /// <summary><c>spans at most 5 frets</c>, counted inclusively; fret 0 counts like any other.</summary>
    /// <param name="Frets">How many.</param>
    public sealed record Spans(Count Frets) : ShapePredicate;

    /// <summary><c>stretches at most 90 mm</c>: wherever it lies in the window. Needs a window.</summary>
    /// <param name="Millimetres">How far.</param>
    public sealed record Stretches(Count Millimetres) : ShapePredicate;

    /// <summary><c>is its own half-turn</c>.</summary>
    public sealed record IsOwnHalfTurn : ShapePredicate;

    /// <summary><c>is its own mirror</c>.</summary>
    public sealed record IsOwnMirror : ShapePredicate;

    /// <summary><c>is the half-turn of</c>, wherever they lie.</summary>
    /// <param name="Shapes">The other.</param>
    public sealed record IsHalfTurnOf(ShapeSet Shapes) : ShapePredicate;

    /// <summary><c>is the mirror of</c>.</summary>
    /// <param name="Shapes">The other.</param>
    public sealed record IsMirrorOf(ShapeSet Shapes) : ShapePredicate;

    /// <summary><c>has the same form as</c>.</summary>
    /// <param name="Shapes">The other.</param>
    public sealed record HasSameFormAs(ShapeSet Shapes) : ShapePredicate;

    /// <summary><c>is that of degree 4 moved up 2 frets</c>: the shape of the same family on another degree, carried along the neck.</summary>
    /// <param name="Degree">The other's degree, 1 to 7.</param>
    /// <param name="Frets">How far, downward when negative; 0 when it lies there already.</param>
    public sealed record IsThatOfDegree(int Degree, int Frets) : ShapePredicate
    {
        /// <summary>The other's degree, 1 to 7.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is no degree.</exception>
        public int Degree { get; } = Require.Degree(Degree);
    }

    /// <summary><c>begins on a full fret</c>: its lowest fret.</summary>
    /// <param name="Frets">The frets.</param>
    public sealed record BeginsOn(FretSet Frets) : ShapePredicate;

    /// <summary><c>ends on an empty fret</c>: its highest fret.</summary>
    /// <param name="Frets">The frets.</param>
    public sealed record EndsOn(FretSet Frets) : ShapePredicate;

    /// <summary><c>has its root on a full fret</c>.</summary>
    /// <param name="Frets">The frets.</param>
    public sealed record HasRootOn(FretSet Frets) : ShapePredicate;

    /// <summary><c>can be played with one finger a note</c> by a hand of a length. Needs a window.</summary>
    /// <param name="Hand">The hand.</param>
    public sealed record CanBePlayed(Hand.HandSize Hand) : ShapePredicate;

    /// <summary><c>is fingered as the IV shape of ukulele strings 4-1</c>: the same fingers string by string. Needs a window.</summary>
    /// <param name="Shapes">The other.</param>
    public sealed record IsFingeredAs(ShapeSet Shapes) : ShapePredicate;
}
