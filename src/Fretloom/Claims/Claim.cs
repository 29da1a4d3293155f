using Fretloom.Theory;

namespace Fretloom.Claims;

/// <summary>What a sentence says of one key on one string set.</summary>
public abstract record Claim
{
    private Claim() { }

    /// <summary><c>if ..., then ...</c>: untested where the condition does not hold.</summary>
    /// <param name="Condition">A simple claim.</param>
    /// <param name="Then">What follows.</param>
    public sealed record If(Claim Condition, Claim Then) : Claim;

    /// <summary>Simple claims joined by <c>and</c>.</summary>
    /// <param name="Parts">At least two.</param>
    public sealed record And(ValueList<Claim> Parts) : Claim
    {
        /// <summary>At least two.</summary>
        /// <exception cref="ArgumentException">There are fewer.</exception>
        public ValueList<Claim> Parts { get; } = Require.Several(Parts);
    }

    /// <summary>Simple claims joined by <c>or</c>.</summary>
    /// <param name="Parts">At least two.</param>
    public sealed record Or(ValueList<Claim> Parts) : Claim
    {
        /// <summary>At least two.</summary>
        /// <exception cref="ArgumentException">There are fewer.</exception>
        public ValueList<Claim> Parts { get; } = Require.Several(Parts);
    }

    /// <summary><c>there are exactly 3 full frets</c>.</summary>
    /// <param name="Count">How many.</param>
    /// <param name="Noun">Of what.</param>
    public sealed record ThereAre(Count Count, FretNoun Noun) : Claim;

    /// <summary><c>there are as many full frets as half-turn centres</c>.</summary>
    /// <param name="One">Of these.</param>
    /// <param name="Other">As of these.</param>
    public sealed record AsMany(FretNoun One, FretNoun Other) : Claim;

    /// <summary><c>the string set is palindromic</c>: its steps in semitones read the same both ways.</summary>
    public sealed record IsPalindromic : Claim;

    /// <summary><c>the string set has equal steps</c>: every string is as many semitones above the next as any other.</summary>
    public sealed record HasEqualSteps : Claim;

    /// <summary><c>the key is major</c>, <c>the key is not harmonic minor</c>.</summary>
    /// <param name="Kind">A kind of seven notes.</param>
    /// <param name="IsNot">Whether it is any other kind.</param>
    public sealed record KeyIs(ScaleKind Kind, bool IsNot = false) : Claim
    {
        /// <summary>A kind of seven notes.</summary>
        /// <exception cref="ArgumentException">It has not seven notes.</exception>
        public ScaleKind Kind { get; } = Require.KindOfKey(Kind);
    }

    /// <summary><c>the key pattern of strings 4-2 has the same form as the key pattern of strings 3-1</c>.</summary>
    /// <param name="One">The strings of the first pattern; null for those chosen.</param>
    /// <param name="Other">Those of the second.</param>
    public sealed record PatternsHaveSameForm(OtherStrings? One, OtherStrings? Other) : Claim;

    /// <summary><c>the key pattern is its own half-turn</c>, <c>... of strings 6-4 moved down 5 frets is the key pattern of strings 5-3</c>.</summary>
    /// <param name="One">The strings of the pattern; null for those chosen.</param>
    /// <param name="MovedFrets">How far it is moved first, upward when positive; 0 when not.</param>
    /// <param name="Motion">What is done to the other.</param>
    /// <param name="Other">The strings of the other pattern.</param>
    /// <param name="IsOwn">Whether it is compared with itself; then <paramref name="Other"/> is null.</param>
    public sealed record PatternIs(
        OtherStrings? One,
        int MovedFrets,
        PatternMotion Motion,
        OtherStrings? Other,
        bool IsOwn
    ) : Claim
    {
        /// <summary>What is done to the other.</summary>
        public PatternMotion Motion { get; } = Motion;

        /// <summary>The strings of the other pattern; null for those chosen.</summary>
        public OtherStrings? Other { get; } = Other;

        /// <summary>Whether it is compared with itself, turned, mirrored or flipped; then <see cref="Other"/> is null.</summary>
        /// <exception cref="ArgumentException">Nothing is done to it, or there is another pattern.</exception>
        public bool IsOwn { get; } =
            IsOwn && (Motion == PatternMotion.None || Other is not null)
                ? throw new ArgumentException(
                    "A pattern is compared with itself when something is done to it.",
                    nameof(IsOwn)
                )
                : IsOwn;
    }

