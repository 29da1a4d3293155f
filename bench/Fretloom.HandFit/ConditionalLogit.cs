namespace Fretloom.HandFit;

/// <summary>Weights that make the published holds likely.</summary>
/// <remarks>
/// A hold of cost c is taken to be chosen with a probability proportional to exp(-c), where c is the sum of weight times amount
/// (conditional logit; McFadden 1974, from memory). A form that stands many times along the neck counts as the square root of
/// so many, so that rare forms have a say. What is made greatest is the logarithm of the likelihood, less half of
/// <c>ridge</c> times the squared weights, less half of <c>tie</c> times the squared differences between the two columns of
/// weights. No weight is below 0. Newton's method on the weights that are free to move, with steps halved until they gain.
/// </remarks>
internal sealed class ConditionalLogit(IReadOnlyList<Choice> choices, double ridge, double tie)
{
    private const int MostSteps = 200;
    private const double FlatEnough = 1e-4;
    private const double LeastStep = 1e-9;

    private readonly int _count = 2 * Choice.Terms;
    private readonly double[] _counts = Counts(choices);

    /// <summary>The weights: the column of the long neck, then that of the short one.</summary>
    public double[] Fit()
    {
        var at = Look(new double[_count]);
        for (var step = 0; step < MostSteps; step++)
        {
            var moving = Enumerable
                .Range(0, _count)
                .Where(weight => at.Weights[weight] > 0 || at.Slope[weight] > FlatEnough)
                .ToArray();
            if (moving.All(weight => Math.Abs(at.Slope[weight]) < FlatEnough) || Better(at, moving) is not { } next)
            {
                break;
            }

            at = next;
        }

        return at.Weights;
    }

    // In proportion to one over the square root of how often the form stands, 1 on average.
    private static double[] Counts(IReadOnlyList<Choice> choices)
    {
        var forms = choices.CountBy(choice => choice.Form).ToDictionary();
        var counts = choices.Select(choice => 1 / Math.Sqrt(forms[choice.Form])).ToArray();
        var mean = counts.Average();
        return Array.ConvertAll(counts, count => count / mean);
    }

    /// <summary>How surprising a choice is: minus the logarithm of its probability.</summary>
    public static double Surprise(Choice choice, double[] weights) =>
        -Math.Log(Shares(choice, weights)[choice.Published]);

    private View? Better(View from, int[] moving)
    {
        var direction = Cholesky.Solve(from.Bend, from.Slope, moving);
        for (var share = 1.0; share > LeastStep; share /= 2)
        {
            var weights = (double[])from.Weights.Clone();
            for (var at = 0; at < moving.Length; at++)
            {
                weights[moving[at]] = Math.Max(0, weights[moving[at]] + share * direction[at]);
            }

            var view = Look(weights);
            if (view.Value > from.Value)
            {
                return view;
            }
        }

        return null;
    }

    /// <summary>The value to be made greatest with its first derivatives and its second, negated.</summary>
    private View Look(double[] weights)
    {
        var view = new View(weights, new double[_count], new double[_count, _count]);
        for (var at = 0; at < choices.Count; at++)
        {
            Add(view, choices[at], Shares(choices[at], weights), _counts[at]);
        }

        for (var row = 0; row < _count; row++)
        {
            Draw(view, row, -1, ridge);
            if (row < Choice.Terms)
            {
                Draw(view, row, row + Choice.Terms, tie);
            }
        }

        return view;
    }

    private void Add(View view, Choice choice, double[] shares, double count)
    {
        view.Value += count * Math.Log(shares[choice.Published]);
        var mean = new double[_count];
        for (var hold = 0; hold < shares.Length; hold++)
        {
            foreach (var one in choice.Holds[hold])
            {
                mean[one.Weight] += shares[hold] * one.Units;
                foreach (var other in choice.Holds[hold])
                {
                    view.Bend[one.Weight, other.Weight] += count * shares[hold] * one.Units * other.Units;
                }
            }
        }

        foreach (var amount in choice.Holds[choice.Published])
        {
            view.Slope[amount.Weight] -= count * amount.Units;
        }

        var touched = Enumerable.Range(0, _count).Where(weight => mean[weight] > 0).ToArray();
        foreach (var row in touched)
        {
            view.Slope[row] += count * mean[row];
            foreach (var column in touched)
            {
                view.Bend[row, column] -= count * mean[row] * mean[column];
            }
        }
    }

    /// <summary>Draws a weight towards another, or towards 0 when there is no other.</summary>
    private static void Draw(View view, int weight, int other, double force)
    {
        var apart = view.Weights[weight] - (other < 0 ? 0 : view.Weights[other]);
        view.Value -= force / 2 * apart * apart;
        view.Slope[weight] -= force * apart;
        view.Bend[weight, weight] += force;
        if (other >= 0)
        {
            view.Slope[other] += force * apart;
            view.Bend[other, other] += force;
            view.Bend[weight, other] -= force;
            view.Bend[other, weight] -= force;
        }
    }

    private static double[] Shares(Choice choice, double[] weights)
    {
        var costs = choice.Holds.Select(hold => hold.Sum(amount => weights[amount.Weight] * amount.Units)).ToArray();
        var least = costs.Min();
        var likely = costs.Select(cost => Math.Exp(least - cost)).ToArray();
        var total = likely.Sum();
        return [.. likely.Select(one => one / total)];
    }

    private sealed class View(double[] weights, double[] slope, double[,] bend)
    {
        public double Value { get; set; }

        public double[] Weights { get; } = weights;

        public double[] Slope { get; } = slope;

        public double[,] Bend { get; } = bend;
    }
}
