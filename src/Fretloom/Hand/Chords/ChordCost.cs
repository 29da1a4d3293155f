namespace Fretloom.Hand.Chords;

/// <summary>What a hold costs: the sum of every charge's amount times its term's weight.</summary>
internal static class ChordCost
{
    /// <summary>Digits after the point that count when costs are compared, so that sums of the same charges are equal.</summary>
    private const int Digits = 9;

    /// <summary>The cost, without unit.</summary>
    /// <param name="hold">The hold.</param>
    /// <param name="weights">What a unit of each term costs.</param>
    public static double Of(ChordHold hold, double[] weights)
    {
        var sum = new Sum(weights);
        ChordCharges.Visit(hold, ref sum);
        return Math.Round(sum.Cost, Digits);
    }

    /// <summary>The terms that cost something, the dearest first.</summary>
    /// <param name="hold">The hold.</param>
    /// <param name="weights">What a unit of each term costs.</param>
    public static ValueList<CostTerm> Terms(ChordHold hold, double[] weights)
    {
        var bill = new Bill([]);
        ChordCharges.Visit(hold, ref bill);
        return bill
            .Charges.Where(charge => weights[(int)charge.Term] > 0)
            .GroupBy(charge => charge.Term)
            .OrderBy(same => same.Key)
            .Select(same => new CostTerm(
                ChordWeights.Name(same.Key),
                weights[(int)same.Key] * same.Sum(charge => charge.Amount),
                WordsOf(hold, [.. same.OrderByDescending(charge => charge.Amount)])
            ))
            .OrderByDescending(term => term.Cost)
            .ToValueList();
    }

    /// <summary>The dearest two in words, and how many more there are.</summary>
    private static string WordsOf(ChordHold hold, Charge[] charges)
    {
        const int Told = 2;
        var words = string.Join("; ", charges.Take(Told).Select(charge => ChordWords.Of(hold, charge)));
        return charges.Length > Told ? $"{words}; and {charges.Length - Told} more such" : words;
    }

    private struct Sum(double[] weights) : IChargeTaker
    {
        public double Cost { get; private set; }

        public void Take(Charge charge) => Cost += weights[(int)charge.Term] * charge.Amount;
    }

    private readonly struct Bill(List<Charge> charges) : IChargeTaker
    {
        public List<Charge> Charges { get; } = charges;

        public void Take(Charge charge) => Charges.Add(charge);
    }
}
