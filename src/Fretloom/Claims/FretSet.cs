using Fretloom.Neck;

namespace Fretloom.Claims;

/// <summary>Other strings than those the sentence chose: <c>of strings 4-2</c>, <c>of ukulele strings 4-1</c>.</summary>
/// <param name="Strings">The strings; null for all of another instrument.</param>
/// <param name="Instrument">Another instrument; null for the one the sentence chose, whose chosen set must hold the strings.</param>
public sealed record OtherStrings(StringSet? Strings, Instrument? Instrument = null)
{
    /// <summary>The strings; null for all of another instrument.</summary>
    /// <exception cref="ArgumentException">Neither strings nor an instrument are named.</exception>
    public StringSet? Strings { get; } =
        Strings is null && Instrument is null
            ? throw new ArgumentException("Other strings are named by number, or by their instrument.", nameof(Strings))
            : Strings;

    /// <summary>Another instrument; null for the one the sentence chose.</summary>
    public Instrument? Instrument { get; } = Instrument;
}

/// <summary>Frets that are named by what they are.</summary>
public enum FretKind
{
    /// <summary>Every string of the set sounds a note of the key.</summary>
    Full,

    /// <summary>None does.</summary>
    Empty,

    /// <summary>A place, half frets allowed, about which the half-turn carries the key pattern onto itself.</summary>
    HalfTurnCentre,
}

/// <summary><c>full frets</c>, <c>empty frets of strings 4-2</c>, <c>half-turn centres</c>.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Of">On which strings; null for those the sentence chose.</param>
public sealed record FretNoun(FretKind Kind, OtherStrings? Of = null);

/// <summary>A set of frets; on the endless neck of classes of twelve.</summary>
public abstract record FretSet
{
    private FretSet() { }

    /// <summary><c>the full frets</c>.</summary>
    /// <param name="Noun">Which.</param>
    public sealed record Named(FretNoun Noun) : FretSet;

    /// <summary><c>the frets of degree 5 on string 2</c>.</summary>
    /// <param name="Degree">1 to 7.</param>
    /// <param name="String">The string.</param>
    public sealed record OfDegree(int Degree, int String) : FretSet
    {
        /// <summary>1 to 7.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is no degree.</exception>
        public int Degree { get; } = Require.Degree(Degree);

        /// <summary>The string, 1 to 99.</summary>
        /// <exception cref="ArgumentOutOfRangeException">There is no such string.</exception>
        public int String { get; } = Require.String(String);
    }

    /// <summary><c>the root frets of the seventh shape on degree 1</c>; first is the lowest fret of a shape, last the highest.</summary>
    /// <param name="End">Which fret of each shape.</param>
    /// <param name="Shapes">The shapes.</param>
    public sealed record OfShapes(ShapeEnd End, ShapeSet Shapes) : FretSet;

    /// <summary><c>frets 0, 5 and 10</c>.</summary>
    /// <param name="Frets">Ascending, each once.</param>
    public sealed record Numbers(ValueList<int> Frets) : FretSet
    {
        /// <summary>Ascending, each once; at least one.</summary>
        /// <exception cref="ArgumentException">There is none, or they do not ascend from 0 or more.</exception>
        public ValueList<int> Frets { get; } = Require.Ascending(Frets);
    }

    /// <summary><c>the full frets moved up 2 frets</c>.</summary>
    /// <param name="Set">Not itself moved.</param>
    /// <param name="Frets">How far, downward when negative; never 0.</param>
    public sealed record Moved(FretSet Set, int Frets) : FretSet
    {
        /// <summary>Not itself moved.</summary>
        /// <exception cref="ArgumentException">It is.</exception>
        public FretSet Set { get; } =
            Set is Moved ? throw new ArgumentException("Frets that are moved are not moved again.", nameof(Set)) : Set;

        /// <summary>How far, downward when negative; never 0.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is 0.</exception>
        public int Frets { get; } = Require.Distance(Frets);
    }
}

/// <summary>A fret of a shape.</summary>
public enum ShapeEnd
{
    /// <summary>Where the root lies.</summary>
    Root,

    /// <summary>The lowest.</summary>
    First,

    /// <summary>The highest.</summary>
    Last,
}
