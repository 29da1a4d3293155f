using Fretloom.Theory;

namespace Fretloom.Claims;

/// <summary>The keys a claim speaks of.</summary>
public abstract record KeyScope
{
    private KeyScope() { }

    /// <summary>Kind by kind, each kind's twelve tonics in fourths from C; one key for <see cref="One"/>.</summary>
    public abstract ValueList<Key> Keys { get; }

    /// <summary><c>in every key</c>: major, natural minor, harmonic minor and melodic minor.</summary>
    public sealed record EveryKey : KeyScope
    {
        /// <inheritdoc/>
        public override ValueList<Key> Keys =>
            Every(ScaleKind.Major, ScaleKind.NaturalMinor, ScaleKind.HarmonicMinor, ScaleKind.MelodicMinor);
    }

    /// <summary><c>in every minor key</c>: natural, harmonic and melodic.</summary>
    public sealed record EveryMinorKey : KeyScope
    {
        /// <inheritdoc/>
        public override ValueList<Key> Keys =>
            Every(ScaleKind.NaturalMinor, ScaleKind.HarmonicMinor, ScaleKind.MelodicMinor);
    }

    /// <summary><c>in every mode</c>: the seven modes of the major scale.</summary>
    public sealed record EveryMode : KeyScope
    {
        /// <inheritdoc/>
        public override ValueList<Key> Keys =>
            Every(
                ScaleKind.Major,
                ScaleKind.Dorian,
                ScaleKind.Phrygian,
                ScaleKind.Lydian,
                ScaleKind.Mixolydian,
                ScaleKind.NaturalMinor,
                ScaleKind.Locrian
            );
    }

    /// <summary><c>in every dorian key</c>: one kind.</summary>
    /// <param name="Kind">A kind of seven notes.</param>
    public sealed record EveryOf(ScaleKind Kind) : KeyScope
    {
        /// <summary>A kind of seven notes.</summary>
        /// <exception cref="ArgumentException">It has not seven notes.</exception>
        public ScaleKind Kind { get; } = Require.KindOfKey(Kind);

        /// <inheritdoc/>
        public override ValueList<Key> Keys => Every(Kind);
    }

    /// <summary><c>in the key of A harmonic minor</c>.</summary>
    /// <param name="Key">The key.</param>
    public sealed record One(Key Key) : KeyScope
    {
        /// <inheritdoc/>
        public override ValueList<Key> Keys => [Key];
    }

    private static ValueList<Key> Every(params ValueList<ScaleKind> kinds) =>
        kinds.SelectMany(kind => EnharmonicKeys.OnEveryTonic(kind)).ToValueList();
}
