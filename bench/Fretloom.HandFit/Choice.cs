using Fretloom.Hand;
using Fretloom.Hand.Chords;
using Fretloom.Testing;

namespace Fretloom.HandFit;

/// <summary>An amount of a term in one hold.</summary>
/// <param name="Weight">Which weight it is multiplied by: those of the long neck stand first.</param>
/// <param name="Units">How many units.</param>
internal readonly record struct Amount(int Weight, double Units);

/// <summary>A published shape with the amounts that each of its holds is charged for.</summary>
/// <param name="Shape">The shape.</param>
/// <param name="Holds">The amounts of each hold, but for those of 0.</param>
/// <param name="Published">Which of the holds was published.</param>
/// <param name="Column">0 for the weights of a long neck, 1 for those of a short one.</param>
internal sealed record Choice(PublishedFingering Shape, Amount[][] Holds, int Published, int Column)
{
    /// <summary>The instrument and the shape wherever it lies.</summary>
    public (int Column, ValueList<int> Slide) Form => (Column, Shape.Slide);

    /// <summary>Terms in one column of weights.</summary>
    public static readonly int Terms = ChordWeights.Table.Length;

    /// <summary>Works a shape out.</summary>
    /// <param name="player">Who plays it.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="column">0 for the weights of a long neck, 1 for those of a short one.</param>
    public static Choice Of(Player player, PublishedFingering shape, int column)
    {
        var holds = HoldEnumeration.All(new HeldChord(player, shape.Spots), isOneFingerANote: false);
        var published = holds.FindIndex(hold =>
            Enumerable
                .Range(0, shape.Fingers.Count)
                .All(at => hold.At(player.PlaceOf(shape.Fingers.Count - at)) == shape.Fingers[at])
        );
        return published >= 0
            ? new(shape, [.. holds.Select(hold => Amounts(hold, column))], published, column)
            : throw new InvalidOperationException($"The fingers of {shape.Frets} are none of those enumerated.");
    }

    private static Amount[] Amounts(ChordHold hold, int column)
    {
        var tally = new Tally(new double[Terms]);
        ChordCharges.Visit(hold, ref tally);
        return
        [
            .. tally
                .Units.Select((units, term) => new Amount(column * Terms + term, units))
                .Where(amount =>
                    amount.Units > 0 && ChordWeights.Table[amount.Weight % Terms].Origin == ChordWeights.Fitted
                ),
        ];
    }

    private readonly struct Tally(double[] units) : IChargeTaker
    {
        public double[] Units { get; } = units;

        public void Take(Charge charge) => Units[(int)charge.Term] += charge.Amount;
    }
}