    /// <summary><c>the half-turn carries degree 5 to degree 7</c>, <c>the half-turn swaps degree 1 and degree 3</c>.</summary>
    /// <param name="From">1 to 7.</param>
    /// <param name="To">1 to 7.</param>
    /// <param name="Swaps">Whether it also carries the second back to the first.</param>
    public sealed record CarriesDegree(int From, int To, bool Swaps) : Claim
    {
        /// <summary>1 to 7.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is no degree.</exception>
        public int From { get; } = Require.Degree(From);

        /// <summary>1 to 7.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is no degree.</exception>
        public int To { get; } = Require.Degree(To);
    }

    /// <summary><c>the half-turn carries the full frets to themselves</c>.</summary>
    /// <param name="From">What is carried.</param>
    /// <param name="To">Where to; null for itself.</param>
    public sealed record CarriesFrets(FretSet From, FretSet? To) : Claim;

    /// <summary><c>the half-turn carries the seventh shape on degree 5 to the seventh shape on degree 7</c>.</summary>
    /// <param name="From">What is carried.</param>
    /// <param name="To">Where to; null for itself.</param>
    public sealed record CarriesShapes(ShapeSet From, ShapeSet? To) : Claim;

    /// <summary><c>degree 2 stands on string 1 at some full fret</c>.</summary>
    /// <param name="Degree">1 to 7.</param>
    /// <param name="String">The string.</param>
    /// <param name="Quantity">Every, some or no.</param>
    /// <param name="Noun">The frets.</param>
    public sealed record DegreeStands(int Degree, int String, Quantity Quantity, FretNoun Noun) : Claim
    {
        /// <summary>1 to 7.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is no degree.</exception>
        public int Degree { get; } = Require.Degree(Degree);

        /// <summary>The string, 1 to 99.</summary>
        /// <exception cref="ArgumentOutOfRangeException">There is no such string.</exception>
        public int String { get; } = Require.String(String);
    }

    /// <summary><c>every empty fret lies next to a full fret</c>.</summary>
    /// <param name="Frets">The frets spoken of.</param>
    /// <param name="Quantity">Every, some or no of a noun; null when the set is spoken of as a whole.</param>
    /// <param name="Relation">How they lie.</param>
    public sealed record OfFrets(FretSet Frets, Quantity? Quantity, FretRelation Relation) : Claim;

    /// <summary>
    /// <c>neighbouring full frets lie at most 5 frets apart</c>: from each to the next one up. On the endless neck the last is
    /// followed by the first, an octave on, and a fret that stands alone is 12 from itself; in a window nothing follows the last. Untested
    /// where nothing follows anything.
    /// </summary>
    /// <param name="Noun">The frets.</param>
    /// <param name="Frets">How far.</param>
    public sealed record NeighboursLieApart(FretNoun Noun, Count Frets) : Claim;

    /// <summary>
    /// <c>the gap between the full frets and the empty frets is exactly 1 fret</c>: the fewest frets, either way, from one of the first to one of the
    /// second; 0 where they meet. Untested where either is empty.
    /// </summary>
    /// <param name="One">From these.</param>
    /// <param name="Other">To these.</param>
    /// <param name="Frets">How far.</param>
    public sealed record GapIs(FretSet One, FretSet Other, Count Frets) : Claim;

    /// <summary><c>every seventh shape spans at most 5 frets</c>.</summary>
    /// <param name="Shapes">The shapes spoken of.</param>
    /// <param name="Says">What is said of each.</param>
    public sealed record OfShapes(ShapeSet Shapes, ShapePredicate Says) : Claim;
}

/// <summary>What is done to a pattern.</summary>
public enum PatternMotion
{
    /// <summary>Nothing: it lies on the same places.</summary>
    None,

    /// <summary>Turned by 180 degrees, about any place.</summary>
    HalfTurn,

    /// <summary>Frets reversed, about any place.</summary>
    Mirror,

    /// <summary>Strings reversed.</summary>
    Flip,
}
