namespace Fretloom.Claims;

/// <summary>How frets lie to others.</summary>
public abstract record FretRelation
{
    private FretRelation() { }

    /// <summary><c>lie on</c>: each is one of them.</summary>
    /// <param name="Frets">The others.</param>
    public sealed record LieOn(FretSet Frets) : FretRelation;

    /// <summary><c>include</c>: all of the others are among them.</summary>
    /// <param name="Frets">The others.</param>
    public sealed record Include(FretSet Frets) : FretRelation;

    /// <summary><c>avoid</c>: they have none in common.</summary>
    /// <param name="Frets">The others.</param>
    public sealed record Avoid(FretSet Frets) : FretRelation;

    /// <summary><c>lie next to</c>: each is one fret away from one of them.</summary>
    /// <param name="Frets">The others.</param>
    public sealed record LieNextTo(FretSet Frets) : FretRelation;

    /// <summary><c>lie 1 fret above</c>: each lies so far from one of them.</summary>
    /// <param name="Distance">Frets, upward when positive, downward when negative; never 0.</param>
    /// <param name="Frets">The others.</param>
    public sealed record LieApart(int Distance, FretSet Frets) : FretRelation
    {
        /// <summary>Frets, upward when positive, downward when negative; never 0.</summary>
        /// <exception cref="ArgumentOutOfRangeException">It is 0.</exception>
        public int Distance { get; } = Require.Distance(Distance);
    }

    /// <summary>
    /// <c>lie halfway between a full fret and an empty fret</c>: of each, one of the first lies as far on one side as one of the second on the
    /// other. A fret does not lie between itself and itself.
    /// </summary>
    /// <param name="One">Some.</param>
    /// <param name="Other">The others, perhaps the same.</param>
    public sealed record LieHalfway(FretSet One, FretSet Other) : FretRelation;

    /// <summary><c>are</c>: both sets are equal.</summary>
    /// <param name="Frets">The others.</param>
    public sealed record Are(FretSet Frets) : FretRelation;

    /// <summary><c>are carried to themselves by the half-turn</c>.</summary>
    public sealed record AreCarriedToThemselves : FretRelation;
}
