namespace Fretloom.Hand.Chords;

/// <summary>What a hold costs: the sum of every charge's amount times its term's weight.</summary>
internal static class ChordCost
{
    /// <summary>Digits after the point that count when costs are compared, so that sums of the same charges are equal.</summary>
    private const int Digits = 9;

    /// <summary>The cost, without unit.</summary>
    public static double Of(ChordHold hold)
    {
        var sum = new Sum();
        ChordCharges.Visit(hold, ref sum);
        return Math.Round(sum.Cost, Digits);
    }

    /// <summary>The terms that cost something, the dearest first.</summary>
    public static ValueList<CostTerm> Terms(ChordHold hold)
    {
        var bill = new Bill([]);
        ChordCharges.Visit(hold, ref bill);
        return bill
            .Charges.Where(charge => ChordWeights.Of(charge.Term).Weight > 0)
            .GroupBy(charge => charge.Term)
            .Select(same => Term(hold, same.Key, [.. same]))
            .OrderByDescending(term => term.Cost)
            .ToValueList();
    }

    private static CostTerm Term(ChordHold hold, ChordTerm term, Charge[] charges)
    {
        var weight = ChordWeights.Of(term);
        return new(
            weight.Name,
            weight.Weight * charges.Sum(charge => charge.Amount),
            string.Join("; ", charges.Select(charge => ChordWords.Of(hold, charge)))
        );
    }

    private struct Sum : IChargeTaker
    {
        public double Cost { get; private set; }

        public void Take(Charge charge) => Cost += ChordWeights.Of(charge.Term).Weight * charge.Amount;
    }

    private readonly struct Bill(List<Charge> charges) : IChargeTaker
    {
        public List<Charge> Charges { get; } = charges;

        public void Take(Charge charge) => Charges.Add(charge);
    }
}
