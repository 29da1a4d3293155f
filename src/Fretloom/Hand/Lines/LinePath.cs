using Fretloom.Neck;

namespace Fretloom.Hand.Lines;

/// <summary>A fingering with the positions of the hand that make it cheapest, the lower ones where there is a choice.</summary>
internal sealed class LinePath
{
    public LinePath(LineGraph graph, int[] labels)
    {
        var touches = Choose(graph, labels);
        Spots = new Spot[labels.Length];
        Touches = new Touch[labels.Length];
        for (var note = 0; note < labels.Length; note++)
        {
            var layer = graph.Layers[note];
            var label = layer.Labels[labels[note]];
            Spots[note] = layer.Groups[label.Group].Spot;
            Touches[note] = graph.TouchAt(note, label, touches[note]);
        }
    }

    /// <summary>The spot of each note.</summary>
    public Spot[] Spots { get; }

    /// <summary>The touch of each note.</summary>
    public Touch[] Touches { get; }

    // Forward with the best predecessor of every touch, then back along them.
    private static int[] Choose(LineGraph graph, int[] labels)
    {
        var width = graph.Layers.Max(layer => layer.Labels.Max(label => label.Count));
        var before = new byte[labels.Length * width];
        var costs = new int[width];
        var next = new int[width];
        Layer.Label from = default;
        for (var note = 0; note < labels.Length; note++)
        {
            var layer = graph.Layers[note];
            var label = layer.Labels[labels[note]];
            for (var touch = 0; touch < label.Count; touch++)
            {
                var (least, best) = note == 0 ? (0, 0) : Cheapest(graph, note, costs, from, label, touch);
                before[note * width + touch] = (byte)best;
                next[touch] = Math.Min(Tally.Forbidden, least + layer.Costs[label.Start + touch]);
            }

            Rebase(next.AsSpan(0, label.Count));
            (costs, next, from) = (next, costs, label);
        }

        var chosen = new int[labels.Length];
        chosen[^1] = Array.IndexOf(costs, 0);
        for (var note = labels.Length - 1; note > 0; note--)
        {
            chosen[note - 1] = before[note * width + chosen[note]];
        }

        return chosen;
    }

    private static (int Least, int Touch) Cheapest(
        LineGraph graph,
        int note,
        int[] costs,
        Layer.Label from,
        Layer.Label label,
        int touch
    )
    {
        var (least, best) = (Tally.Forbidden, 0);
        for (var at = 0; at < from.Count; at++)
        {
            var cost = costs[at] + graph.Move(note - 1, from, at, label, touch);
            if (cost < least)
            {
                (least, best) = (cost, at);
            }
        }

        return (least, best);
    }

    // The cheapest becomes 0, so that long lines do not overflow.
    private static void Rebase(Span<int> costs)
    {
        var least = int.MaxValue;
        foreach (var cost in costs)
        {
            least = Math.Min(least, cost);
        }

        foreach (ref var cost in costs)
        {
            cost = cost == Tally.Forbidden ? cost : cost - least;
        }
    }
}
