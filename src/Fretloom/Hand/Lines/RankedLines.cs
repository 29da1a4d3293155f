namespace Fretloom.Hand.Lines;

/// <summary>The best fingerings of a line in order, each a label for each note.</summary>
/// <remarks>
/// A fingering that is not yet found leaves a found one at some note; it is the best of those that share its beginning with
/// that one and then take a certain other label (E. L. Lawler, A Procedure for Computing the K Best Solutions to Discrete
/// Optimization Problems, Management Science 18(7), 1972, from memory). Positions of the hand are not part of a fingering:
/// two that differ in them only are one. Equal costs: the fingering whose first different label comes first in its layer.
/// </remarks>
internal sealed class RankedLines(LineGraph graph)
{
    private readonly List<int[]> _found = [];
    private readonly List<int[]> _partings = [];
    private readonly List<Branch> _branches = [];

    /// <summary>The best fingerings, at most as many as wanted.</summary>
    public List<int[]> Take(int count)
    {
        Follow(new Branch(0, -1, -1, -1), count);
        while (_found.Count < count && _branches.Count > 0)
        {
            var best = _branches[0];
            _branches.RemoveAt(0);
            Follow(best, count);
        }

        return _found;
    }

    // Goes along a found fingering up to where the branch leaves it, then the best way to the end.
    private void Follow(Branch branch, int count)
    {
        var layers = graph.Layers;
        var labels = new int[layers.Length];
        _found.Add(labels);
        _partings.Add([
            .. Enumerable
                .Range(0, _found.Count - 1)
                .Select(other => Math.Min(branch.Note, Parting(branch.Found, other))),
        ]);
        var costs = new int[graph.Layers.Max(layer => layer.Costs.Length)];
        var kept = new int[costs.Length];
        var known = 0L;
        for (var note = 0; note < layers.Length; note++)
        {
            var layer = layers[note];
            var next = costs.AsSpan(0, layer.Costs.Length);
            if (note == 0)
            {
                next.Clear();
            }
            else
            {
                var before = layers[note - 1].Labels[labels[note - 1]];
                graph.Advance(note - 1, before, kept.AsSpan(0, before.Count), next);
            }

            labels[note] =
                note < branch.Note ? _found[branch.Found][note]
                : note == branch.Note ? branch.Label
                : Cheapest(note, next);
            if (count > 1 && note > branch.Note)
            {
                AddBranches(note, labels[note], known, next, count);
            }

            known += Keep(layer, layer.Labels[labels[note]], next, kept);
        }
    }

    private int Cheapest(int note, ReadOnlySpan<int> costs)
    {
        var labels = graph.Layers[note].Labels;
        var (cheapest, least) = (0, int.MaxValue);
        for (var at = 0; at < labels.Length; at++)
        {
            var cost = Cost(note, labels[at], costs);
            if (cost < least)
            {
                (cheapest, least) = (at, cost);
            }
        }

        return cheapest;
    }

    private int Cost(int note, Layer.Label label, ReadOnlySpan<int> costs)
    {
        var rest = graph.RestFrom(note);
        var least = int.MaxValue;
        for (var at = label.Start; at < label.Start + label.Count; at++)
        {
            least = Math.Min(least, costs[at] + rest[at]);
        }

        return least;
    }

    private void AddBranches(int note, int taken, long known, ReadOnlySpan<int> costs, int count)
    {
        var labels = graph.Layers[note].Labels;
        for (var at = 0; at < labels.Length; at++)
        {
            var cost = at == taken ? Tally.Forbidden : Cost(note, labels[at], costs);
            if (cost < Tally.Forbidden)
            {
                Insert(new Branch(known + cost + graph.LeastFrom(note), _found.Count - 1, note, at), count);
            }
        }
    }

    private void Insert(Branch branch, int count)
    {
        var wanted = count - _found.Count;
        if (_branches.Count >= wanted && (wanted == 0 || branch.Cost > _branches[^1].Cost))
        {
            return;
        }

        var place = _branches.BinarySearch(branch, Comparer<Branch>.Create(Compare));
        _branches.Insert(place < 0 ? ~place : place, branch);
        if (_branches.Count > wanted)
        {
            _branches.RemoveAt(_branches.Count - 1);
        }
    }

    private int Compare(Branch one, Branch other)
    {
        if (one.Cost != other.Cost)
        {
            return one.Cost.CompareTo(other.Cost);
        }

        // No branch begins as another does, so that they differ here at the latest.
        var note = Math.Min(Parting(one.Found, other.Found), Math.Min(one.Note, other.Note));
        return LabelAt(one, note) - LabelAt(other, note);
    }

    // The first note in which two found fingerings differ: the lesser of where they left a third.
    private int Parting(int one, int other) =>
        one == other ? int.MaxValue : _partings[Math.Max(one, other)][Math.Min(one, other)];

    private int LabelAt(Branch branch, int note) => note == branch.Note ? branch.Label : _found[branch.Found][note];

    // The costs of the touches of a label with what they cost themselves, less the least of them, which is returned.
    private static int Keep(Layer layer, Layer.Label label, ReadOnlySpan<int> costs, Span<int> kept)
    {
        var least = Tally.Forbidden;
        for (var at = 0; at < label.Count; at++)
        {
            kept[at] = Math.Min(Tally.Forbidden, costs[label.Start + at] + layer.Costs[label.Start + at]);
            least = Math.Min(least, kept[at]);
        }

        for (var at = 0; at < label.Count; at++)
        {
            kept[at] = kept[at] == Tally.Forbidden ? Tally.Forbidden : kept[at] - least;
        }

        return least;
    }

    /// <summary>The best fingering that leaves a found one at a note.</summary>
    /// <param name="Cost">What it costs, in thousandths.</param>
    /// <param name="Found">The found fingering's index.</param>
    /// <param name="Note">Where it leaves; -1 for the best fingering of all.</param>
    /// <param name="Label">The label it takes there.</param>
    private readonly record struct Branch(long Cost, int Found, int Note, int Label);
}
